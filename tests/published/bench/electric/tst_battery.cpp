// SPDX-License-Identifier: Apache-2.0
// Charge of a rested battery. Gravity and freezing [TM-5-1185] tables II to IV, read; cold [TM-10-6140] as
// restated; volts of a battery filled with 1.265 as a public table of an industry council prints them.
#include "../sourced.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"
#include "bench/electric/battery.hpp"

using namespace snugwalk;

namespace {

BatteryReading flooded(double volts, double at = 25.0)
{
    return {BatteryKind::Flooded, Voltage::fromSi(volts), celsius(at), Duration::fromSi(6 * 3600.0)};
}

bool warns(const Estimate &e, const char *slug)
{
    return std::find(e.warnings.begin(), e.warnings.end(), slug) != e.warnings.end();
}

constexpr double ampHour = 3600.0;
constexpr double day = 86400.0;

} // namespace

TEST_CASE("gravity to charge: the manual's tables, II and the 80 °F column of IV")
{
    const struct {
        double gravity, percent;
    } rows[] = {{1.280, 100},  {1.270, 91.6}, {1.260, 83.3}, {1.250, 75}, {1.240, 66.6},
                {1.230, 58.3}, {1.220, 50},   {1.190, 25},   {1.130, 0}};
    for (const auto &row : rows) {
        CAPTURE(row.gravity);
        SOURCED("TM-5-1185", 100.0 * chargeAtGravity(row.gravity), row.percent, 0.1); // printed cut off
    }
    CHECK(chargeAtGravity(1.160) == doctest::Approx(0.125)); // "almost discharged"
}

TEST_CASE("freezing of the electrolyte: the manual's table III")
{
    const struct {
        double gravity, fahrenheit;
    } rows[] = {{1.280, -90}, {1.250, -62}, {1.220, -31}, {1.200, -16}, {1.160, 1}, {1.150, 5}, {1.100, 19}};
    for (const auto &row : rows)
        SOURCED("TM-5-1185", freezesAt(row.gravity).si() * 1.8 - 459.67, row.fahrenheit, 1e-6);
    // a battery stored at three quarters does not freeze above -62 °F
    CHECK(freezesAt(1.250) < celsius(-52.0));
}

TEST_CASE("75 % of the capacity at 32 °F, 40 % at 0 °F")
{
    SOURCED("TM-10-6140", coldShare(Temperature::fromSi(491.67 / 1.8)), 0.75, 0.005);
    SOURCED("TM-10-6140", coldShare(Temperature::fromSi(459.67 / 1.8)), 0.40, 0.005);
    CHECK(coldShare(celsius(25.0)) == 1.0);
    CHECK(coldShare(celsius(40.0)) == 1.0);
}

// Volts = 6 (gravity + 0.845) at 25 °C [VINAL-1955], from memory; the printed pairs of the trade.
TEST_CASE("volts of a rested battery back to gravity")
{
    const struct {
        double volts, gravity;
    } rows[] = {{12.75, 1.280}, {12.57, 1.250}, {12.39, 1.220},
                {12.21, 1.190}, {12.03, 1.160}, {11.85, 1.130}};
    for (const auto &row : rows) {
        CAPTURE(row.volts);
        const auto state = batteryState(flooded(row.volts)).value();
        SOURCED("VINAL-1955", state.charge.value, chargeAtGravity(row.gravity), 1e-9);
    }
}

TEST_CASE("12.45 V: 58 % by the gravity table, and the range reaches the 75 % of the other printed table")
{
    const auto state = batteryState(flooded(12.45)).value();
    SOURCED("computed", state.charge.value, 0.58, 0.005);
    CHECK(state.charge.low < 0.51);
    CHECK(state.charge.high == doctest::Approx(0.75));
    CHECK(state.charge.unit == "1");
    CHECK(state.charge.basis == "published");
}

TEST_CASE("the industry council's volts lie within the range: 12.65, 12.45, 12.24, 12.06, 11.89")
{
    const struct {
        double volts, charge;
    } rows[] = {{12.65, 1.0}, {12.45, 0.75}, {12.24, 0.50}, {12.06, 0.25}, {11.89, 0.0}};
    for (const auto &row : rows) {
        CAPTURE(row.volts);
        const auto e = batteryState(flooded(row.volts)).value().charge;
        CHECK(e.low <= row.charge + 1e-9);
        CHECK(e.high >= row.charge - 1e-9);
    }
}

TEST_CASE("cold lowers the volts of the same charge a little: 1.2 mV a kelvin")
{
    const double warm = batteryState(flooded(12.45, 25.0)).value().charge.value;
    const double cold = batteryState(flooded(12.45 - 20.0 * 0.0012, 5.0)).value().charge.value;
    CHECK(cold == doctest::Approx(warm).epsilon(1e-12));
}

TEST_CASE("what draws a warning")
{
    BatteryReading r = flooded(12.6);
    r.rested = Duration::fromSi(1800.0);
    CHECK(warns(batteryState(r).value().charge, "not_rested"));
    CHECK(batteryState(r).value().charge.low < batteryState(flooded(12.6)).value().charge.low - 0.1);
    CHECK(warns(batteryState(flooded(13.6)).value().charge, "surface_charge"));
    CHECK(warns(batteryState(flooded(11.0)).value().charge, "below_empty"));
    CHECK(warns(batteryState(flooded(11.9, -10.0)).value().charge, "may_freeze"));
    CHECK_FALSE(warns(batteryState(flooded(12.75, -30.0)).value().charge, "may_freeze"));

    r = {BatteryKind::Lithium, Voltage::fromSi(13.25), celsius(-5.0), Duration::fromSi(20000.0)};
    const auto lithium = batteryState(r).value();
    CHECK(warns(lithium.charge, "lithium_flat"));
    CHECK(warns(lithium.charge, "no_charge_below_zero"));
    CHECK(lithium.charge.high - lithium.charge.low >= 0.7); // volts tell next to nothing from 30 to 90 %
    CHECK_FALSE(lithium.freezes);
}

// Computed: 100 A·h, 90 %, 0.35 A is 0.5·100·0.9/0.35/24 = 5.4 d until half of what it holds is gone, and
// 4.8 d until half of its capacity is left. The second is the stricter limit, and the one shown first.
TEST_CASE("days at a steady draw")
{
    const auto days = [](double amperes) {
        return drawTimes({Charge::fromSi(100 * ampHour), 0.9, Current::fromSi(amperes)}).value();
    };
    SOURCED("computed", days(0.35).halfOfWhat.value / day, 5.4, 0.05);
    SOURCED("computed", days(0.03).halfOfWhat.value / day, 62.5, 0.05); // "62", cut off
    CHECK(days(0.35).toHalf.value / day == doctest::Approx(0.4 * 100.0 / 0.35 / 24.0));
    CHECK(days(0.03).toHalf.low < days(0.03).toHalf.value); // it also loses some by itself
    const auto under = drawTimes({Charge::fromSi(100 * ampHour), 0.4, Current::fromSi(0.35)}).value();
    CHECK(under.toHalf.value == 0.0);
    CHECK(warns(under.toHalf, "under_half"));
}

TEST_CASE("what cannot be is refused, with its name")
{
    const double nan = std::nan("");
    CHECK(batteryState(flooded(6.3)).error().where == "volts");
    CHECK(batteryState(flooded(25.2)).error().where == "volts");
    CHECK(batteryState(flooded(nan)).error().where == "volts");
    CHECK(batteryState(flooded(12.5, 80.0)).error().where == "temperature");
    BatteryReading r = flooded(12.5);
    r.rested = Duration::fromSi(-1.0);
    CHECK(batteryState(r).error().where == "rest");
    CHECK(drawTimes({Charge(), 0.9, Current::fromSi(1)}).error().where == "capacity");
    CHECK(drawTimes({Charge::fromSi(3.6e5), 1.1, Current::fromSi(1)}).error().where == "charge");
    CHECK(drawTimes({Charge::fromSi(3.6e5), 0.9, Current()}).error().where == "current");
    CHECK(parseBatteryKind("agm") == BatteryKind::Agm);
    CHECK_FALSE(parseBatteryKind("nickel"));
}
