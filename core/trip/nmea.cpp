// SPDX-License-Identifier: Apache-2.0
// Finding sentences in a log, joining those of one moment, and giving each its date.
#include "trip/nmea.hpp"

#include <algorithm>

#include "trip/nmea_sentence.hpp"
#include "trip/track_order.hpp"

namespace snugwalk {
namespace {

using namespace std::chrono;
using nmea::Reading;

constexpr std::size_t maxBytes = 64U << 20U;
constexpr auto halfDay = hours(12);

struct Epoch {
    Reading reading;
    long long line;
};

// The other sentence of the same moment fills what is missing; a first reading is not replaced.
bool joins(Reading &first, const Reading &other)
{
    if (first.timeOfDay != other.timeOfDay || (first.date && other.date && *first.date != *other.date))
        return false;
    if (!first.date)
        first.date = other.date;
    if (!first.point.altitude)
        first.point.altitude = other.point.altitude;
    if (!first.hdop)
        first.hdop = other.hdop;
    if (!first.speed)
        first.speed = other.speed;
    return true;
}

// The moment with this time of day that lies within half a day of a dated one.
Instant nearest(Instant dated, milliseconds timeOfDay)
{
    Instant moment = floor<days>(dated) + timeOfDay;
    if (moment - dated > halfDay)
        moment -= days(1);
    else if (dated - moment > halfDay)
        moment += days(1);
    return moment;
}

std::string lineText(long long line) { return "line " + std::to_string(line); }

class Log {
public:
    void take(const nmea::Outcome &outcome, long long line)
    {
        if (const auto *reason = std::get_if<std::string_view>(&outcome)) {
            countDrop(m_track.drops, *reason, lineText(line));
            return;
        }
        const Reading &reading = std::get<Reading>(outcome);
        if (m_epochs.empty() || !joins(m_epochs.back().reading, reading))
            m_epochs.push_back({reading, line});
    }

    Result<ParsedTrack> finish()
    {
        std::optional<Instant> dated = firstDated();
        for (const Epoch &epoch : m_epochs) {
            const Reading &reading = epoch.reading;
            if (!dated) {
                countDrop(m_track.drops, "no_time", lineText(epoch.line));
                continue;
            }
            dated = reading.date ? startOfDay(*reading.date) + reading.timeOfDay
                                 : nearest(*dated, reading.timeOfDay);
            m_track.fixes.push_back({*dated, reading.point, reading.hdop, reading.speed});
        }
        if (m_track.fixes.empty())
            return nothing();
        orderRuns(m_track.fixes);
        return std::move(m_track);
    }

private:
    // Readings before the first dated one count back from it.
    std::optional<Instant> firstDated() const
    {
        const auto found = std::find_if(m_epochs.begin(), m_epochs.end(),
                                        [](const Epoch &epoch) { return epoch.reading.date.has_value(); });
        if (found == m_epochs.end())
            return std::nullopt;
        Instant moment = startOfDay(*found->reading.date) + found->reading.timeOfDay;
        for (auto epoch = found; epoch != m_epochs.begin();)
            moment = nearest(moment, (--epoch)->reading.timeOfDay);
        return moment;
    }

    Error nothing() const
    {
        constexpr const char *act = "record again with RMC sentences and a clear view of the sky";
        if (m_track.drops.empty())
            return {Errc::InvalidInput, "no RMC or GGA sentence in this log", "", act};
        if (!m_epochs.empty())
            return {Errc::InvalidInput, "positions without a date: no RMC sentence has a fix",
                    lineText(m_epochs.front().line), act};
        const auto most = std::max_element(m_track.drops.begin(), m_track.drops.end(),
                                           [](const Drop &a, const Drop &b) { return a.count < b.count; });
        return {Errc::InvalidInput, "no usable fix in this log, mostly " + most->reason, most->firstWhere,
                act};
    }

    std::vector<Epoch> m_epochs;
    ParsedTrack m_track;
};

} // namespace

Result<ParsedTrack> parseNmea(std::string_view bytes)
{
    if (bytes.size() > maxBytes)
        return Error{Errc::OutOfRange, "a log over 64 MiB", "", "split it"};
    Log log;
    long long line = 1;
    std::size_t counted = 0;
    for (auto at = bytes.find('$'); at != std::string_view::npos; at = bytes.find('$', at + 1)) {
        const std::string_view fromDollar = bytes.substr(at);
        if (!nmea::isFixSentence(fromDollar))
            continue;
        line += std::count(bytes.begin() + static_cast<std::ptrdiff_t>(counted),
                           bytes.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        counted = at;
        log.take(nmea::readSentence(fromDollar), line);
    }
    return log.finish();
}

} // namespace snugwalk
