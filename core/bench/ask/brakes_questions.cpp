// SPDX-License-Identifier: Apache-2.0
// What the bench asks about brakes.
#include <array>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/brakes/chains.hpp"
#include "bench/brakes/lining_life.hpp"
#include "bench/brakes/magnet_current.hpp"

namespace snugwalk {
namespace {

constexpr auto magnetInputs = std::to_array<BenchInput>({
    {.name = "total",
     .dimension = Dimension::Current,
     .typical = 10.0,
     .low = 0.0,
     .high = 200.0,
     .required = true,
     .at = "volts"},
    {.name = "magnets", .kind = AskKind::Count, .low = 1.0, .high = 12.0, .required = true},
    {.name = "maker", .dimension = Dimension::Current, .typical = 3.0, .low = 0.5, .high = 10.0},
    {.name = "volts", .dimension = Dimension::Voltage, .typical = 12.0, .low = 6.0, .high = 16.0},
    {.name = "resistance", .dimension = Dimension::Resistance, .typical = 3.0, .low = 0.5, .high = 20.0},
    {.name = "size", .kind = AskKind::Word, .usual = "large", .words = "small large"},
});

Result<BenchAnswer> answerMagnet(const BenchTyped &typed)
{
    const auto draw = magnetDraw({typed.the<Current>("total"), static_cast<int>(typed.theNumber("magnets")),
                                  typed.quantity<Current>("maker"), typed.quantity<Voltage>("volts"),
                                  typed.quantity<Resistance>("resistance"),
                                  typed.text("size") == "small" ? MagnetSize::Small : MagnetSize::Large});
    if (!draw)
        return draw.error();
    BenchAnswer answer{{{"each", Dimension::Current, draw->each},
                        {"deviation", Dimension::Fraction, draw->deviation},
                        {"figure", Dimension::Current, draw->figure}}};
    if (draw->expected)
        answer.figures.push_back({"expected", Dimension::Current, *draw->expected});
    answer.lines = {{slug(draw->call), {}}};
    answer.extra = Value::Map{{"call", slug(draw->call)}};
    return answer;
}

constexpr double mostLining = 0.025; // m

constexpr BenchInput liningInput(std::string_view name, bool required)
{
    return {.name = name,
            .dimension = Dimension::Length,
            .typical = 0.005,
            .low = 0.0,
            .high = mostLining,
            .required = required};
}

constexpr auto liningInputs = std::to_array<BenchInput>({
    liningInput("before", true),
    liningInput("now", true),
    {.name = "driven",
     .dimension = Dimension::Distance,
     .typical = 1e7,
     .low = 1e5,
     .high = 5e8,
     .required = true},
    liningInput("maker", false),
});

Result<BenchAnswer> answerLining(const BenchTyped &typed)
{
    const auto life = liningLife({typed.the<Length>("before"), typed.the<Length>("now"),
                                  typed.the<Distance>("driven"), typed.quantity<Length>("maker")});
    if (!life)
        return life.error();
    return BenchAnswer{{{"left", Dimension::Distance, life->left}}};
}

constexpr auto chainInputs = std::to_array<BenchInput>({
    {.name = "gvwr",
     .dimension = Dimension::Mass,
     .typical = 3000.0,
     .low = 50.0,
     .high = 20'000.0,
     .required = true},
    {.name = "grade", .kind = AskKind::Word, .words = "30 43 70 g30 g43 g70"},
    {.name = "size", .dimension = Dimension::Length, .typical = 0.006, .low = 0.001, .high = 0.05},
    {.name = "tag", .dimension = Dimension::Mass, .typical = 3000.0, .low = 50.0, .high = 50'000.0},
    {.name = "chains", .kind = AskKind::Count, .low = 1.0, .high = 4.0, .usual = "2"},
    {.name = "wear", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0},
    {.name = "stretch", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0},
    {.name = "welded", .kind = AskKind::Flag},
});

Result<BenchAnswer> answerChain(const BenchTyped &typed)
{
    SafetyChains chains;
    chains.grade = parseChainGrade(typed.text("grade"));
    chains.size = typed.quantity<Length>("size");
    chains.tagged = typed.quantity<Mass>("tag");
    chains.gvwr = typed.the<Mass>("gvwr");
    chains.chains = static_cast<int>(typed.theNumber("chains"));
    chains.wear = typed.number("wear");
    chains.stretch = typed.number("stretch");
    chains.welded = typed.flag("welded");
    const auto strength = chainStrength(chains);
    if (!strength)
        return strength.error();
    return BenchAnswer{{{"breaking", Dimension::Mass, strength->breaking},
                        {"wanted", Dimension::Mass, strength->wanted},
                        {"margin", Dimension::Fraction, strength->margin}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "magnet",
     .subject = "brakes",
     .inputs = magnetInputs,
     .cautions = "current_is_not_stopping",
     .point = "brake-current",
     .reading = "brake-current",
     .kept = "each",
     .example = "--total \"12.9 A at 12.6 V\" --magnets 4 --maker \"3.75 A\"",
     .answer = answerMagnet},
    {.name = "lining",
     .subject = "brakes",
     .inputs = liningInputs,
     .cautions = "thinnest_spot brake_dust",
     .point = "brake-linings",
     .reading = "lining-thickness",
     .kept = "now",
     .example = "--before \"5 mm\" --now \"4 mm\" --driven \"20,000 km\"",
     .answer = answerLining},
    {.name = "chain",
     .subject = "brakes",
     .inputs = chainInputs,
     .cautions = "weakest_link chains_crossed",
     .point = "chains-condition",
     .reading = "link-wear",
     .kept = "wear",
     .example = "--grade 43 --size \"1/4 in\" --gvwr \"7,400 lb\"",
     .answer = answerChain},
});

} // namespace

std::span<const BenchQuestion> brakeQuestions() { return table; }

} // namespace snugwalk
