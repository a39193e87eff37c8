// SPDX-License-Identifier: Apache-2.0
// [USSA-1976] U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF), tables of pressure against
// geopotential altitude. Read as reprinted to the printed digits in several independent test files
// of public atmosphere libraries, not in the report itself; -500 m and the geometric row are from
// memory of the tables.
#include "sourced.hpp"

#include "base/units.hpp"
#include "bench/standard_air.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

double air(double altitude) { return standardAir(metres(altitude)).value().si(); }

} // namespace

TEST_CASE("table rows, geopotential metres")
{
    const struct {
        double metres, pascals;
    } rows[] = {{0, 101325},      {500, 95460.8},   {1000, 89874.6}, {1500, 84556.0}, {2000, 79495.2},
                {2500, 74682.5},  {3000, 70108.5},  {4000, 61640.2}, {5000, 54019.9}, {8000, 35599.8},
                {10000, 26436.3}, {11000, 22632.1}, {-500, 107477.5}};
    for (const auto &row : rows) {
        CAPTURE(row.metres);
        SOURCED("USSA-1976", air(row.metres), row.pascals, half(0.1));
    }
}

TEST_CASE("more digits, computed apart with SciPy 1.10")
{
    SOURCED("computed", air(500), 95460.839, half(0.001));
    SOURCED("computed", air(1000), 89874.571, half(0.001));
    SOURCED("computed", air(1500), 84556.005, half(0.001));
    SOURCED("computed", air(2000), 79495.216, half(0.001));
    SOURCED("computed", air(3000), 70108.545, half(0.001));
    SOURCED("computed", air(5000), 54019.912, half(0.001));
    SOURCED("computed", air(11000), 22632.064, half(0.001));
    SOURCED("computed", air(-500), 107477.507, half(0.001));
}

TEST_CASE("geometric 1,000 m is 999.84 m geopotential: 89876 Pa in the geometric table")
{
    SOURCED("USSA-1976", air(geopotential(metres(1000)).si()), 89876.0, half(1));
    SOURCED("computed", air(geopotential(metres(1000)).si()), 89876.285, half(0.001));
}

TEST_CASE("a gauge with a sealed reference reads high by the missing air: 2.5958 psi at a mile")
{
    SOURCED("computed", (air(0) - air(1609.344)) / pascalsPerPsi, 2.5958, half(0.0001));
    SOURCED("computed", (air(0) - air(3000)) / pascalsPerPsi, 4.5276, half(0.0001));
}

// Two forms of the law go about: the trade's rounded one, 101.325 (1 - 2.25577e-5 h)^5.25588 kPa, and the
// table's own constants, which won because they give the printed rows. They part by 0.04 Pa at most.
TEST_CASE("2,134 m or 7,000 ft: 78.2 kPa, by either form")
{
    SOURCED("computed", air(2134) / 1000.0, 78.2, half(0.1));
    for (const double h : {0.0, 500.0, 2134.0, 5000.0, 11000.0}) {
        CAPTURE(h);
        CHECK(std::abs(air(h) - 101325.0 * std::pow(1.0 - 2.25577e-5 * h, 5.25588)) <= 0.04);
    }
}
