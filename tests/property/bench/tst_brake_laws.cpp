// SPDX-License-Identifier: Apache-2.0
// Laws of brakes and chains over random inputs, absurd ones too.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "bench/brakes/chains.hpp"
#include "bench/brakes/lining_life.hpp"
#include "bench/brakes/magnet_current.hpp"
#include "random_inputs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

SafetyChains anyChains(Absurd &random)
{
    SafetyChains c;
    if (random.chance(0.8))
        c.grade = static_cast<ChainGrade>(random.count(0, 2));
    c.size = random.maybe<Length>(0.005, 0.011);
    if (random.chance(0.5))
        c.size = Length::fromSi(0.25 * 0.0254);
    c.tagged = random.maybe<Mass>(500, 9000);
    c.gvwr = random.quantity<Mass>(200, 8000);
    c.chains = random.count(0, 5);
    if (random.chance(0.3))
        c.wear = random.number(0, 0.3);
    return c;
}

} // namespace

TEST_CASE("no input makes a figure of brakes nonsense; each refusal names its input")
{
    Absurd random(91);
    Laws laws;
    for (int i = 0; i < trials(); ++i) {
        MagnetReading m{random.quantity<Current>(0, 40), random.count(-1, 14), random.maybe<Current>(1, 6),
                        random.maybe<Voltage>(9, 15), random.maybe<Resistance>(1, 6)};
        laws.judge(magnetDraw(m), "magnet", [](const MagnetDraw &d) {
            return sane(d.each) && sane(d.deviation) && sane(d.figure) && sane(d.expected);
        });
        laws.judge(liningLife({random.quantity<Length>(0, 0.01), random.quantity<Length>(0, 0.008),
                               random.quantity<Distance>(1e5, 1e8), random.maybe<Length>(0, 0.004)}),
                   "lining", [](const LiningLife &l) { return sane(l.left) && sane(l.rate); });
        laws.judge(chainStrength(anyChains(random)), "chain", [](const ChainStrength &c) {
            return sane(c.breaking) && sane(c.wanted) && sane(c.margin);
        });
    }
    CHECK(laws.broken == "");
    CHECK(laws.answered > trials());
    CHECK(laws.refused > trials() / 10);
}

TEST_CASE("a heavier rig never asks for less chain; a higher grade and a larger size never hold less")
{
    Laws laws;
    for (double pounds = 200; pounds < 20'000; pounds += 7) {
        const double kg = pounds * 0.45359237;
        laws.hold(chainWanted(kilograms(kg + 2)) >= chainWanted(kilograms(kg)), "wanted");
        laws.hold(chainWanted(kilograms(kg)) >= kilograms(kg * (1 - 1e-12)), "at least the rating");
    }
    for (const double size : {0.25, 0.3125, 0.375}) {
        const Length bar = metres(size * 0.0254);
        laws.hold(workingLoad(ChainGrade::G30, bar)->si() < workingLoad(ChainGrade::G43, bar)->si(), "grade");
        laws.hold(workingLoad(ChainGrade::G43, bar)->si() < workingLoad(ChainGrade::G70, bar)->si(), "grade");
    }
    CHECK(laws.broken == "");
}

TEST_CASE("thinner lining is less road; more current is never called lower")
{
    Absurd random(92);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        const Length before = millimetres(random.between(4, 8));
        const Length now = millimetres(random.between(2, 3.9));
        const Distance driven = kilometres(random.between(500, 50'000));
        const double left = liningLife({before, now, driven, {}}).value().left.value;
        const double thinner = liningLife({before, now - millimetres(0.1), driven, {}}).value().left.value;
        laws.hold(thinner < left || left == 1.6e8, "lining"); // where the range ends
        const double total = random.between(1, 30);
        const MagnetReading low{Current::fromSi(total), 4, Current::fromSi(3.75)};
        const MagnetReading high{Current::fromSi(total + 1), 4, Current::fromSi(3.75)};
        laws.hold(magnetDraw(high).value().deviation.value > magnetDraw(low).value().deviation.value,
                  "magnet");
    }
    CHECK(laws.broken == "");
}
