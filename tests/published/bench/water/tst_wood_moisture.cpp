// SPDX-License-Identifier: Apache-2.0
// Wood in air: [FPL-GTR-282] equation 4-5, from memory; spot values computed apart, and rows of its table 4-2
// from memory. [FPL-GTR-6], as its abstract has it, ends electric meters at 30 %. Limits are common practice,
// no source.
#include "../sourced.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"
#include "bench/water/wood_moisture.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

double emc(double degC, double percent)
{
    return equilibriumMoisture(celsius(degC), percent / 100.0).value().value;
}
bool warns(const MoistureExcess &m, const char *slug)
{
    return std::find(m.excess.warnings.begin(), m.excess.warnings.end(), slug) != m.excess.warnings.end();
}
MoistureReading at(double reading, double degC = 20, double percent = 65)
{
    return {reading, celsius(20), celsius(degC), percent / 100.0};
}

} // namespace

TEST_CASE("spot values: 21 °C 50 % 9.2, 20/65 12.0, 30/80 15.5, 10/85 18.4, 35/30 5.9")
{
    SOURCED("computed", emc(21, 50), 9.2, half(0.1));
    SOURCED("computed", emc(20, 65), 12.0, half(0.1));
    SOURCED("computed", emc(30, 80), 15.5, half(0.1));
    SOURCED("computed", emc(10, 85), 18.4, half(0.1));
    SOURCED("computed", emc(35, 30), 5.9, half(0.1));
}

TEST_CASE("[FPL-GTR-282] table 4-2 at 21.1 °C, from memory: 20 % 4.5, 65 % 12.0, 90 % 20.5")
{
    SOURCED("FPL-GTR-282", emc(21.1, 20), 4.5, half(0.1));
    SOURCED("FPL-GTR-282", emc(21.1, 65), 12.0, half(0.1));
    SOURCED("FPL-GTR-282", emc(21.1, 90), 20.5, half(0.1));
}

TEST_CASE("the trade's example: 19.5 % in air of 20 °C and 65 % is 7.5 points over: open the panel")
{
    const MoistureExcess m = moistureExcess(at(19.5)).value();
    SOURCED("CP", m.excess.value, 7.5, half(0.1));
    CHECK(warns(m, "moisture_over_baseline"));
    CHECK_FALSE(warns(m, "moisture_wet"));
}

TEST_CASE("four points over the air, 20 %, three points since last time, 30 % where meters end")
{
    const double base = emc(20, 65);
    CHECK_FALSE(warns(moistureExcess(at(base + 3.99)).value(), "moisture_over_baseline"));
    CHECK(warns(moistureExcess(at(base + 4.01)).value(), "moisture_over_baseline"));
    CHECK(warns(moistureExcess(at(20.0)).value(), "moisture_wet"));
    CHECK(warns(moistureExcess(at(20.0)).value(), "decay_possible"));
    CHECK(warns(moistureExcess(at(31.0)).value(), "beyond_meter"));
    MoistureReading again = at(14.0);
    again.lastReading = 11.0;
    CHECK(warns(moistureExcess(again).value(), "moisture_rising"));
    again.lastReading = 11.1;
    CHECK_FALSE(warns(moistureExcess(again).value(), "moisture_rising"));
}

TEST_CASE("cold wood reads low by 0.15 to 0.2 points a kelvin at 15 %; decay rests under 2 °C")
{
    const Estimate e = atTwentyDegrees(15.0, celsius(10)).value();
    CHECK(e.low == doctest::Approx(16.5));
    CHECK(e.high == doctest::Approx(17.0));
    CHECK(atTwentyDegrees(15.0, celsius(30)).value().value == 15.0);
    MoistureReading frozen = at(21.0);
    frozen.wood = celsius(1);
    CHECK(warns(moistureExcess(frozen).value(), "moisture_wet"));
    CHECK_FALSE(warns(moistureExcess(frozen).value(), "decay_possible"));
}

TEST_CASE("where the law ends it is not stretched: refusals name the input")
{
    CHECK(equilibriumMoisture(celsius(-1), 0.5).error().where == "air");
    CHECK(equilibriumMoisture(celsius(20), 65).error().where == "humidity"); // percent typed as a fraction
    CHECK(moistureExcess(at(0.0)).error().where == "reading");
    CHECK(atTwentyDegrees(15.0, celsius(-40)).error().where == "wood");
}

TEST_CASE("humidity of 65 % known within 15 points: wood at 9.2 to 16.0 %, so 3.4 points more either way")
{
    MoistureReading r = at(19.5);
    r.humidityWithin = 0.15;
    const MoistureExcess m = moistureExcess(r).value();
    const double half = (emc(20, 80) - emc(20, 50)) / 2.0;
    SOURCED("computed", half, 3.4, 0.05);
    CHECK(m.baseline.high - m.baseline.value == doctest::Approx(std::hypot(1.5, half)));
    CHECK(m.excess.high - m.excess.low >
          (moistureExcess(at(19.5)).value().excess.high - moistureExcess(at(19.5)).value().excess.low));
    CHECK(warns(m, "air_estimated"));
    CHECK_FALSE(warns(moistureExcess(at(19.5)).value(), "air_estimated"));
}
