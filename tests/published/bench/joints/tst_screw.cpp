// SPDX-License-Identifier: Apache-2.0
// Screws: shanks [ASME-B18.6.1] from memory; withdrawal [WOOD-HANDBOOK] as a page restates it with a worked
// example; snug is common practice, no source.
#include "../sourced.hpp"

#include <cmath>

#include "base/units.hpp"
#include "bench/joints/screw.hpp"

using namespace snugwalk;

namespace {

constexpr double inch = 0.0254;
constexpr double pound = 0.45359237 * 9.80665;

Screw screw(int number, double thread, double gravity = 0.42)
{
    return {number, metres(thread * inch), gravity, 0.12, {}};
}

} // namespace

TEST_CASE("shanks: #4 0.112, #6 0.138, #8 0.164, #10 0.190, #12 0.216, #14 0.242 in")
{
    const struct {
        int number;
        double inches;
    } rows[] = {{4, 0.112}, {6, 0.138}, {8, 0.164}, {10, 0.190}, {12, 0.216}, {14, 0.242}};
    for (const auto &row : rows)
        SOURCED("ASME-B18.6.1", screwDiameter(row.number).value().si() / inch, row.inches, 1e-9);
}

TEST_CASE("the page's example: #8, 1 in of thread in red oak of 0.70: 1,262 lb")
{
    SOURCED("WOOD-HANDBOOK", screwHold(screw(8, 1.0, 0.70)).value().pull.value / pound, 1262.0, 0.5);
}

TEST_CASE("a number 8 with 5/8 in of thread in 0.42: 284 lb, of which a fifth to a quarter counts")
{
    const auto hold = screwHold(screw(8, 0.625)).value();
    SOURCED("WOOD-HANDBOOK", hold.pull.value / pound, 284.0, 0.5);
    CHECK(hold.design.value == doctest::Approx(hold.pull.value / 5.0));
    CHECK(hold.design.high == doctest::Approx(hold.pull.value / 4.0));
    Screw wet = screw(8, 0.625);
    wet.moisture = 0.25;
    CHECK(screwHold(wet).value().pull.value == doctest::Approx(0.75 * hold.pull.value));
    CHECK(screwHold(wet).value().pull.warnings.front() == "wet_wood");
}

// common practice, no source: 15 to 20 lb·in for a number 8, 25 to 30 for a number 10
TEST_CASE("snug")
{
    const auto eight = screwHold(screw(8, 0.625)).value().snug;
    SOURCED("CP", eight.low / (pound * inch), 15.0, 1e-6);
    SOURCED("CP", eight.high / (pound * inch), 20.0, 1e-6);
    const auto ten = screwHold(screw(10, 0.625)).value().snug;
    CHECK(ten.value / (pound * inch) > 25.0);
    CHECK(ten.value / (pound * inch) < 30.0);
    Screw maker = screw(8, 0.625);
    maker.makerTorque = Torque::fromSi(2.0);
    CHECK(screwHold(maker).value().snug.basis == "maker");
    CHECK(screwHold(maker).value().snug.value == 2.0);
}

// common practice, no source
TEST_CASE("stripped: one number up, half an inch longer, and above 14 a plug")
{
    CHECK(nextScrew(8).value() == 10);
    CHECK(nextScrew(10).value() == 12);
    CHECK(nextScrew(14).error().code == Errc::NotFound);
    CHECK(screwHold(screw(8, 0.625)).value().nextThread.si() / inch == doctest::Approx(1.125));
}

TEST_CASE("what cannot be is refused, with its name")
{
    CHECK(screwHold(screw(3, 1.0)).error().where == "screw");
    CHECK(screwHold(screw(8, 0.0)).error().where == "thread");
    CHECK(screwHold(screw(8, 1.0, 1.2)).error().where == "wood");
    Screw odd = screw(8, 1.0);
    odd.moisture = std::nan("");
    CHECK(screwHold(odd).error().where == "moisture");
    odd = screw(8, 1.0);
    odd.makerTorque = Torque::fromSi(-1.0);
    CHECK(screwHold(odd).error().where == "torque");
    CHECK(screwDiameter(-1).error().where == "screw");
}
