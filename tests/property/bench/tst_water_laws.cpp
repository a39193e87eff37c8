// SPDX-License-Identifier: Apache-2.0
// Laws of water, winter and wood over random inputs, absurd ones too.
#include <doctest/doctest.h>

#include <vector>

#include "base/units.hpp"
#include "bench/water/antifreeze.hpp"
#include "bench/water/pressure_hold.hpp"
#include "bench/water/sanitizing.hpp"
#include "bench/water/wood_moisture.hpp"
#include "random_inputs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

PressureHold anyHold(Absurd &random)
{
    return {random.quantity<Pressure>(5e4, 6e5), random.quantity<Pressure>(0, 6e5),
            random.quantity<Temperature>(260, 320), random.quantity<Temperature>(260, 320),
            random.quantity<Duration>(60, 7200)};
}

} // namespace

TEST_CASE("no input makes a figure of water nonsense; each refusal names its input")
{
    Absurd random(81);
    Laws laws;
    const auto saneOne = [](const Estimate &e) { return sane(e); };
    for (int i = 0; i < trials(); ++i) {
        std::vector<PipeRun> runs(static_cast<std::size_t>(random.count(0, 3)));
        for (PipeRun &run : runs)
            run = {random.quantity<Length>(0, 40), random.quantity<Length>(0.005, 0.03)};
        WaterSystem system{runs, random.count(-2, 45)};
        system.heater = random.maybe<Volume>(0, 0.08);
        laws.judge(antifreezeVolume(system), "antifreeze", saneOne);
        const double strength = random.number(0, 1);
        const auto water = random.quantity<Volume>(0, 0.3);
        laws.judge(strengthAfterMixing(strength, random.quantity<Volume>(0, 0.1), water), "mix",
                   [&](const Estimate &e) { return sane(e) && e.value <= strength; });
        laws.judge(addedForStrength(strength, random.number(0, 0.9), water), "added", saneOne);
        laws.judge(bleachVolume(water, random.number(10, 120), random.number(0.02, 0.12)), "bleach", saneOne);
        laws.judge(pressureHeld(anyHold(random)), "hold",
                   [](const Held &h) { return sane(h.loss) && sane(h.expected); });
        MoistureReading reading;
        reading.reading = random.number(5, 40);
        reading.wood = random.maybe<Temperature>(260, 320);
        reading.air = random.quantity<Temperature>(275, 330);
        reading.humidity = random.number(0.1, 0.9);
        laws.judge(moistureExcess(reading), "moisture", [](const MoistureExcess &m) {
            return sane(m.excess) && sane(m.baseline) && sane(m.corrected);
        });
    }
    CHECK(laws.broken == "");
    CHECK(laws.answered > trials());
    CHECK(laws.refused > trials() / 10);
}

TEST_CASE("moister air, moister wood; warmer air at the same humidity, drier wood")
{
    Absurd random(82);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        const Temperature air = celsius(random.between(5, 55));
        const double h = random.between(0.06, 0.93);
        const double moisture = equilibriumMoisture(air, h).value().value;
        laws.hold(equilibriumMoisture(air, h + 0.01).value().value > moisture, "humidity");
        laws.hold(equilibriumMoisture(air + TemperatureDifference::fromSi(2), h).value().value < moisture,
                  "temperature");
    }
    CHECK(laws.broken == "");
}

TEST_CASE("dose and strength, each back through its inverse")
{
    Absurd random(83);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        const Volume water = Volume::fromSi(random.between(0.01, 0.5));
        const double ppm = random.between(1, 200);
        const double fraction = random.between(0.01, 0.15);
        const Volume bleach = Volume::fromSi(bleachVolume(water, ppm, fraction).value().value);
        if (bleach.si() <= 0.1)
            laws.hold(std::abs(chlorineOf(water, bleach, fraction).value().value / ppm - 1.0) < 1e-12,
                      "dose");
        const double strength = random.between(0.3, 1.0);
        const double wanted = random.between(0.01, 0.9 * strength);
        const Volume added = Volume::fromSi(addedForStrength(strength, wanted, water).value().value);
        if (added.si() > 0.0 && added.si() <= 1.0)
            laws.hold(std::abs(strengthAfterMixing(strength, added, water).value().value / wanted - 1.0) <
                          1e-12,
                      "strength");
    }
    CHECK(laws.broken == "");
}

TEST_CASE("a lower end reading never holds better, and only the temperature explains a fall")
{
    Absurd random(84);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        PressureHold h{kilopascals(random.between(100, 500)),
                       {},
                       celsius(random.between(0, 40)),
                       celsius(random.between(0, 40)),
                       Duration::fromSi(900)};
        h.end = h.start;
        const double loss = pressureHeld(h).value().loss.value;
        laws.hold((loss > 0.0) == (h.endAt > h.startAt) || h.endAt == h.startAt, "sign");
        h.end = h.end - kilopascals(10);
        laws.hold(pressureHeld(h).value().loss.value > loss, "monotone");
    }
    CHECK(laws.broken == "");
}
