// SPDX-License-Identifier: Apache-2.0
// What the bench asks about gas, detectors and extinguishers.
#include <algorithm>
#include <array>

#include "base/text.hpp"
#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/show.hpp"
#include "bench/ask/typed.hpp"
#include "bench/gas/ages.hpp"
#include "bench/gas/gas_hold.hpp"
#include "bench/gas/stamp.hpp"
#include "bench/standard_air.hpp"

namespace snugwalk {
namespace {

constexpr auto holdInputs = std::to_array<BenchInput>({
    {.name = "start", .dimension = Dimension::Pressure, .low = 0.0, .high = 35e3, .required = true},
    {.name = "end", .dimension = Dimension::Pressure, .low = -1e3, .high = 35e3, .required = true},
    {.name = "time",
     .dimension = Dimension::Duration,
     .typical = 180.0,
     .low = 10.0,
     .high = 86400.0,
     .usual = "3 min"},
    {.name = "temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 243.15,
     .high = 333.15,
     .usual = "20 °C"},
    {.name = "end-temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 243.15,
     .high = 333.15},
    {.name = "piping", .dimension = Dimension::Volume, .typical = 5e-4, .low = 1e-6, .high = 1.0},
    {.name = "altitude",
     .dimension = Dimension::Length,
     .typical = 1000.0,
     .low = -500.0,
     .high = 5000.0,
     .usual = "0 m"},
});

Result<BenchAnswer> answerHold(const BenchTyped &typed)
{
    const auto air = standardAir(typed.the<Length>("altitude"));
    if (!air)
        return air.error();
    GasHold hold{typed.the<Pressure>("start"),
                 typed.the<Pressure>("end"),
                 typed.the<Duration>("time"),
                 Temperature::fromSi(typed.theNumber("temperature")),
                 {},
                 typed.quantity<Volume>("piping"),
                 *air};
    if (const auto end = typed.number("end-temperature"))
        hold.endPipe = Temperature::fromSi(*end);
    const auto result = gasHold(hold);
    if (!result)
        return result.error();
    BenchAnswer answer{{{"lost", Dimension::Pressure, result->lost},
                        {"by-temperature", Dimension::Pressure, result->temperature}}};
    if (result->flow) {
        answer.figures.push_back({"flow", std::nullopt, *result->flow});
        answer.lines.push_back({"milliliters", {fixed(result->flow->value * 60e6, 2)}});
    }
    const auto inches = findUnit(Dimension::Pressure, "inwc");
    answer.lines.push_back(
        {"inches",
         {showIn(*inches, result->lost.value), showIn(*inches, result->lost.low),
          showIn(*inches, result->lost.high), showIn(*inches, result->temperature.value)}});
    answer.lines.push_back({"who", {}});
    return answer;
}

constexpr auto cylinderInputs = std::to_array<BenchInput>({
    {.name = "stamp", .kind = AskKind::Text, .required = true, .positional = true},
    {.name = "test", .kind = AskKind::Word, .usual = "made", .words = "made external proof volume"},
    {.name = "on", .kind = AskKind::Date},
});

Result<CivilDate> stampOf(const BenchTyped &typed, std::string_view name)
{
    if (const auto date = parseStamp(typed.text(name)))
        return *date;
    return Error{Errc::InvalidInput, "not a date: \"" + typed.text(name).substr(0, 40) + "\"",
                 std::string(name), "write it as it is stamped, 04-19, or as 2019-04-30"};
}

BenchAnswer dueAnswer(const DueBy &due)
{
    BenchAnswer answer{{{"left", Dimension::Duration, due.left}, {"age", Dimension::Duration, due.age}}};
    answer.lines.push_back({"due", {formatDate(due.due)}});
    answer.extra = Value::Map{{"due", formatDate(due.due)}};
    return answer;
}

Result<BenchAnswer> answerCylinder(const BenchTyped &typed)
{
    const auto stamp = stampOf(typed, "stamp");
    if (!stamp)
        return stamp.error();
    const auto due = cylinderDue(*stamp, parseCylinderTest(typed.text("test")).value_or(CylinderTest::Made),
                                 typed.date("on").value_or(typed.today()));
    if (!due)
        return due.error();
    return dueAnswer(*due);
}

constexpr auto fillInputs = std::to_array<BenchInput>({
    {.name = "water-capacity",
     .dimension = Dimension::Mass,
     .typical = 20.0,
     .low = 1.0,
     .high = 500.0,
     .required = true},
    {.name = "tare", .dimension = Dimension::Mass, .typical = 8.0, .low = 0.5, .high = 500.0},
    {.name = "weighed", .dimension = Dimension::Mass, .typical = 15.0, .low = 0.5, .high = 1000.0},
});

Result<BenchAnswer> answerFill(const BenchTyped &typed)
{
    const auto full = cylinderFill(typed.the<Mass>("water-capacity"));
    if (!full)
        return full.error();
    BenchAnswer answer{{{"full", Dimension::Mass, *full}}};
    const auto tare = typed.quantity<Mass>("tare");
    const auto weighed = typed.quantity<Mass>("weighed");
    if (!tare || !weighed)
        return answer;
    if (*weighed < *tare)
        return Error{Errc::OutOfRange, "it weighs less than its tare", "weighed",
                     "read the TW stamp and the scale again"};
    Estimate in = *full;
    in.value = (*weighed - *tare).si();
    in.low = std::max(0.0, in.value - 0.2); // common practice, no source: a luggage scale
    in.high = in.value + 0.2;
    in.basis = "measured";
    in.source = "scale";
    if (in.low > full->value)
        answer.figures.front().estimate.warnings.emplace_back("overfilled");
    answer.figures.push_back({"gas-in-it", Dimension::Mass, in});
    return answer;
}

constexpr auto ageInputs = std::to_array<BenchInput>({
    {.name = "item",
     .kind = AskKind::Word,
     .required = true,
     .positional = true,
     .words =
         "smoke_alarm co_alarm gas_alarm extinguisher extinguisher_exam extinguisher_test extinguisher_look "
         "gas_hose gas_regulator breakaway_battery house_battery_flooded house_battery_agm "
         "house_battery_lithium water_filter anode brake_fluid"},
    {.name = "made", .kind = AskKind::Text, .required = true},
    {.name = "end", .kind = AskKind::Text},
    {.name = "on", .kind = AskKind::Date},
});

Result<BenchAnswer> answerAge(const BenchTyped &typed)
{
    const std::string item = typed.text("item");
    const auto made = stampOf(typed, "made");
    if (!made)
        return made.error();
    Aged aged{item, *made, {}, typed.date("on").value_or(typed.today())};
    if (typed.has("end")) {
        const auto end = stampOf(typed, "end");
        if (!end)
            return end.error();
        aged.makerEnd = *end;
    }
    const auto due = agedDue(aged);
    if (!due)
        return due.error();
    return dueAnswer(*due);
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "gas-hold",
     .subject = "gas",
     .inputs = holdInputs,
     .cautions = "gas_licensed gas_smell",
     .example = "--start \"9 inWC\" --end \"8 inWC\" --temperature \"20 °C\" --end-temperature \"20 °C\" "
                "--piping \"0.5 L\"",
     .answer = answerHold},
    {.name = "cylinder",
     .subject = "gas",
     .inputs = cylinderInputs,
     .cautions = "cylinder_licensed",
     .point = "gas-cylinder-date",
     .reading = "cylinder-date",
     .kept = "stamp",
     .example = "04-19 --test made --on 2026-11-24",
     .answer = answerCylinder},
    {.name = "cylinder-fill",
     .subject = "gas",
     .inputs = fillInputs,
     .cautions = "cylinder_licensed cylinder_outdoors",
     .example = "--water-capacity \"47.6 lb\" --tare \"17 lb\" --weighed \"30 lb\"",
     .answer = answerFill},
    {.name = "age",
     .subject = "gas",
     .inputs = ageInputs,
     .cautions = "alarm_test",
     .example = "smoke_alarm --made 06-18 --on 2026-11-24",
     .answer = answerAge},
});

} // namespace

std::span<const BenchQuestion> gasQuestions() { return table; }

} // namespace snugwalk
