// SPDX-License-Identifier: Apache-2.0
// What the bench asks about water, winter and moisture.
#include <array>
#include <vector>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/standard_air.hpp"
#include "bench/water/antifreeze.hpp"
#include "bench/water/pressure_hold.hpp"
#include "bench/water/sanitizing.hpp"
#include "bench/water/wood_moisture.hpp"

namespace snugwalk {
namespace {

constexpr double liter = 1e-3;

constexpr BenchInput shareInput(std::string_view name)
{
    return {.name = name, .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0};
}
constexpr BenchInput waterInput(std::string_view name, bool required)
{
    return {.name = name,
            .dimension = Dimension::Volume,
            .typical = 50.0 * liter,
            .low = 0.0,
            .high = 1.0,
            .required = required};
}

constexpr auto antifreezeInputs = std::to_array<BenchInput>({
    {.name = "pipe",
     .kind = AskKind::List,
     .dimension = Dimension::Length,
     .typical = 10.0,
     .low = 0.0,
     .high = 300.0,
     .required = true},
    {.name = "size",
     .kind = AskKind::List,
     .dimension = Dimension::Length,
     .typical = 0.01,
     .low = 0.0,
     .high = 0.05,
     .usual = "1/2 in"},
    {.name = "traps", .kind = AskKind::Count, .low = 0.0, .high = 40.0, .usual = "4"},
    {.name = "heater", .dimension = Dimension::Volume, .typical = 0.02, .low = 0.0, .high = 0.1},
    {.name = "washer", .kind = AskKind::Flag},
    {.name = "no-pump", .kind = AskKind::Flag},
    {.name = "no-toilet", .kind = AskKind::Flag},
});

Result<std::vector<PipeRun>> runsFrom(const BenchTyped &typed)
{
    const auto lengths = typed.list("pipe");
    const auto sizes = typed.list("size");
    if (sizes.size() != 1 && sizes.size() != lengths.size())
        return Error{Errc::InvalidInput, "not one size for each length of pipe", "size",
                     "give one size for all, or as many as lengths"};
    std::vector<PipeRun> runs;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        const auto bore = pexBore(Length::fromSi(sizes[sizes.size() == 1 ? 0 : i]));
        if (!bore)
            return Error{Errc::Unsupported, "no inside of that size is known", "size",
                         "give 3/8 in, 1/2 in or 3/4 in"};
        runs.push_back({Length::fromSi(lengths[i]), *bore});
    }
    return runs;
}

Result<BenchAnswer> answerAntifreeze(const BenchTyped &typed)
{
    const auto runs = runsFrom(typed);
    if (!runs)
        return runs.error();
    const WaterSystem system{*runs,
                             static_cast<int>(typed.theNumber("traps")),
                             !typed.flag("no-pump"),
                             !typed.flag("no-toilet"),
                             typed.flag("washer"),
                             typed.quantity<Volume>("heater")};
    const auto volume = antifreezeVolume(system);
    if (!volume)
        return volume.error();
    return BenchAnswer{{{"volume", Dimension::Volume, *volume}}};
}

constexpr auto mixInputs = std::to_array<BenchInput>({
    {.name = "strength", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0, .usual = "100 %"},
    waterInput("water", true),
    waterInput("added", false),
    shareInput("wanted"),
});

Result<BenchAnswer> answerMix(const BenchTyped &typed)
{
    const double strength = typed.theNumber("strength");
    const auto water = typed.the<Volume>("water");
    if (typed.has("added")) {
        const auto mixed = strengthAfterMixing(strength, typed.the<Volume>("added"), water);
        if (!mixed)
            return mixed.error();
        return BenchAnswer{{{"strength-left", Dimension::Fraction, *mixed}}};
    }
    if (!typed.has("wanted"))
        return Error{Errc::Usage, "one of the two is needed", "added",
                     "give what was added, or the strength that is wanted"};
    const auto added = addedForStrength(strength, typed.theNumber("wanted"), water);
    if (!added)
        return added.error();
    return BenchAnswer{{{"to-add", Dimension::Volume, *added}}};
}

constexpr auto sanitizeInputs = std::to_array<BenchInput>({
    waterInput("water", true),
    {.name = "bleach", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0, .usual = "6 %"},
    {.name = "ppm", .low = 1.0, .high = 200.0, .usual = "50"},
    {.name = "added", .dimension = Dimension::Volume, .typical = 1e-4, .low = 0.0, .high = 0.1},
});

Result<BenchAnswer> answerSanitize(const BenchTyped &typed)
{
    const auto water = typed.the<Volume>("water");
    const double fraction = typed.theNumber("bleach");
    const auto bleach = bleachVolume(water, typed.theNumber("ppm"), fraction);
    if (!bleach)
        return bleach.error();
    Estimate contact;
    contact.value = contact.low = contact.high = usualContact.si();
    contact.unit = "s";
    contact.basis = "common_practice";
    contact.source = "CP";
    BenchAnswer answer{{{"bleach", Dimension::Volume, *bleach}, {"contact", Dimension::Duration, contact}}};
    if (const auto added = typed.quantity<Volume>("added")) {
        const auto ppm = chlorineOf(water, *added, fraction);
        if (!ppm)
            return ppm.error();
        answer.figures.push_back({"ppm", Dimension::Count, *ppm});
    }
    return answer;
}

constexpr double mostHold = 1e6; // Pa

constexpr auto holdInputs = std::to_array<BenchInput>({
    {.name = "start",
     .dimension = Dimension::Pressure,
     .low = 1.0,
     .high = mostHold,
     .required = true,
     .at = "start-at"},
    {.name = "end",
     .dimension = Dimension::Pressure,
     .low = 0.0,
     .high = mostHold,
     .required = true,
     .at = "end-at"},
    {.name = "start-at",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 253.15,
     .high = 333.15,
     .usual = "20 °C"},
    {.name = "end-at",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 253.15,
     .high = 333.15,
     .usual = "20 °C"},
    {.name = "held",
     .dimension = Dimension::Duration,
     .typical = 900.0,
     .low = 1.0,
     .high = 604800.0,
     .usual = "15 min"},
    {.name = "gauge", .dimension = Dimension::Pressure, .low = 1e4, .high = 1e7, .usual = "100 psi"},
    {.name = "altitude",
     .dimension = Dimension::Length,
     .typical = 100.0,
     .low = -500.0,
     .high = 5000.0,
     .usual = "0 m"},
});

Result<BenchAnswer> answerHold(const BenchTyped &typed)
{
    const auto air = standardAir(typed.the<Length>("altitude"));
    if (!air)
        return air.error();
    const PressureHold hold{typed.the<Pressure>("start"),       typed.the<Pressure>("end"),
                            typed.the<Temperature>("start-at"), typed.the<Temperature>("end-at"),
                            typed.the<Duration>("held"),        *air,
                            typed.the<Pressure>("gauge")};
    const auto held = pressureHeld(hold);
    if (!held)
        return held.error();
    BenchAnswer answer{
        {{"loss", Dimension::Pressure, held->loss}, {"expected", Dimension::Pressure, held->expected}}};
    answer.lines = {{slug(held->call), {}}};
    answer.extra = Value::Map{{"call", slug(held->call)}};
    return answer;
}

constexpr auto moistureInputs = std::to_array<BenchInput>({
    {.name = "reading",
     .dimension = Dimension::Fraction,
     .low = 0.0,
     .high = 0.6,
     .required = true,
     .at = "wood"},
    {.name = "air",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 273.15,
     .high = 333.15,
     .required = true},
    {.name = "humidity", .dimension = Dimension::Fraction, .low = 0.05, .high = 0.95, .required = true},
    {.name = "wood", .dimension = Dimension::Temperature, .typical = 293.0, .low = 253.15, .high = 333.15},
    {.name = "last-reading", .dimension = Dimension::Fraction, .low = 0.0, .high = 0.6},
    {.name = "humidity-within", .dimension = Dimension::Fraction, .low = 0.0, .high = 0.5},
});

// The law counts in percent, JSON in shares.
Estimate asShare(Estimate percent)
{
    for (double *part : {&percent.value, &percent.low, &percent.high})
        *part /= 100.0;
    percent.unit = "1";
    return percent;
}

Result<BenchAnswer> answerMoisture(const BenchTyped &typed)
{
    MoistureReading reading;
    reading.reading = 100.0 * typed.theNumber("reading");
    reading.wood = typed.quantity<Temperature>("wood");
    reading.air = typed.the<Temperature>("air");
    reading.humidity = typed.theNumber("humidity");
    reading.humidityWithin = typed.number("humidity-within").value_or(0.0);
    if (const auto last = typed.number("last-reading"))
        reading.lastReading = 100.0 * *last;
    const auto excess = moistureExcess(reading);
    if (!excess)
        return excess.error();
    return BenchAnswer{{{"excess", Dimension::Fraction, asShare(excess->excess)},
                        {"baseline", Dimension::Fraction, asShare(excess->baseline)},
                        {"corrected", Dimension::Fraction, asShare(excess->corrected)}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "antifreeze",
     .subject = "water",
     .inputs = antifreezeInputs,
     .cautions = "propylene_only alcohol_flame blow_out heater_plug",
     .example = "--pipe \"60 ft\" --size \"1/2 in\" --traps 5",
     .answer = answerAntifreeze},
    {.name = "antifreeze-mix",
     .subject = "water",
     .inputs = mixInputs,
     .cautions = "propylene_only alcohol_flame label_freeze_point",
     .example = "--water \"0.5 L\" --added \"2 L\"",
     .answer = answerMix},
    {.name = "sanitize",
     .subject = "water",
     .inputs = sanitizeInputs,
     .cautions = "plain_bleach flush_after",
     .example = "--water \"40 gal\" --ppm 50 --bleach \"6 %\"",
     .answer = answerSanitize},
    {.name = "pressure-hold",
     .subject = "water",
     .inputs = holdInputs,
     .cautions = "air_is_workshop",
     .example = "--start \"50 psi at 20 °C\" --end \"48.9 psi at 15 °C\" --held \"15 min\"",
     .answer = answerHold},
    {.name = "moisture",
     .subject = "water",
     .inputs = moistureInputs,
     .cautions = "same_spot false_reading",
     .point = "moisture-map",
     .reading = "moisture",
     .kept = "reading",
     .example = "--reading \"19.5 %\" --air \"20 °C\" --humidity \"65 %\"",
     .answer = answerMoisture},
});

} // namespace

std::span<const BenchQuestion> waterQuestions() { return table; }

} // namespace snugwalk
