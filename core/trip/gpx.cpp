// SPDX-License-Identifier: Apache-2.0
// A stream reader over expat: nothing is kept of the file but its timed points and one name.
#include "trip/gpx.hpp"

#include <array>
#include <memory>
#include <optional>

#include <expat.h>

#include "base/text.hpp"
#include "trip/track_order.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxBytes = 64U << 20U;
constexpr long long maxPoints = 5'000'000;
constexpr std::size_t maxDepth = 32;
constexpr std::size_t maxText = 256; // of a name; numbers and times are far shorter
constexpr const char *exportAgain = "copy the file again, or export it again as GPX with times";

enum class Part {
    Outside,
    Other,
    Gpx,
    Metadata,
    FileName,
    Trk,
    TrackName,
    Segment,
    Point,
    Ele,
    Time,
    Hdop,
    Speed
};

struct Step {
    Part parent;
    std::string_view name;
    Part part;
};
// Only these paths mean anything to us; whatever else is nested is skipped.
constexpr std::array steps = {
    Step{Part::Outside, "gpx", Part::Gpx},        Step{Part::Gpx, "metadata", Part::Metadata},
    Step{Part::Gpx, "name", Part::FileName}, // GPX 1.0
    Step{Part::Metadata, "name", Part::FileName}, Step{Part::Gpx, "trk", Part::Trk},
    Step{Part::Trk, "name", Part::TrackName},     Step{Part::Trk, "trkseg", Part::Segment},
    Step{Part::Segment, "trkpt", Part::Point},    Step{Part::Point, "ele", Part::Ele},
    Step{Part::Point, "time", Part::Time},        Step{Part::Point, "hdop", Part::Hdop},
    Step{Part::Point, "speed", Part::Speed}, // GPX 1.0
};

Part partOf(Part parent, std::string_view name)
{
    for (const Step &step : steps) {
        if (step.parent == parent && step.name == name)
            return step.part;
    }
    return Part::Other;
}

/// The point being read; a time that is there but cannot be read is another fault than none.
struct Draft {
    GeoPoint point;
    bool placed = false;
    bool hasTime = false;
    std::optional<Instant> time;
    std::optional<double> hdop;
    std::optional<Speed> speed;
};

std::optional<double> attribute(const XML_Char **attributes, std::string_view key)
{
    for (; *attributes != nullptr; attributes += 2) {
        if (key == attributes[0])
            return parseDouble(trim(attributes[1]));
    }
    return std::nullopt;
}

std::optional<Instant> readTime(std::string_view text)
{
    auto time = parseLocal(text);
    if (!time)
        time = parseLocal(std::string(text) + "Z");
    return time ? std::optional(time->instant) : std::nullopt;
}

std::optional<double> atLeastZero(std::optional<double> number)
{
    return number && *number >= 0.0 ? number : std::nullopt;
}

class Reader {
public:
    Reader() : m_parser(XML_ParserCreate(nullptr), XML_ParserFree)
    {
        SNUG_ASSERT(m_parser != nullptr);
        XML_SetUserData(m_parser.get(), this);
        XML_SetElementHandler(m_parser.get(), onStart, onEnd);
        XML_SetCharacterDataHandler(m_parser.get(), onText);
        XML_SetEntityDeclHandler(m_parser.get(), onEntity);
    }

    Result<ParsedTrack> read(std::string_view bytes)
    {
        const auto size = static_cast<int>(bytes.size());
        const bool whole = XML_Parse(m_parser.get(), bytes.data(), size, XML_TRUE) == XML_STATUS_OK;
        if (m_error)
            return *m_error;
        if (!whole)
            return notWellFormed();
        if (m_track.fixes.empty())
            return nothingTimed();
        if (m_track.name.empty())
            m_track.name = m_fileName;
        orderSegments(m_track.fixes, m_segments);
        return std::move(m_track);
    }

private:
    std::string lineAndColumn() const
    {
        return "line " + std::to_string(XML_GetCurrentLineNumber(m_parser.get())) + ", column " +
               std::to_string(XML_GetCurrentColumnNumber(m_parser.get()) + 1);
    }

    Error notWellFormed() const
    {
        const XML_Error code = XML_GetErrorCode(m_parser.get());
        const bool cut = code == XML_ERROR_NO_ELEMENTS || code == XML_ERROR_UNCLOSED_TOKEN ||
                         code == XML_ERROR_PARTIAL_CHAR || code == XML_ERROR_UNCLOSED_CDATA_SECTION;
        const std::string what =
            cut ? "the GPX file breaks off" : std::string("not well-formed XML: ") + XML_ErrorString(code);
        return {Errc::InvalidInput, what, lineAndColumn(), exportAgain};
    }

    Error nothingTimed() const
    {
        if (m_points == 0)
            return {Errc::InvalidInput, "no track in this GPX file", "",
                    "routes and waypoints are no journey: export the track"};
        for (const Drop &drop : m_track.drops) {
            if (drop.reason == "no_time" && drop.count == m_points)
                return {Errc::InvalidInput, "no point of the track has a time", drop.firstWhere,
                        "export it again with times, or write the trip by hand"};
        }
        return {Errc::InvalidInput, "no point of the track can be used", m_track.drops.front().firstWhere,
                exportAgain};
    }

    void stop(Errc code, std::string what, const char *act)
    {
        if (!m_error)
            m_error = Error{code, std::move(what), lineAndColumn(), act};
        XML_StopParser(m_parser.get(), XML_FALSE);
    }

    void start(std::string_view name, const XML_Char **attributes)
    {
        if (m_error)
            return;
        if (m_path.size() >= maxDepth)
            return stop(Errc::OutOfRange, "GPX nested over 32 levels", exportAgain);
        if (m_path.empty()) // the prefix of the root is the prefix of all that is GPX
            m_prefix = name.substr(0, name.rfind(':') == std::string_view::npos ? 0 : name.rfind(':') + 1);
        const bool ours = name.starts_with(m_prefix);
        const Part parent = m_path.empty() ? Part::Outside : m_path.back();
        const Part part = ours ? partOf(parent, name.substr(m_prefix.size())) : Part::Other;
        if (parent == Part::Outside && part != Part::Gpx)
            return stop(Errc::InvalidInput, "not a GPX file", exportAgain);
        m_path.push_back(part);
        m_text.clear();
        if (part == Part::Segment)
            m_segments.push_back(m_track.fixes.size());
        else if (part == Part::Point)
            startPoint(attributes);
    }

    void startPoint(const XML_Char **attributes)
    {
        if (++m_points > maxPoints)
            return stop(Errc::OutOfRange, "over 5 million points in one file", "split the track");
        m_draft = {};
        m_line = XML_GetCurrentLineNumber(m_parser.get());
        const auto latitude = attribute(attributes, "lat");
        const auto longitude = attribute(attributes, "lon");
        if (latitude && longitude) {
            m_draft.point.latitude = *latitude;
            m_draft.point.longitude = *longitude;
            m_draft.placed = isValid(m_draft.point);
        }
    }

    void end()
    {
        if (m_error || m_path.empty())
            return;
        const Part part = m_path.back();
        m_path.pop_back();
        const std::string_view text = trim(m_text);
        if (part == Part::Ele)
            m_draft.point.altitude = parseDouble(text);
        else if (part == Part::Hdop)
            m_draft.hdop = atLeastZero(parseDouble(text));
        else if (part == Part::Time)
            readDraftTime(text);
        else if (part == Part::Speed && atLeastZero(parseDouble(text)))
            m_draft.speed = Speed::fromSi(*parseDouble(text));
        else if (part == Part::TrackName && m_track.name.empty())
            m_track.name = text;
        else if (part == Part::FileName && m_fileName.empty())
            m_fileName = text;
        else if (part == Part::Point)
            endPoint();
    }

    void readDraftTime(std::string_view text)
    {
        m_draft.hasTime = !text.empty();
        m_draft.time = readTime(text);
    }

    void drop(std::string_view reason) { countDrop(m_track.drops, reason, "line " + std::to_string(m_line)); }

    void endPoint()
    {
        if (!m_draft.placed)
            drop("bad_position");
        else if (!m_draft.hasTime)
            drop("no_time");
        else if (!m_draft.time)
            drop("malformed");
        else
            m_track.fixes.push_back({*m_draft.time, m_draft.point, m_draft.hdop, m_draft.speed});
    }

    void text(std::string_view part)
    {
        // expat hands over whole characters, so a part is taken or left whole
        if (m_text.size() + part.size() <= maxText)
            m_text += part;
    }

    static Reader &self(void *user) { return *static_cast<Reader *>(user); }
    static void XMLCALL onStart(void *user, const XML_Char *name, const XML_Char **attributes)
    {
        self(user).start(name, attributes);
    }
    static void XMLCALL onEnd(void *user, const XML_Char *) { self(user).end(); }
    static void XMLCALL onText(void *user, const XML_Char *text, int size)
    {
        self(user).text({text, static_cast<std::size_t>(size)});
    }
    // A few declared entities can expand to gigabytes; no receiver writes any.
    static void XMLCALL onEntity(void *user, const XML_Char *, int, const XML_Char *, int, const XML_Char *,
                                 const XML_Char *, const XML_Char *, const XML_Char *)
    {
        self(user).stop(Errc::InvalidInput, "GPX with entity declarations is not read", exportAgain);
    }

    std::unique_ptr<XML_ParserStruct, decltype(&XML_ParserFree)> m_parser;
    std::vector<Part> m_path;
    std::string m_prefix;
    std::string m_text;
    std::string m_fileName;
    XML_Size m_line = 0; // where the present point starts
    Draft m_draft;
    long long m_points = 0;
    std::vector<std::size_t> m_segments; // index of the first fix of each
    ParsedTrack m_track;
    std::optional<Error> m_error;
};

} // namespace

Result<ParsedTrack> parseGpx(std::string_view bytes)
{
    if (bytes.size() > maxBytes)
        return Error{Errc::OutOfRange, "a GPX file over 64 MiB", "", "split the track"};
    return Reader().read(bytes);
}

} // namespace snugwalk
