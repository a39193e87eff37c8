// SPDX-License-Identifier: Apache-2.0
// Sides, loads that move, packing lists, liquids and the beam.
#include "bench/ask/weights_answers.hpp"

#include <vector>

#include "base/text.hpp"
#include "base/units.hpp"
#include "bench/weights/lever_scale.hpp"
#include "bench/weights/load_shift.hpp"
#include "bench/weights/ratings.hpp"
#include "bench/weights/weighing.hpp"

namespace snugwalk {
namespace {

constexpr double usualSteps = 20.0; // 20 lb or 20 kg; common practice, no source

Error badItem(std::string_view text)
{
    return {Errc::InvalidInput, "not a load at a place: \"" + std::string(text.substr(0, 40)) + "\"", "items",
            "write mass@place behind the ball, such as \"120 kg@7.5 m; 60 kg@0.6 m\""};
}

Result<std::vector<Packed>> itemsFrom(const BenchTyped &typed)
{
    const Unit mass = displayUnit(Dimension::Mass, typed.units(), 100.0);
    const Unit place = displayUnit(Dimension::Length, typed.units(), 5.0);
    std::vector<Packed> items;
    const std::string text = typed.text("items");
    for (const std::string_view part : split(text, ';')) {
        const auto sides = split(part, '@');
        if (sides.size() != 2)
            return badItem(part);
        const auto heavy = parseSi(Dimension::Mass, sides[0], mass);
        const auto where = parseSi(Dimension::Length, sides[1], place);
        if (!heavy || !where)
            return badItem(part);
        items.push_back({Mass::fromSi(*heavy), Length::fromSi(*where)});
    }
    return items;
}

} // namespace

TongueBand bandOf(std::string_view kind)
{
    if (kind == "fifth")
        return fifthWheelBand;
    return kind == "light" ? lightTrailerBand : travelTrailerBand;
}

Mass usualDivision(const BenchTyped &typed, std::string_view name)
{
    const auto unit = typed.unitOf(name);
    const bool pounds = unit ? unit->symbol == "lb" : typed.units() == UnitSystem::Us;
    return Mass::fromSi(toSi(*findUnit(Dimension::Mass, pounds ? "lb" : "kg"), usualSteps));
}

Result<BenchAnswer> answerSides(const BenchTyped &typed)
{
    auto sides = sideToSide(typed.the<Mass>("left"), typed.the<Mass>("right"),
                            static_cast<int>(typed.theNumber("tires")),
                            typed.quantity<Mass>("division").value_or(usualDivision(typed, "left")));
    if (!sides)
        return sides.error();
    if (!typed.has("division"))
        sides->imbalance.inputsDefaulted.emplace_back("division");
    BenchAnswer answer{{{"imbalance", Dimension::Fraction, sides->imbalance},
                        {"heavier-tire", Dimension::Mass, sides->heavierTire}}};
    answer.lines = {{sides->leftHeavier ? "left-heavier" : "right-heavier", {}}};
    return answer;
}

Result<BenchAnswer> answerShift(const BenchTyped &typed)
{
    LoadShift shift;
    shift.mass = typed.the<Mass>("mass");
    shift.from = typed.quantity<Length>("from");
    shift.to = typed.quantity<Length>("to");
    shift.axle = typed.the<Length>("axle");
    shift.tongue = typed.quantity<Mass>("tongue");
    shift.gross = typed.quantity<Mass>("gross");
    shift.band = bandOf(typed.text("kind"));
    const auto shifted = shiftLoad(shift);
    if (!shifted)
        return shifted.error();
    BenchAnswer answer{{{"tongue-change", Dimension::Mass, shifted->tongueChange},
                        {"axle-change", Dimension::Mass, shifted->axleChange}}};
    if (shifted->tongueAfter)
        answer.figures.push_back({"tongue-after", Dimension::Mass, *shifted->tongueAfter});
    if (shifted->shareAfter)
        answer.figures.push_back({"share-after", Dimension::Fraction, *shifted->shareAfter});
    return answer;
}

Result<BenchAnswer> answerPacking(const BenchTyped &typed)
{
    auto items = itemsFrom(typed);
    if (!items)
        return items.error();
    const auto axle = typed.the<Length>("axle");
    if (const auto tongue = typed.quantity<Mass>("empty-tongue"))
        items->push_back({*tongue, Length()});
    if (const auto axles = typed.quantity<Mass>("empty-axles"))
        items->push_back({*axles, axle});
    const auto forecast = forecastWeights(*items, axle, bandOf(typed.text("kind")));
    if (!forecast)
        return forecast.error();
    BenchAnswer answer{{{"tongue", Dimension::Mass, forecast->tongue},
                        {"share", Dimension::Fraction, forecast->share},
                        {"gross", Dimension::Mass, forecast->gross},
                        {"axles", Dimension::Mass, forecast->axles}}};
    const auto gvwr = typed.quantity<Mass>("gvwr");
    if (!gvwr)
        return answer;
    const Estimate &gross = forecast->gross;
    const std::vector<RatedLoad> loads{
        {"gvwr", Mass::fromSi(gross.value), *gvwr, Mass::fromSi(gross.high - gross.value)}};
    const auto margins = marginsOf(loads);
    if (!margins)
        return margins.error();
    const Estimate &left = margins->each.front().left;
    answer.figures.push_back({"left-gvwr", Dimension::Mass, left});
    auto &warnings = answer.figures.front().estimate.warnings;
    warnings.insert(warnings.end(), left.warnings.begin(), left.warnings.end());
    return answer;
}

Result<BenchAnswer> answerLiquid(const BenchTyped &typed)
{
    const Liquid liquid = parseLiquid(typed.text("what")).value_or(Liquid::Water);
    const auto mass = liquidMass(liquid, typed.the<Volume>("volume"));
    if (!mass)
        return mass.error();
    BenchAnswer answer{{{"mass", Dimension::Mass, *mass}}};
    if (!typed.has("to"))
        return answer;
    const auto axle = typed.quantity<Length>("axle");
    if (!axle)
        return Error{Errc::InvalidInput, "a place alone moves no tongue", "axle",
                     "give how far the middle of the axles lies behind the ball"};
    LoadShift shift;
    shift.mass = Mass::fromSi(mass->value);
    shift.to = typed.quantity<Length>("to");
    shift.axle = *axle;
    const auto shifted = shiftLoad(shift);
    if (!shifted)
        return shifted.error();
    answer.figures.push_back({"tongue-change", Dimension::Mass, shifted->tongueChange});
    answer.figures.push_back({"axle-change", Dimension::Mass, shifted->axleChange});
    return answer;
}

Result<BenchAnswer> answerLever(const BenchTyped &typed)
{
    const auto tongue =
        tongueByLever({typed.the<Mass>("reading"), typed.the<Mass>("tare"), typed.the<Length>("to-tongue"),
                       typed.the<Length>("to-scale"), typed.text("kind") == "fifth"});
    if (!tongue)
        return tongue.error();
    return BenchAnswer{{{"tongue", Dimension::Mass, *tongue}}};
}

} // namespace snugwalk
