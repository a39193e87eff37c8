// SPDX-License-Identifier: Apache-2.0
// What the bench asks about wheel nuts.
#include <array>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/show.hpp"
#include "bench/ask/typed.hpp"
#include "bench/wheels/clamp_force.hpp"
#include "bench/wheels/star_order.hpp"

namespace snugwalk {
namespace {

constexpr auto torqueInputs = std::to_array<BenchInput>({
    {.name = "stud", .kind = AskKind::Text, .required = true},
    {.name = "torque", .dimension = Dimension::Torque, .low = 0.0, .high = 2000.0, .required = true},
    {.name = "friction", .dimension = Dimension::Count, .low = 0.0, .high = 1.0, .usual = "0.20"},
    {.name = "grade", .kind = AskKind::Word, .words = "5 8 8.8 10.9 12.9"},
});

constexpr auto starInputs = std::to_array<BenchInput>({
    {.name = "studs", .kind = AskKind::Count, .dimension = Dimension::Count, .required = true},
});

Estimate exact(double value, const char *unit, const char *basis, const char *source)
{
    return {value, value, value, 1.0, unit, basis, source, {}, {}};
}

// A third off the ground, two thirds, then all of it on the ground; the figure itself is the maker's.
void addStages(BenchAnswer &answer, Torque full)
{
    answer.figures.push_back(
        {"stage-off-ground", Dimension::Torque, exact(full.si() / 3.0, "N·m", "common_practice", "CP")});
    answer.figures.push_back(
        {"stage-middle", Dimension::Torque, exact(full.si() * 2.0 / 3.0, "N·m", "common_practice", "CP")});
    answer.figures.push_back(
        {"stage-on-ground", Dimension::Torque, exact(full.si(), "N·m", "maker", "typed in")});
}

Result<BenchAnswer> answerTorque(const BenchTyped &typed)
{
    const Result<Stud> stud = parseStud(typed.text("stud"));
    if (!stud)
        return stud.error();
    const auto torque = typed.the<Torque>("torque");
    const double friction = typed.theNumber("friction");
    Result<Estimate> force = clampForce(*stud, torque, friction);
    if (!force)
        return force.error();
    BenchAnswer answer;
    if (stud->commonLow) {
        answer.lines.push_back({"common",
                                {showFor(Dimension::Torque, stud->commonLow->si(), typed.units()),
                                 showFor(Dimension::Torque, stud->commonHigh->si(), typed.units())}});
        answer.extra.member("common_range") = Value::Map{{"low", stud->commonLow->si()},
                                                         {"high", stud->commonHigh->si()},
                                                         {"unit", "N·m"},
                                                         {"basis", "common_practice"}};
        if (torque < *stud->commonLow * (1.0 - 1e-9) || torque > *stud->commonHigh * (1.0 + 1e-9))
            force->warnings.emplace_back("uncommon_torque");
    }
    answer.figures.push_back({"clamp-force", Dimension::Force, *force});
    if (const auto proof = proofStrength(typed.text("grade")))
        answer.figures.push_back(
            {"share-of-proof", Dimension::Fraction, shareOfProof(*stud, *force, *proof)});
    answer.figures.push_back(
        {"against-dry", Dimension::Count, exact(dryNutFactor / friction, "1", "computed", "SHIGLEY")});
    addStages(answer, torque);
    return answer;
}

Result<BenchAnswer> answerStar(const BenchTyped &typed)
{
    const double studs = typed.theNumber("studs");
    const auto order = starOrder(studs >= 0.0 && studs < 100.0 ? static_cast<int>(studs) : 0);
    if (!order)
        return order.error();
    Value::List sequence(order->begin(), order->end());
    std::string words;
    for (const int stud : *order)
        words += (words.empty() ? "" : "  ") + std::to_string(stud);
    return BenchAnswer{{{"studs", Dimension::Count, exact(studs, "1", "common_practice", "PCC-1")}},
                       {{"order", {words}}},
                       Value::Map{{"sequence", sequence}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "torque",
     .subject = "wheels",
     .inputs = torqueInputs,
     .cautions = "wheel_on_ground recheck_nuts dry_studs",
     .point = "wheel-nut-torque",
     .reading = "nut-torque",
     .kept = "torque",
     .example = "--stud M14 --torque \"140 N·m\" --friction 0.20",
     .answer = answerTorque},
    {.name = "star",
     .subject = "wheels",
     .inputs = starInputs,
     .cautions = "wheel_on_ground recheck_nuts",
     .example = "--studs 8",
     .answer = answerStar},
});

} // namespace

std::span<const BenchQuestion> wheelQuestions() { return table; }

} // namespace snugwalk
