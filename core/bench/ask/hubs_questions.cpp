// SPDX-License-Identifier: Apache-2.0
// What the bench asks about bearings and hubs.
#include <algorithm>
#include <array>
#include <cstddef>
#include <string>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/hubs/bearing_life.hpp"
#include "bench/hubs/bearing_service.hpp"
#include "bench/hubs/end_play.hpp"
#include "bench/hubs/hub_stop.hpp"

namespace snugwalk {
namespace {

constexpr double dialTravel = 0.01; // m
constexpr double day = 86400.0;

constexpr auto playInputs = std::to_array<BenchInput>({
    {.name = "pull",
     .kind = AskKind::List,
     .dimension = Dimension::Length,
     .typical = 1e-4,
     .low = -dialTravel,
     .high = dialTravel,
     .required = true},
    {.name = "push",
     .kind = AskKind::List,
     .dimension = Dimension::Length,
     .typical = 1e-4,
     .low = -dialTravel,
     .high = dialTravel,
     .usual = "0 mm"},
    {.name = "least", .dimension = Dimension::Length, .typical = 1e-4, .low = 0.0, .high = dialTravel},
    {.name = "most", .dimension = Dimension::Length, .typical = 1e-4, .low = 0.0, .high = dialTravel},
});

Result<BenchAnswer> answerPlay(const BenchTyped &typed)
{
    const auto pushed = typed.list("push");
    const auto pulled = typed.list("pull");
    if (pushed.size() != 1 && pushed.size() != pulled.size())
        return Error{Errc::InvalidInput, "not one push for each pull", "push",
                     "give as many as of pull, or one when the dial was set to zero each time"};
    std::vector<PlayTrial> trials;
    for (std::size_t i = 0; i < pulled.size(); ++i)
        trials.push_back({Length::fromSi(pushed[pushed.size() == 1 ? 0 : i]), Length::fromSi(pulled[i])});
    std::optional<PlayLimits> maker;
    if (typed.has("least") || typed.has("most"))
        maker = PlayLimits{typed.quantity<Length>("least").value_or(publishedPlay.least),
                           typed.quantity<Length>("most").value_or(publishedPlay.most)};
    const auto play = endPlay(trials, maker);
    if (!play)
        return play.error();
    BenchAnswer answer{{{"end-play", Dimension::Length, play->play}}};
    answer.lines = {{slug(play->call), {}}};
    answer.extra = Value::Map{{"call", slug(play->call)}};
    return answer;
}

constexpr auto serviceInputs = std::to_array<BenchInput>({
    {.name = "served", .kind = AskKind::Date, .required = true},
    {.name = "driven", .dimension = Dimension::Distance, .typical = 1e6, .low = 0.0, .high = 1e9},
    {.name = "under-water", .kind = AskKind::Flag},
    {.name = "months", .kind = AskKind::Count, .low = 1.0, .high = 120.0},
    {.name = "distance", .dimension = Dimension::Distance, .typical = 1e6, .low = 1e5, .high = 1e9},
    {.name = "on", .kind = AskKind::Date},
});

Result<BenchAnswer> answerService(const BenchTyped &typed)
{
    BearingClock clock;
    clock.served = typed.date("served").value_or(CivilDate{});
    clock.today = typed.date("on").value_or(typed.today());
    clock.driven = typed.quantity<Distance>("driven");
    clock.underWater = typed.flag("under-water");
    if (const auto months = typed.number("months"))
        clock.makerMonths = static_cast<int>(*months);
    clock.makerDistance = typed.quantity<Distance>("distance");
    const auto due = bearingDue(clock);
    if (!due)
        return due.error();
    BenchAnswer answer{
        {{"used", Dimension::Fraction, due->share}, {"time-left", Dimension::Duration, due->time}}};
    if (due->distance)
        answer.figures.push_back({"distance-left", Dimension::Distance, *due->distance});
    answer.lines = {{"due-by", {formatDate(due->dueBy)}}};
    answer.extra =
        Value::Map{{"due_by", formatDate(due->dueBy)}, {"first", due->distanceFirst ? "distance" : "months"}};
    return answer;
}

constexpr auto lifeInputs = std::to_array<BenchInput>({
    {.name = "rating",
     .dimension = Dimension::Force,
     .typical = 1e4,
     .low = 1.0,
     .high = 1e7,
     .required = true},
    {.name = "load",
     .dimension = Dimension::Force,
     .typical = 1e4,
     .low = 1.0,
     .high = 1e7,
     .required = true},
    {.name = "kind", .kind = AskKind::Word, .usual = "roller", .words = "roller ball"},
    {.name = "circumference",
     .dimension = Dimension::Length,
     .typical = 2.0,
     .low = 0.5,
     .high = 5.0,
     .usual = "2.2 m"},
    {.name = "reliability", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0, .usual = "90 %"},
});

Result<BenchAnswer> answerLife(const BenchTyped &typed)
{
    const RollingElement kind = typed.text("kind") == "ball" ? RollingElement::Ball : RollingElement::Roller;
    const BearingLoad bearing{kind, typed.the<Force>("rating"), typed.the<Force>("load"),
                              typed.theNumber("reliability")};
    const auto distance = bearingDistance(bearing, typed.the<Length>("circumference"));
    if (!distance)
        return distance.error();
    const auto turns = bearingTurns(bearing);
    if (!turns)
        return turns.error();
    return BenchAnswer{{{"distance", Dimension::Distance, *distance}, {"turns", Dimension::Count, *turns}}};
}

constexpr double coldest = 223.15; // K
constexpr double hottest = 673.15;

constexpr auto hubInputs = std::to_array<BenchInput>({
    {.name = "hubs",
     .kind = AskKind::List,
     .dimension = Dimension::Temperature,
     .typical = 320.0,
     .low = coldest,
     .high = hottest,
     .required = true},
    {.name = "air", .dimension = Dimension::Temperature, .typical = 300.0, .low = 213.15, .high = 333.15},
    {.name = "driven", .dimension = Dimension::Duration, .typical = 1800.0, .low = 0.0, .high = day},
    {.name = "stood", .dimension = Dimension::Duration, .typical = 300.0, .low = 0.0, .high = day},
    {.name = "sun", .kind = AskKind::Word, .words = "left right"},
    {.name = "descent", .kind = AskKind::Flag},
    {.name = "earlier",
     .kind = AskKind::List,
     .dimension = Dimension::Temperature,
     .typical = 320.0,
     .low = coldest,
     .high = hottest},
});

std::vector<Temperature> temperatures(const std::vector<double> &list)
{
    std::vector<Temperature> out;
    for (const double si : list)
        out.push_back(Temperature::fromSi(si));
    return out;
}

HubStop stopFrom(const BenchTyped &typed)
{
    HubStop stop;
    stop.hubs = temperatures(typed.list("hubs"));
    stop.air = typed.quantity<Temperature>("air");
    stop.driven = typed.quantity<Duration>("driven");
    stop.stood = typed.quantity<Duration>("stood");
    if (typed.has("sun"))
        stop.sunny = typed.text("sun") == "left" ? HubSide::Left : HubSide::Right;
    stop.descent = typed.flag("descent");
    return stop;
}

// The stops before, as typed one after another, and this one.
Result<std::vector<HubStop>> stopsUpTo(const HubStop &now, const std::vector<Temperature> &earlier)
{
    const std::size_t hubs = now.hubs.size();
    if (earlier.size() % hubs != 0)
        return Error{Errc::InvalidInput, "the stops have another number of hubs", "earlier",
                     "give every hub of the rig at every stop, the first stop first"};
    std::vector<HubStop> stops;
    for (std::size_t i = 0; i < earlier.size(); i += hubs) {
        const auto from = earlier.begin() + static_cast<std::ptrdiff_t>(i);
        stops.push_back(now);
        stops.back().hubs.assign(from, from + static_cast<std::ptrdiff_t>(hubs));
    }
    stops.push_back(now);
    return stops;
}

// Adds how much the fastest hub gained on its mates since the first stop.
Status addTrend(const BenchTyped &typed, const HubStop &now, BenchAnswer &answer)
{
    const auto stops = stopsUpTo(now, temperatures(typed.list("earlier")));
    if (!stops)
        return stops.error();
    auto trends = hubTrends(*stops);
    if (!trends) {
        Error error = trends.error();
        error.where = "earlier";
        return error;
    }
    const auto fastest = std::max_element(trends->begin(), trends->end(), [](const auto &a, const auto &b) {
        return (a.last - a.first) < (b.last - b.first);
    });
    Estimate growth = answer.figures.front().estimate; // its doubt, unit and source
    const double gained = (fastest->last - fastest->first).si();
    growth = {gained, gained - 6.0, gained + 6.0, growth.level, growth.unit, growth.basis, growth.source, {},
              {}};
    if (fastest->growing)
        growth.warnings.emplace_back("growing_over_mates");
    answer.figures.push_back({"growth", Dimension::TemperatureDifference, growth});
    answer.extra.member("fastest") = static_cast<std::size_t>(fastest - trends->begin()) + 1;
    answer.extra.member("stops") = stops->size();
    return done();
}

Result<BenchAnswer> answerHub(const BenchTyped &typed)
{
    const HubStop stop = stopFrom(typed);
    const auto round = hubsAtStop(stop);
    if (!round)
        return round.error();
    BenchAnswer answer{{{"over-mates", Dimension::TemperatureDifference, round->overMates},
                        {"hottest", Dimension::Temperature, round->hottestAt}}};
    Value::List rises;
    for (const TemperatureDifference rise : round->rise)
        rises.emplace_back(rise.si());
    answer.extra = Value::Map{{"call", slug(round->call)}, {"hottest", round->hottest + 1}};
    if (!round->rise.empty()) {
        Estimate rise = round->hottestAt;
        rise.value = round->rise[round->hottest].si();
        rise.low = rise.value - 4.5; // 3 K of each reading, common practice
        rise.high = rise.value + 4.5;
        answer.figures.push_back({"over-air", Dimension::TemperatureDifference, rise});
        answer.extra.member("over_air") = rises;
    }
    answer.lines = {{round->hottest % 2 == 0 ? "hottest-left" : "hottest-right",
                     {std::to_string(round->hottest / 2 + 1)}},
                    {slug(round->call), {}}};
    if (typed.has("earlier"))
        SNUG_TRY(addTrend(typed, stop, answer));
    return answer;
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "bearing",
     .subject = "hubs",
     .inputs = playInputs,
     .cautions = "wheel_on_stand dial_only",
     .point = "bearing-play",
     .reading = "bearing-play",
     .kept = "end-play",
     .example = "--push \"0 in; 0.0005 in\" --pull \"0.003 in; 0.0035 in\"",
     .answer = answerPlay},
    {.name = "hub",
     .subject = "hubs",
     .inputs = hubInputs,
     .cautions = "hot_hub",
     .point = "hub-temperature",
     .reading = "hub-over-mates",
     .kept = "over-mates",
     .example = "--hubs \"112; 118; 109; 151 °F\" --air \"78 °F\" --driven \"60 min\"",
     .answer = answerHub},
    {.name = "bearing-service",
     .subject = "hubs",
     .inputs = serviceInputs,
     .cautions = "sealed_hubs_too",
     .example = "--served 2026-03-14 --driven \"4,200 mi\" --on 2026-11-24",
     .answer = answerService},
    {.name = "bearing-life",
     .subject = "hubs",
     .inputs = lifeInputs,
     .cautions = "life_is_no_reason",
     .example = "--rating \"20 kN\" --load \"4 kN\"",
     .answer = answerLife},
});

} // namespace

std::span<const BenchQuestion> hubQuestions() { return table; }

} // namespace snugwalk
