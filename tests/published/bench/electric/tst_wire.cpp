// SPDX-License-Identifier: Apache-2.0
// Copper by gauge: [NBS-HANDBOOK-100] as a university's page reprints its ohms a 1,000 ft at 20 °C and its
// diameters; drops computed from them.
#include "../sourced.hpp"

#include <cmath>

#include "base/units.hpp"
#include "bench/electric/wire.hpp"

using namespace snugwalk;

namespace {

constexpr double foot = 0.3048;

WireRun run(int gauge, double feet, double amperes)
{
    return {gaugeArea(gauge).value(), metres(feet * foot), Current::fromSi(amperes)};
}

double halfDigit(double printed, int significant)
{
    return 0.5 * std::pow(10.0, std::floor(std::log10(printed)) - significant + 1);
}

} // namespace

TEST_CASE("ohms a 1,000 ft at 20 °C, the printed table to its last digit")
{
    const struct {
        int gauge;
        double ohms;
        int digits;
    } rows[] = {{18, 6.385, 4},  {17, 5.064, 4}, {16, 4.016, 4}, {15, 3.184, 4},  {14, 2.525, 4},
                {13, 2.003, 4},  {12, 1.588, 4}, {11, 1.26, 3},  {10, 0.9989, 4}, {9, 0.7921, 4},
                {8, 0.6282, 4},  {7, 0.4982, 4}, {6, 0.3951, 4}, {5, 0.3133, 4},  {4, 0.2485, 4},
                {3, 0.197, 3},   {2, 0.1563, 4}, {1, 0.124, 3},  {0, 0.0983, 3},  {-1, 0.078, 2},
                {-2, 0.0618, 3}, {-3, 0.049, 2}};
    for (const auto &row : rows) {
        CAPTURE(row.gauge);
        const double there = wireDrop(run(row.gauge, 50.0, 1.0)).value().resistance.value * 10.0;
        // the table rounds its diameters first: one of its last digits, not half of one
        SOURCED("NBS-HANDBOOK-100", there, row.ohms, 2.0 * halfDigit(row.ohms, row.digits));
    }
}

TEST_CASE("diameters in mils")
{
    const struct {
        int gauge;
        double mils;
    } rows[] = {{20, 31.96}, {18, 40.3}, {16, 50.82}, {14, 64.08}, {12, 80.81}, {10, 101.9},
                {8, 128.5},  {6, 162.0}, {4, 204.3},  {2, 257.6},  {0, 324.9},  {-3, 460.0}};
    for (const auto &row : rows) {
        CAPTURE(row.gauge);
        SOURCED("NBS-HANDBOOK-100", gaugeDiameter(row.gauge).value().si() / 25.4e-6, row.mils,
                5e-4 * row.mils);
    }
}

// Computed: a brake feed of 13 A, 25 ft one way.
TEST_CASE("12, 10 and 8 AWG: 1.03, 0.65, 0.41 V; 8.6 and 5.4 % of 12 V")
{
    const auto at = [](int gauge) { return wireDrop(run(gauge, 25.0, 13.0)).value(); };
    SOURCED("computed", at(12).drop.value, 1.03, 0.005);
    SOURCED("computed", at(10).drop.value, 0.65, 0.005);
    SOURCED("computed", at(8).drop.value, 0.41, 0.005);
    SOURCED("computed", at(12).share.value, 0.086, 0.0005);
    SOURCED("computed", at(10).share.value, 0.054, 0.0005);
    CHECK(at(12).drop.warnings.front() == "drop_high");
    CHECK(at(12).thinnest == 6); // 3 % of 12 V is 0.36 V: 8 AWG takes 0.41, 6 AWG 0.26
    CHECK(at(6).drop.warnings.empty());
}

TEST_CASE("warm copper: 0.393 % a kelvin from 20 °C")
{
    WireRun warm = run(12, 25.0, 13.0);
    const double at20 = wireDrop(warm).value().drop.value;
    warm.copperTemperature = celsius(60.0);
    CHECK(wireDrop(warm).value().drop.value == doctest::Approx(at20 * (1.0 + 0.00393 * 40.0)).epsilon(1e-12));
    warm.groundThroughFrame = true;
    CHECK(wireDrop(warm).value().drop.value == doctest::Approx(at20 * 0.5 * (1.0 + 0.00393 * 40.0)));
}

TEST_CASE("sizes as people write them")
{
    CHECK(wireArea("12").value() == gaugeArea(12).value());
    CHECK(wireArea("#10").value() == gaugeArea(10).value());
    CHECK(wireArea("10 AWG").value() == gaugeArea(10).value());
    CHECK(wireArea("2/0").value() == gaugeArea(-1).value());
    CHECK(wireArea("1/0 awg").value() == gaugeArea(0).value());
    CHECK(wireArea("4 mm²").value().si() == doctest::Approx(4e-6));
    CHECK(wireArea("2,5 mm2").value().si() == doctest::Approx(2.5e-6));
    CHECK(gaugeName(-1) == "2/0");
    CHECK(gaugeName(0) == "1/0");
    CHECK(gaugeName(12) == "12");
    for (const char *wrong : {"", "thick", "12.5", "5/0", "0/0", "-3", "400 mm²", "41", "nan mm2"}) {
        CAPTURE(wrong);
        CHECK(wireArea(wrong).error().where == "gauge");
    }
}

TEST_CASE("what cannot be is refused, with its name")
{
    const double nan = std::nan("");
    WireRun r = run(12, 25, 13);
    r.oneWay = metres(-1);
    CHECK(wireDrop(r).error().where == "length");
    r = run(12, 25, nan);
    CHECK(wireDrop(r).error().where == "current");
    r = run(12, 25, 13);
    r.supply = Voltage::fromSi(120);
    CHECK(wireDrop(r).error().where == "volts");
    r = run(12, 25, 13);
    r.copperTemperature = celsius(200);
    CHECK(wireDrop(r).error().where == "temperature");
    r = run(12, 25, 13);
    r.goal = 0.0;
    CHECK(wireDrop(r).error().where == "goal");
    CHECK(wireDrop({Area(), metres(1), Current::fromSi(1)}).error().where == "gauge");
    CHECK(wireDrop(run(30, 300, 100)).value().drop.warnings.front() == "drop_all");
    CHECK_FALSE(wireDrop(run(12, 300, 400)).value().thinnest);
}
