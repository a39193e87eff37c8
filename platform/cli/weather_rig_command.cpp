// SPDX-License-Identifier: Apache-2.0
// weather rig: what the weather did to the rig, day by day.
#include "base/text.hpp"
#include "cli/weather_options.hpp"
#include "cli/weather_rates.hpp"
#include "round/history.hpp"
#include "weather/weathering.hpp"

namespace snugwalk::cli {
namespace {

struct RigOptions {
    std::string from, until;
};

CivilDate firstDay(const RigHistory &history, CivilDate today)
{
    CivilDate first = today;
    for (const Trip &trip : history.trips)
        first = std::min(first, civilDate(trip.start));
    for (const Stay &stay : history.stays)
        first = std::min(first, civilDate(stay.from));
    return first;
}

struct Span {
    CivilDate from, until;
};

Result<Span> spanOf(const RigOptions &o, const RigHistory &history, CivilDate today)
{
    const auto until = o.until.empty() ? Result<CivilDate>(today) : dateOf(o.until, "--until");
    if (!until)
        return until.error();
    const auto from =
        o.from.empty() ? Result<CivilDate>(firstDay(history, *until)) : dateOf(o.from, "--from");
    if (!from)
        return from.error();
    if (*from > *until || daysBetween(*from, *until) > 36'525)
        return Error{Errc::OutOfRange, "not a span of days up to a hundred years", "--from, --until",
                     "give the earlier day first"};
    return Span{*from, *until};
}

template <typename Days>
Value ratesList(const Days &days)
{
    Value::List list;
    for (const DayRates &day : days)
        list.push_back(ratesValue(day));
    return list;
}

std::string meanWords(const Weathering &w)
{
    DayRates mean;
    mean.rate.fill({0.0, 0.0, 0.0});
    int recorded = 0;
    for (const DayRates &day : w.days) {
        recorded += day.recorded ? 1 : 0;
        for (std::size_t i = 0; i < mean.rate.size(); ++i)
            mean.rate.at(i).value += day.rate.at(i).value / static_cast<double>(w.days.size());
    }
    return std::to_string(w.days.size()) + " days from " + formatDate(w.first) + ", " +
           std::to_string(recorded) + " of them recorded; mean against the reference of 1:\n" +
           rateWords(mean);
}

Result<Answer> ofRig(Session &session, const RigOptions &o)
{
    const Result<Rig> rig = session.rig();
    const Result<LocalTime> now = session.now();
    if (!rig || !now)
        return rig ? now.error() : rig.error();
    const auto history = loadHistory(**session.book(), rig->id);
    if (!history)
        return history.error();
    const auto span = spanOf(o, *history, civilDate(*now));
    const Result<WorldTables> tables = worldTables();
    if (!span || !tables)
        return span ? tables.error() : span.error();
    const Weathering w = weatheringOf(history->trips, history->stays, history->weather, &tables->climate,
                                      &tables->coast, span->from, span->until);
    Value::List roads;
    for (const CivilDate &day : w.winterRoads)
        roads.emplace_back(formatDate(day));
    const std::string notes =
        w.notes.empty() ? "" : "notes: " + replaceAll(join(w.notes, ", "), "_", " ") + "\n";
    return Answer{Value::Map{{"from", formatDate(span->from)},
                             {"until", formatDate(span->until)},
                             {"days", ratesList(w.days)},
                             {"usual", ratesList(w.usual)},
                             {"winter_roads", roads},
                             {"notes", textList(w.notes)}},
                  meanWords(w) + notes};
}

} // namespace

void addWeatherRigCommand(CLI::App &weather, Registry &registry)
{
    auto r = std::make_shared<RigOptions>();
    CLI::App *rig =
        weather.add_subcommand("rig", "what the weather did to the rig, day by day, and what usually comes");
    rig->add_option("--from", r->from, "first day (default: the first in the logbook)");
    rig->add_option("--until", r->until, "last day (default: today)");
    registry.add(*rig, "  snugwalk weather rig --from 2026-01-01", [r](Session &s) { return ofRig(s, *r); });
}

} // namespace snugwalk::cli
