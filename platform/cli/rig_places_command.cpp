// SPDX-License-Identifier: Apache-2.0
// rig places: every place where something was ever found, with how often.
#include "base/text.hpp"
#include "cli/rig_places.hpp"
#include "logbook/query.hpp"
#include "rig/names.hpp"
#include "round/recurring_places.hpp"
#include "words/place_words.hpp"

namespace snugwalk::cli {
namespace {

Value timeValue(const std::optional<LocalTime> &time) { return time ? Value(formatLocal(*time)) : Value(); }

Value placeValue(const RecurringPlace &place, const std::string &words)
{
    Value::List findings;
    for (const Id &id : place.findings)
        findings.emplace_back(id.text());
    Value::Map one{{"words", words},
                   {"place", toValue(RigPlace{place.place.named, place.face, place.at})},
                   {"times", place.times},
                   {"open", place.isOpen},
                   {"first", timeValue(place.first)},
                   {"last", timeValue(place.last)},
                   {"last_mend", timeValue(place.lastMend)},
                   {"points", Value::List(place.points.begin(), place.points.end())}};
    one["findings"] = std::move(findings);
    return one;
}

std::string placeLine(Session &session, const RecurringPlace &place, const std::string &words)
{
    std::vector<std::string> titles;
    for (const std::string &point : place.points)
        titles.push_back(session.texts().point(point).title);
    return (place.times == 1 ? std::string("once") : std::to_string(place.times) + " times") +
           (place.isOpen ? ", open" : "") + "  " + words + ": " + join(titles, ", ") + "\n    first " +
           formatDate(civilDate(place.first)) + ", last " + formatDate(civilDate(place.last)) +
           (place.lastMend ? ", last mend " + formatDate(civilDate(*place.lastMend)) : ", no mend written") +
           "\n";
}

Result<Answer> places(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const auto histories = findingHistories(**session.book(), rig->id);
    if (!histories)
        return histories.error();
    const RecurringPlaces all = recurringPlaces(*rig, *histories);
    Value::List json;
    std::string text;
    for (const RecurringPlace &place : all.places) {
        const std::string words = placeWords(*rig, place.place, session.texts(), session.units());
        json.push_back(placeValue(place, words));
        text += placeLine(session, place, words);
    }
    if (all.withoutPlace > 0)
        text += "findings without a place: " + std::to_string(all.withoutPlace) + "\n";
    return Answer{Value::Map{{"places", json}, {"without_place", all.withoutPlace}},
                  text.empty() ? "nothing was ever found\n" : text};
}

} // namespace

void addRigPlacesCommand(CLI::App &rig, Registry &registry)
{
    registry.add(*rig.add_subcommand("places", "every place where something was ever found, with how often"),
                 "  snugwalk --rig Heron rig places\n  snugwalk rig places --json",
                 [](Session &s) { return places(s); });
}

} // namespace snugwalk::cli
