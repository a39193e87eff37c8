// SPDX-License-Identifier: Apache-2.0
// Choosing, ordering and telling bands.
#include "cli/due_answers.hpp"

#include <algorithm>
#include <map>

#include "base/text.hpp"
#include "due/rules.hpp"
#include "report/why_words.hpp"
#include "round/why.hpp"
#include "words/due_words.hpp"

namespace snugwalk::cli {
namespace {

Status checkZone(const Catalogue &catalogue, const std::string &zone)
{
    std::vector<std::string> zones;
    for (const Point &point : catalogue.points()) {
        if (std::find(zones.begin(), zones.end(), point.zone) == zones.end())
            zones.push_back(point.zone);
    }
    if (zone.empty() || std::find(zones.begin(), zones.end(), zone) != zones.end())
        return done();
    return Error{Errc::NotFound, "no such zone", zone, "use one of " + join(zones, ", ")};
}

void orderByConcern(const RigState &state, std::vector<const DueBand *> &bands)
{
    std::map<std::string_view, double> numbers;
    for (const PointConcern &point : state.points)
        numbers[point.point] = point.number;
    std::stable_sort(bands.begin(), bands.end(), [&](const DueBand *a, const DueBand *b) {
        return numbers[a->point] > numbers[b->point];
    });
}

} // namespace

Value dateValue(const std::optional<CivilDate> &date) { return date ? Value(formatDate(*date)) : Value(); }

Result<std::vector<const DueBand *>> filtered(const Session &session, const Standing &standing,
                                              const DueFilter &filter)
{
    SNUG_TRY(checkZone(session.catalogue(), filter.zone));
    const CivilDate until = addMonths(civilDate(standing.now), filter.months);
    std::vector<const DueBand *> bands;
    for (const DueBand &band : standing.bands) {
        const Point *point = session.catalogue().find(band.point);
        const bool otherZone = !filter.zone.empty() && (point == nullptr || point->zone != filter.zone);
        const bool undated = !band.likely && !filter.all;
        const bool tooLate = filter.months > 0 && band.early && *band.early > until;
        if (!otherZone && !undated && !tooLate)
            bands.push_back(&band);
    }
    if (filter.order == "concern")
        orderByConcern(standing.state, bands);
    return bands;
}

std::vector<DueEntry> explained(const Session &session, const Standing &standing,
                                const std::vector<const DueBand *> &bands)
{
    DueContext context(session.catalogue(), standing.history, standing.now);
    std::vector<DueEntry> entries;
    for (const DueBand *band : bands)
        entries.push_back({band, shiftOf(context, *band)});
    return entries;
}

Value dueJson(const DueEntry &entry, const Texts &texts)
{
    const DueBand &band = *entry.band;
    Value::List reasons;
    for (const Reason &reason : band.reasons)
        reasons.push_back(reasonJson(reason));
    Value::List parts;
    if (entry.shift) {
        for (const WhyPart &part : partsInMonths(*entry.shift))
            parts.push_back(Value::Map{{"cause", part.cause}, {"months", part.months}});
    }
    return Value::Map{{"point", band.point},
                      {"early", dateValue(band.early)},
                      {"likely", dateValue(band.likely)},
                      {"late", dateValue(band.late)},
                      {"alert", dateValue(band.alert)},
                      {"nominal", entry.shift ? Value(formatDate(entry.shift->nominal)) : Value()},
                      {"parts", parts},
                      {"sentence", dueSentence(entry, texts)},
                      {"at_distance", band.atDistance
                                          ? Value(Value::Map{{"value", band.atDistance->si()}, {"unit", "m"}})
                                          : Value()},
                      {"rule", band.rule},
                      {"basis", band.basis},
                      {"reasons", reasons},
                      {"due_now", band.dueNow},
                      {"past_due", band.pastDue},
                      {"ever_looked", band.everLooked},
                      {"last_look", dateValue(band.lastLook)}};
}

std::string dueSentence(const DueEntry &entry, const Texts &texts)
{
    return entry.shift ? whyDueWords(whySentence(*entry.band, *entry.shift), texts)
                       : whyUnshiftedWords(*entry.band, texts);
}

std::vector<std::string> dueWarnings(Session &session, const Standing &standing)
{
    std::vector<std::string> warnings;
    for (const Error &fault : session.worldFaults())
        warnings.push_back(fault.what + (fault.where.empty() ? "" : " (" + fault.where + ")") +
                           (fault.act.empty() ? "" : "; " + fault.act));
    for (const std::string &note : standing.history.weathering.notes) {
        if (!warnings.empty() && (note == "no_climate" || note == "no_coast"))
            continue; // said already, with what to do
        warnings.push_back(weatherNoteWords(note, session.texts()));
    }
    return warnings;
}

Value warningsJson(const std::vector<std::string> &warnings)
{
    return Value::List(warnings.begin(), warnings.end());
}

std::string warningLines(const std::vector<std::string> &warnings, const Texts &texts)
{
    std::string out;
    for (const std::string &warning : warnings)
        out += texts.phrase("due_warning", {warning}) + "\n";
    return out;
}

} // namespace snugwalk::cli
