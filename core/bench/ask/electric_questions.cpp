// SPDX-License-Identifier: Apache-2.0
// What the bench asks about the 12 V side.
#include <algorithm>
#include <array>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/electric/battery.hpp"
#include "bench/electric/breakaway.hpp"
#include "bench/electric/wire.hpp"

namespace snugwalk {
namespace {

constexpr double ampHour = 3600.0;
constexpr double hour = 3600.0;

constexpr auto batteryInputs = std::to_array<BenchInput>({
    {.name = "volts",
     .dimension = Dimension::Voltage,
     .typical = 12.0,
     .low = 8.0,
     .high = 16.0,
     .required = true,
     .at = "temperature"},
    {.name = "temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 233.15,
     .high = 333.15,
     .usual = "25 °C"},
    {.name = "chemistry",
     .kind = AskKind::Word,
     .usual = "flooded",
     .words = "flooded agm gel lithium lead_acid lead lifepo4 lfp"},
    {.name = "rest",
     .dimension = Dimension::Duration,
     .typical = 4 * hour,
     .low = 0.0,
     .high = 366 * 24 * hour,
     .usual = "4 h"},
    {.name = "capacity",
     .dimension = Dimension::Charge,
     .typical = 100 * ampHour,
     .low = ampHour,
     .high = 2000 * ampHour},
    {.name = "draw", .dimension = Dimension::Current, .typical = 0.1, .low = 1e-3, .high = 500.0},
});

BatteryKind kindFrom(std::string_view word)
{
    if (word == "lifepo4" || word == "lfp")
        return BatteryKind::Lithium;
    return parseBatteryKind(word).value_or(BatteryKind::Flooded);
}

Result<BenchAnswer> answerBattery(const BenchTyped &typed)
{
    const BatteryKind kind = kindFrom(typed.text("chemistry"));
    const auto battery = Temperature::fromSi(typed.theNumber("temperature"));
    const auto state =
        batteryState({kind, typed.the<Voltage>("volts"), battery, typed.the<Duration>("rest")});
    if (!state)
        return state.error();
    BenchAnswer answer{
        {{"charge", Dimension::Fraction, state->charge}, {"cold", Dimension::Fraction, state->cold}}};
    if (state->freezes) {
        Estimate freezes = state->cold;
        freezes.value = freezes.high = state->freezes->si();
        freezes.low = std::min(freezes.value, freezesAt(1.130 + 0.150 * state->charge.high).si());
        freezes.unit = "K";
        freezes.source = "TM-5-1185";
        answer.figures.push_back({"freezes", Dimension::Temperature, freezes});
    }
    answer.extra = Value::Map{{"chemistry", std::string(slug(kind))}};
    if (typed.has("draw") != typed.has("capacity"))
        return Error{Errc::Usage, "days need both the capacity and the draw",
                     typed.has("draw") ? "capacity" : "draw",
                     "give --capacity 100Ah --draw 350mA, or neither"};
    if (!typed.has("draw"))
        return answer;
    const auto timesAt = [&](double charge) {
        return drawTimes({typed.the<Charge>("capacity"), charge, typed.the<Current>("draw"), kind, battery});
    };
    auto times = timesAt(state->charge.value);
    const auto low = timesAt(state->charge.low);
    const auto high = timesAt(state->charge.high);
    if (!times || !low || !high)
        return (!times ? times : !low ? low : high).error();
    // what volts leave open outweighs what it loses by itself
    times->toHalf.low = low->toHalf.low;
    times->toHalf.high = high->toHalf.high;
    times->halfOfWhat.low = low->halfOfWhat.low;
    times->halfOfWhat.high = high->halfOfWhat.high;
    answer.figures.push_back({"until-half", Dimension::Duration, times->toHalf});
    answer.figures.push_back({"half-of-it", Dimension::Duration, times->halfOfWhat});
    return answer;
}

constexpr auto wireInputs = std::to_array<BenchInput>({
    {.name = "gauge", .kind = AskKind::Text, .required = true},
    {.name = "length",
     .dimension = Dimension::Length,
     .typical = 5.0,
     .low = 0.0,
     .high = 100.0,
     .required = true},
    {.name = "current",
     .dimension = Dimension::Current,
     .typical = 5.0,
     .low = 0.0,
     .high = 500.0,
     .required = true},
    {.name = "volts",
     .dimension = Dimension::Voltage,
     .typical = 12.0,
     .low = 1.0,
     .high = 60.0,
     .usual = "12 V"},
    {.name = "temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 233.15,
     .high = 393.15,
     .usual = "20 °C"},
    {.name = "feeds", .kind = AskKind::Word, .usual = "brakes", .words = "brakes lamps other"},
    {.name = "return", .kind = AskKind::Word, .usual = "wire", .words = "wire frame"},
});

Result<BenchAnswer> answerWire(const BenchTyped &typed)
{
    const auto copper = wireArea(typed.text("gauge"));
    if (!copper)
        return copper.error();
    const double goal = typed.text("feeds") == "other" ? 0.10 : 0.03; // common practice, no source
    const auto drop = wireDrop(
        {*copper, typed.the<Length>("length"), typed.the<Current>("current"), typed.the<Voltage>("volts"),
         Temperature::fromSi(typed.theNumber("temperature")), goal, typed.text("return") == "frame"});
    if (!drop)
        return drop.error();
    BenchAnswer answer{{{"drop", Dimension::Voltage, drop->drop},
                        {"share", Dimension::Fraction, drop->share},
                        {"resistance", Dimension::Resistance, drop->resistance}}};
    if (drop->thinnest)
        answer.lines.push_back({"thinnest", {gaugeName(*drop->thinnest)}});
    else
        answer.lines.push_back({"none-thick-enough", {}});
    answer.extra = Value::Map{{"thinnest", drop->thinnest ? Value(gaugeName(*drop->thinnest)) : Value()},
                              {"goal", goal}};
    return answer;
}

constexpr auto breakawayInputs = std::to_array<BenchInput>({
    {.name = "capacity",
     .dimension = Dimension::Charge,
     .typical = 5 * ampHour,
     .low = 0.5 * ampHour,
     .high = 200 * ampHour,
     .usual = "5 Ah"},
    {.name = "magnets", .kind = AskKind::Count, .low = 1, .high = 12},
    {.name = "magnet-current",
     .dimension = Dimension::Current,
     .typical = 3.0,
     .low = 0.5,
     .high = 10.0,
     .usual = "3 A"},
    {.name = "current", .dimension = Dimension::Current, .typical = 12.0, .low = 0.1, .high = 100.0},
    {.name = "rating",
     .dimension = Dimension::Duration,
     .typical = 20 * hour,
     .low = hour,
     .high = 100 * hour,
     .usual = "20 h"},
    {.name = "exponent", .dimension = Dimension::Count, .low = 1.0, .high = 1.4, .usual = "1.15"},
    {.name = "temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 233.15,
     .high = 333.15,
     .usual = "25 °C"},
    {.name = "charge", .dimension = Dimension::Fraction, .low = 0.01, .high = 1.0, .usual = "100 %"},
});

Result<BenchAnswer> answerBreakaway(const BenchTyped &typed)
{
    if (!typed.has("current") && !typed.has("magnets"))
        return Error{Errc::Usage, "breakaway needs what the magnets draw", "magnets",
                     "give --magnets 4, or --current as measured"};
    const double each = typed.theNumber("magnet-current");
    const double current = typed.number("current").value_or(typed.number("magnets").value_or(0.0) * each);
    const auto hold =
        breakawayHold({typed.the<Charge>("capacity"), Current::fromSi(current), typed.the<Duration>("rating"),
                       typed.theNumber("exponent"), Temperature::fromSi(typed.theNumber("temperature")),
                       typed.theNumber("charge")});
    if (!hold)
        return hold.error();
    Estimate all = *hold;
    all.value = all.low = all.high = current;
    all.unit = "A";
    all.warnings.clear();
    return BenchAnswer{{{"hold-time", Dimension::Duration, *hold}, {"current", Dimension::Current, all}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "battery",
     .subject = "electric",
     .inputs = batteryInputs,
     .cautions = "acid_and_gas charge_lithium_warm",
     .point = "house-battery",
     .reading = "battery-rest-voltage",
     .kept = "volts",
     .example = "--volts \"12.45 V\" --temperature \"5 °C\" --chemistry flooded --capacity \"100 Ah\" --draw "
                "\"350 mA\"",
     .answer = answerBattery},
    {.name = "wire",
     .subject = "electric",
     .inputs = wireInputs,
     .cautions = "fuse_for_wire",
     .example = "--gauge 12 --length \"25 ft\" --current \"13 A\"",
     .answer = answerWire},
    {.name = "breakaway",
     .subject = "electric",
     .inputs = breakawayInputs,
     .cautions = "test_is_what_counts not_a_parking_brake",
     .point = "breakaway-battery",
     .reading = "breakaway-hold-time",
     .kept = "hold-time",
     .example = "--capacity \"5 Ah\" --magnets 4",
     .answer = answerBreakaway},
});

} // namespace

std::span<const BenchQuestion> electricQuestions() { return table; }

} // namespace snugwalk
