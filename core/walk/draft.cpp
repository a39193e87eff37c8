// SPDX-License-Identifier: Apache-2.0
// Checking what a person wants to write, so that only what makes sense reaches the logbook.
#include "walk/draft.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

bool contains(const std::vector<std::string> &list, std::string_view item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

Error refuse(const std::string &where, std::string what, std::string act)
{
    return {Errc::InvalidInput, std::move(what), where, std::move(act)};
}

std::string readingList(const Point &point)
{
    std::vector<std::string> slugs;
    for (const ReadingSpec &spec : point.readings)
        slugs.push_back(spec.slug);
    return slugs.empty() ? "this point takes no reading" : "use one of " + join(slugs, ", ");
}

Status checkNote(const std::string &note, const Point &point)
{
    if (note.size() <= 4000 && isUtf8(note))
        return done();
    return Error{Errc::OutOfRange, "a note over 4,000 bytes or not UTF-8", point.slug + ", note",
                 "shorten it"};
}

Result<Reading> checkReading(const TypedReading &typed, const Point &point, const Rig &rig)
{
    const std::string where = point.slug + ", reading " + typed.slug;
    const ReadingSpec *spec = point.reading(typed.slug);
    if (spec == nullptr)
        return refuse(where, "no such reading here", readingList(point));
    if (!typed.place.empty() && !findNamedPlace(rig, typed.place))
        return refuse(where, "this rig has no place \"" + typed.place + "\"",
                      "name a wheel such as \"wheel 1L\"");
    const Result<double> si = parseSi(spec->dimension, typed.text, findUnit(spec->dimension, spec->unit));
    if (!si)
        return Error{si.error().code, si.error().what + " " + si.error().where, where, si.error().act};
    if (typed.tool.size() > 200 || !isUtf8(typed.tool))
        return refuse(where, "a tool's name over 200 bytes or not UTF-8", "shorten it");
    const auto written = unitWritten(spec->dimension, typed.text);
    const std::string unit = written ? std::string(written->symbol) : spec->unit;
    return Reading{typed.slug, typed.place, spec->dimension, *si, unit, typed.tool};
}

Status checkFinding(const FindingDraft &finding, const Point &point, const Rig &rig)
{
    const bool again = !finding.same.isNull();
    if (!again && !contains(point.defects, finding.defect))
        return refuse(point.slug + ", defect",
                      finding.defect.empty() ? "no defect named"
                                             : "\"" + finding.defect + "\" is no defect of this point",
                      "use one of " + join(point.defects, ", "));
    if (finding.grade < (again ? 0 : 1) || finding.grade > 5)
        return Error{Errc::OutOfRange, "grade " + std::to_string(finding.grade), point.slug + ", grade",
                     "1 dulled, 2 hairline, 3 open or loose, 4 through or moving, 5 a hold; 0 says a known "
                     "finding is gone"};
    SNUG_TRY(checkNote(finding.note, point));
    return checkPlace(rig, finding.place);
}

// A finding that is there and a pass would contradict each other, and so would attention to nothing.
Status checkFindingsFit(const MarkDraft &draft, const Point &point)
{
    const auto isThere = [](const FindingDraft &f) { return f.same.isNull() || f.grade != 0; };
    const bool any = std::any_of(draft.findings.begin(), draft.findings.end(), isThere);
    const bool closes = draft.state == MarkState::Pass || draft.state == MarkState::NotFitted;
    if (any && closes)
        return refuse(point.slug + ", state", "a finding that is there, and no attention",
                      "mark it attention");
    if (!any && draft.state == MarkState::Attention)
        return refuse(point.slug + ", state", "attention, and all that was found is gone",
                      "mark it pass, or say what was found");
    for (auto f = draft.findings.begin(); f != draft.findings.end(); ++f) {
        const auto sameAs = [&](const FindingDraft &other) {
            return !f->same.isNull() && other.same == f->same;
        };
        if (std::any_of(draft.findings.begin(), f, sameAs))
            return refuse(point.slug + ", same", "one finding named twice", "say once what was seen of it");
    }
    return done();
}

Status checkState(const MarkDraft &draft, const Point &point)
{
    switch (draft.state) {
    case MarkState::NotLooked:
        return refuse(point.slug, "no mark named", "use pass, attention, not_fitted or could_not_look");
    case MarkState::CouldNotLook:
        if (!contains(reasons(), draft.reason))
            return refuse(point.slug + ", reason",
                          draft.reason.empty() ? "no reason given" : "unknown reason",
                          "use one of " + join(reasons(), ", "));
        return done();
    case MarkState::Attention:
        if (draft.findings.empty())
            return refuse(point.slug, "attention without a finding", "say what was found: defect and grade");
        return done();
    default:
        return done();
    }
}

Result<std::optional<Extent>> extentOf(Dimension dimension, double si, double most)
{
    if (si < 0.0 || si > most)
        return Error{Errc::OutOfRange, "no finding is that large", "extent", "check the unit"};
    if (dimension == Dimension::Length)
        return std::optional(Extent{dimension, si, si < 0.5 ? "mm" : "m"});
    return std::optional(
        Extent{dimension, si, std::string(displayUnit(dimension, UnitSystem::Si, si).symbol)});
}

// A length, an area, or a reading that tells how bad it is; a reading needs its unit.
Result<std::optional<Extent>> measuredExtent(std::string_view text)
{
    if (const Result<double> length = parseSi(Dimension::Length, text))
        return extentOf(Dimension::Length, *length, 30.0);
    if (const Result<double> area = parseSi(Dimension::Area, text))
        return extentOf(Dimension::Area, *area, 200.0);
    for (const Dimension dimension :
         {Dimension::Fraction, Dimension::Voltage, Dimension::Current, Dimension::Pressure, Dimension::Mass,
          Dimension::Torque, Dimension::Temperature, Dimension::Volume, Dimension::Duration}) {
        const Result<double> si = parseSi(dimension, text);
        if (si)
            return extentOf(dimension, *si, dimension == Dimension::Fraction ? 1.0 : 1e9);
    }
    return refuse("extent", "not understood: \"" + std::string(text.substr(0, 40)) + "\"",
                  "write how much, such as \"14 mm\", \"1/2 in\", \"20 cm2\", \"24 %\" or \"3\"");
}

} // namespace

const std::vector<std::string> &reasons()
{
    static const std::vector<std::string> list = {"risky_to_reach",   "wet_or_icy", "too_dark",
                                                  "blocked_by_goods", "no_tool",    "needs_licensed_person",
                                                  "no_time",          "other"};
    return list;
}

Result<std::optional<Extent>> parseExtent(std::string_view text)
{
    text = trim(text);
    if (text.empty())
        return std::optional<Extent>();
    // whole numbers count; a bare fraction is of an inch, as everywhere
    const Result<double> count = parseSi(Dimension::Count, text);
    if (count && text.find('/') == std::string_view::npos) {
        if (*count >= 0.0 && *count <= 100000.0 && *count == std::floor(*count))
            return std::optional(Extent{Dimension::Count, *count, ""});
        return refuse("extent", "not a count: \"" + std::string(text.substr(0, 40)) + "\"",
                      "write a whole number, or a length with its unit, such as \"14 mm\"");
    }
    return measuredExtent(text);
}

Limits limitsFor(const ReadingSpec &spec, const Point &point, const Rig &rig)
{
    const auto si = [](const auto &q) { return q ? std::optional<double>(q->si()) : std::nullopt; };
    if (point.slug == "tire-pressure" && spec.dimension == Dimension::Pressure && rig.tires.placard)
        return {si(rig.tires.placard), si(rig.tires.maxPressure), "maker"};
    // a wrench tells too loose, never too tight: only the low side is a limit
    if (point.slug == "wheel-nut-torque" && spec.dimension == Dimension::Torque && rig.wheels.torque)
        return {si(rig.wheels.torque), std::nullopt, "maker"};
    if (spec.dimension == Dimension::Mass && spec.slug == "nose-weight" && rig.ratings.nose)
        return {spec.lowSi, si(rig.ratings.nose), "maker"};
    if (spec.dimension == Dimension::Mass && spec.slug == "gross-weight" && rig.ratings.gross)
        return {spec.lowSi, si(rig.ratings.gross), "maker"};
    if (spec.dimension == Dimension::Mass && spec.slug == "gross-weight" && rig.ratings.gross)
        return {spec.lowSi, si(rig.ratings.gross), "maker"};
    const bool any = spec.lowSi || spec.highSi;
    return {spec.lowSi, spec.highSi, any ? spec.setBy : std::string()};
}

bool isOutside(const Limits &limits, double si)
{
    // 12 in and 304.8 mm are one length, a hair apart once both are in metres
    const double hair = 1e-9 * std::fabs(si);
    return (limits.lowSi && si < *limits.lowSi - hair) || (limits.highSi && si > *limits.highSi + hair);
}

Result<CheckedMark> checkMark(const MarkDraft &draft, const Point &point, const Rig &rig)
{
    SNUG_TRY(checkState(draft, point));
    SNUG_TRY(checkNote(draft.note, point));
    CheckedMark checked;
    checked.state = draft.state;
    for (const TypedReading &typed : draft.readings) {
        const Result<Reading> reading = checkReading(typed, point, rig);
        if (!reading)
            return reading.error();
        const auto readBefore = [&](const Reading &r) {
            return r.slug == typed.slug && r.place == typed.place;
        };
        if (std::any_of(checked.readings.begin(), checked.readings.end(), readBefore))
            return refuse(point.slug + ", reading " + typed.slug, "read twice at one place", "give it once");
        const Limits limits = limitsFor(*point.reading(typed.slug), point, rig);
        if (isOutside(limits, reading->si))
            checked.warnings.push_back(
                {reading->slug, reading->place, reading->dimension, reading->si, limits});
        checked.readings.push_back(*reading);
    }
    for (const FindingDraft &finding : draft.findings) {
        SNUG_TRY(checkFinding(finding, point, rig));
        const auto extent = parseExtent(finding.extentText);
        if (!extent)
            return Error{extent.error().code, extent.error().what, point.slug + ", " + extent.error().where,
                         extent.error().act};
        checked.extents.push_back(*extent);
    }
    SNUG_TRY(checkFindingsFit(draft, point));
    return checked;
}

} // namespace snugwalk
