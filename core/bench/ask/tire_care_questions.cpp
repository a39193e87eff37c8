// SPDX-License-Identifier: Apache-2.0
// What the bench asks about a tire's air, age and tread over time.
#include <array>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/tires/tire_age.hpp"
#include "bench/tires/tire_wear.hpp"

namespace snugwalk {
namespace {

constexpr BenchInput pressureOf(std::string_view name)
{
    return {.name = name, .dimension = Dimension::Pressure, .low = 1.0, .high = 1e6, .required = true};
}
constexpr BenchInput temperatureOf(std::string_view name)
{
    return {
        .name = name, .dimension = Dimension::Temperature, .low = 233.15, .high = 363.15, .required = true};
}
constexpr BenchInput altitudeOf(std::string_view name)
{
    return {.name = name,
            .dimension = Dimension::Length,
            .typical = 1000.0,
            .low = -500.0,
            .high = 6000.0,
            .usual = "0 m"};
}
constexpr BenchInput dateOf(std::string_view name)
{
    return {.name = name, .kind = AskKind::Date, .required = true};
}
constexpr BenchInput depthOf(std::string_view name)
{
    return {.name = name,
            .dimension = Dimension::Length,
            .typical = 0.005,
            .low = 0.0,
            .high = 0.03,
            .required = true};
}

constexpr auto leakInputs = std::to_array<BenchInput>({
    pressureOf("first-pressure"),
    temperatureOf("first-temperature"),
    altitudeOf("first-altitude"),
    dateOf("first-date"),
    pressureOf("second-pressure"),
    temperatureOf("second-temperature"),
    altitudeOf("second-altitude"),
    dateOf("second-date"),
});

constexpr auto ageInputs = std::to_array<BenchInput>({
    {.name = "code", .kind = AskKind::Text, .required = true, .positional = true},
    {.name = "on", .kind = AskKind::Date},
});

constexpr auto treadInputs = std::to_array<BenchInput>({
    depthOf("before"),
    depthOf("now"),
    {.name = "driven",
     .dimension = Dimension::Distance,
     .typical = 1e7,
     .low = 0.0,
     .high = 1e9,
     .required = true},
    {.name = "limit",
     .dimension = Dimension::Length,
     .typical = 0.005,
     .low = 0.0,
     .high = 0.03,
     .usual = "2/32 in"},
});

ColdReading reading(const BenchTyped &typed, const std::string &which)
{
    return {typed.the<Pressure>(which + "-pressure"),
            {typed.the<Temperature>(which + "-temperature"), typed.the<Length>(which + "-altitude")},
            typed.date(which + "-date").value_or(typed.today())};
}

Result<BenchAnswer> answerLeak(const BenchTyped &typed)
{
    const ColdReading first = reading(typed, "first");
    const Result<Estimate> rate = leakRate(first, reading(typed, "second"));
    if (!rate)
        return rate.error();
    Estimate lost = *rate; // of the first reading's pressure at 20 °C at sea level
    const auto at = pressureElsewhere(first.pressure, first.place, {celsius(20), {}});
    if (!at)
        return at.error();
    for (double *part : {&lost.value, &lost.low, &lost.high})
        *part *= at->si();
    lost.unit = "Pa/month";
    lost.warnings.clear();
    return BenchAnswer{{{"share-a-month", std::nullopt, *rate}, {"loss-a-month", std::nullopt, lost}}};
}

Result<BenchAnswer> answerAge(const BenchTyped &typed)
{
    const Result<TireMade> made = tireMade(typed.text("code"));
    if (!made)
        return made.error();
    const Result<Estimate> age = tireAge(*made, typed.date("on").value_or(typed.today()));
    if (!age)
        return age.error();
    BenchAnswer answer{{{"age", std::nullopt, *age}}};
    if (!made->beforeTwoThousand) {
        answer.lines.push_back({"made", {formatDate(made->date)}});
        answer.extra = Value::Map{{"made", formatDate(made->date)}};
    }
    return answer;
}

Result<BenchAnswer> answerTread(const BenchTyped &typed)
{
    const Result<Estimate> left = treadLeft({typed.the<Length>("before"), typed.the<Length>("now"),
                                             typed.the<Distance>("driven"), typed.the<Length>("limit")});
    if (!left)
        return left.error();
    return BenchAnswer{{{"left", Dimension::Distance, *left}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "leak-rate",
     .subject = "tires",
     .inputs = leakInputs,
     .cautions = "cold_tires",
     .point = "tire-pressure",
     .reading = "cold-pressure",
     .kept = "second-pressure",
     .example = "--first-pressure \"65 psi\" --first-temperature \"20 °C\" --first-date 2026-09-01 "
                "--second-pressure \"60 psi\" --second-temperature \"10 °C\" --second-date 2026-10-01",
     .answer = answerLeak},
    {.name = "tire-age",
     .subject = "tires",
     .inputs = ageInputs,
     .cautions = "both_and_spare",
     .point = "tire-age",
     .reading = "tire-made",
     .kept = "made",
     .example = "2319 --on 2026-11-24",
     .answer = answerAge},
    {.name = "tread",
     .subject = "tires",
     .inputs = treadInputs,
     .cautions = "deepest_wear",
     .point = "tread-depth",
     .reading = "tread-depth",
     .kept = "now",
     .example = "--before \"7/32 in\" --now \"5/32 in\" --driven \"9000 mi\"",
     .answer = answerTread},
});

} // namespace

std::span<const BenchQuestion> tireCareQuestions() { return table; }

} // namespace snugwalk
