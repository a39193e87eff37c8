// SPDX-License-Identifier: Apache-2.0
// Laws of weights over random tickets and loads, absurd ones too.
#include <doctest/doctest.h>

#include <vector>

#include "base/units.hpp"
#include "bench/weights/lever_scale.hpp"
#include "bench/weights/load_shift.hpp"
#include "bench/weights/ratings.hpp"
#include "bench/weights/weighing.hpp"
#include "random_inputs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

CoupledTicket anyCoupled(Absurd &random)
{
    return {random.quantity<Mass>(800, 2000), random.quantity<Mass>(1000, 2500),
            random.quantity<Mass>(500, 6000)};
}

Weighing anyWeighing(Absurd &random)
{
    Weighing w{{random.quantity<Mass>(800, 2000), random.quantity<Mass>(800, 2000)}, anyCoupled(random)};
    if (random.chance(0.5))
        w.bars = anyCoupled(random);
    w.trailerAlone = random.maybe<Mass>(500, 7000);
    w.division = random.quantity<Mass>(1, 50);
    return w;
}

Weighing sensible(Absurd &random)
{
    const auto kg = [&](double low, double high) { return kilograms(random.between(low, high)); };
    Weighing w{{kg(1100, 1500), kg(1100, 1500)}, {}};
    w.coupled = {w.solo.front - kg(10, 100), w.solo.rear + kg(200, 500), kg(1500, 4000)};
    w.division = kg(1, 20);
    return w;
}

bool saneWeighed(const Weighed &w)
{
    return sane(w.tongue) && sane(w.share) && sane(w.gross) && sane(w.frontUnloading) &&
           sane(w.restoration) && sane(w.movedToAxles) && sane(w.mismatch);
}

} // namespace

TEST_CASE("no ticket and no load makes a figure nonsense; each refusal names its input")
{
    Absurd random(41);
    Laws laws;
    for (int i = 0; i < trials(); ++i) {
        laws.judge(weigh(anyWeighing(random)), "weigh", saneWeighed);
        LoadShift shift;
        shift.mass = random.quantity<Mass>(0, 500);
        shift.from = random.maybe<Length>(-1, 12);
        shift.to = random.maybe<Length>(-1, 12);
        shift.axle = random.quantity<Length>(2, 8);
        shift.tongue = random.maybe<Mass>(0, 600);
        shift.gross = random.maybe<Mass>(800, 6000);
        laws.judge(shiftLoad(shift), "shift", [](const Shifted &s) {
            return sane(s.tongueChange) && sane(s.axleChange) && sane(s.tongueAfter) && sane(s.shareAfter);
        });
        std::vector<Packed> items(static_cast<std::size_t>(random.count(0, 6)));
        for (Packed &p : items)
            p = {random.quantity<Mass>(0, 2500), random.quantity<Length>(-1, 10)};
        laws.judge(forecastWeights(items, random.quantity<Length>(2, 8), travelTrailerBand), "forecast",
                   [](const Forecast &f) {
                       return sane(f.gross) && sane(f.axles) && sane(f.tongue) && sane(f.share);
                   });
        const std::vector<RatedLoad> loads{
            {"gross", random.quantity<Mass>(0, 6000), random.quantity<Mass>(500, 6000), kilograms(10)}};
        laws.judge(marginsOf(loads), "margins",
                   [](const Margins &m) { return sane(m.each[0].left) && sane(m.each[0].share); });
        laws.judge(sideToSide(random.quantity<Mass>(0, 3000), random.quantity<Mass>(0, 3000),
                              random.count(-1, 14), random.quantity<Mass>(1, 30)),
                   "sides", [](const Sides &s) { return sane(s.imbalance) && sane(s.heavierTire); });
        laws.judge(tongueByLever({random.quantity<Mass>(0, 150), random.quantity<Mass>(0, 10),
                                  random.quantity<Length>(0.1, 1), random.quantity<Length>(0.5, 3),
                                  random.chance(0.1)}),
                   "lever", [](const Estimate &e) { return sane(e); });
    }
    CHECK(laws.broken == "");
    CHECK(laws.answered > trials());
    CHECK(laws.refused > trials() / 10);
}

TEST_CASE(
    "tongue and axles make the trailer; a heavier rear axle ticket is a heavier tongue; units do not matter")
{
    Absurd random(42);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        Weighing w = sensible(random);
        const Weighed a = weigh(w).value();
        laws.hold(std::abs(a.tongue.value + w.coupled.trailer.si() - a.gross.value) < 1e-9, "sum");
        const double pound = 0.45359237;
        Weighing twice = w; // the same numbers read as another unit scale every mass alike, no share
        for (Mass *m : {&twice.solo.front, &twice.solo.rear, &twice.coupled.front, &twice.coupled.rear,
                        &twice.coupled.trailer, &twice.division})
            *m = *m * pound;
        const Weighed b = weigh(twice).value();
        laws.hold(std::abs(b.share.value - a.share.value) < 1e-12, "share by units");
        laws.hold(std::abs(b.share.high - a.share.high) < 1e-12, "doubt by units");
        w.coupled.rear = w.coupled.rear + kilograms(20);
        laws.hold(weigh(w).value().share.value > a.share.value, "monotone");
    }
    CHECK(laws.broken == "");
}

TEST_CASE("a move is undone by moving back, and the trailer weighs what it weighed")
{
    Absurd random(43);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        const Mass mass = kilograms(random.between(1, 300));
        const Length a = metres(random.between(0, 10));
        const Length b = metres(random.between(0, 10));
        const Length axle = metres(random.between(2, 8));
        const Shifted there = shiftLoad({mass, a, b, axle}).value();
        const Shifted back = shiftLoad({mass, b, a, axle}).value();
        laws.hold(std::abs(there.tongueChange.value + back.tongueChange.value) < 1e-9, "round trip");
        laws.hold(std::abs(there.tongueChange.value + there.axleChange.value) < 1e-9, "sum");
        laws.hold((there.tongueChange.value >= 0.0) == (b <= a), "forward is heavier");
        // put in at a, then moved to b, is put in at b
        const double in = shiftLoad({mass, {}, a, axle}).value().tongueChange.value;
        const double direct = shiftLoad({mass, {}, b, axle}).value().tongueChange.value;
        laws.hold(std::abs(in + there.tongueChange.value - direct) < 1e-9, "by stages");
    }
    CHECK(laws.broken == "");
}
