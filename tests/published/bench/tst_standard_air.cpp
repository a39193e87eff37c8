// SPDX-License-Identifier: Apache-2.0
// [USSA-1976] U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF), tables of pressure against
// geopotential altitude. Read as reprinted to the printed digits in several independent test files
// of public atmosphere libraries, not in the report itself; -500 m and the geometric row are from
// memory of the tables.
#include <doctest/doctest.h>

#include <cmath>

#include "base/units.hpp"
#include "bench/standard_air.hpp"

using namespace snugwalk;

TEST_CASE("table rows, geopotential metres")
{
    const struct {
        double metres, pascals, halfDigit;
    } rows[] = {
        {0, 101325, 0.05},      {500, 95460.8, 0.05},  {1000, 89874.6, 0.05},  {1500, 84556.0, 0.05},
        {2000, 79495.2, 0.05},  {2500, 74682.5, 0.05}, {3000, 70108.5, 0.05},  {4000, 61640.2, 0.05},
        {5000, 54019.9, 0.05},  {8000, 35599.8, 0.05}, {10000, 26436.3, 0.05}, {11000, 22632.1, 0.05},
        {-500, 107477.5, 0.05},
    };
    for (const auto &row : rows) {
        CAPTURE(row.metres);
        CHECK(std::abs(standardAir(metres(row.metres)).value().si() - row.pascals) <= row.halfDigit);
    }
}

TEST_CASE("more digits, computed apart with SciPy 1.10")
{
    CHECK(standardAir(metres(500)).value().si() == doctest::Approx(95460.839).epsilon(1e-8));
    CHECK(standardAir(metres(1000)).value().si() == doctest::Approx(89874.571).epsilon(1e-8));
    CHECK(standardAir(metres(1500)).value().si() == doctest::Approx(84556.005).epsilon(1e-8));
    CHECK(standardAir(metres(2000)).value().si() == doctest::Approx(79495.216).epsilon(1e-8));
    CHECK(standardAir(metres(3000)).value().si() == doctest::Approx(70108.545).epsilon(1e-8));
    CHECK(standardAir(metres(5000)).value().si() == doctest::Approx(54019.912).epsilon(1e-8));
    CHECK(standardAir(metres(11000)).value().si() == doctest::Approx(22632.064).epsilon(1e-8));
    CHECK(standardAir(metres(-500)).value().si() == doctest::Approx(107477.507).epsilon(1e-8));
}

TEST_CASE("geometric 1,000 m is 999.84 m geopotential: 89876 Pa in the geometric table")
{
    CHECK(std::abs(standardAir(geopotential(metres(1000))).value().si() - 89876.0) <= 0.5);
    CHECK(standardAir(geopotential(metres(1000))).value().si() == doctest::Approx(89876.285).epsilon(1e-8));
}

TEST_CASE("a gauge with a sealed reference reads high by the missing air: 2.5958 psi at a mile")
{
    const double sea = standardAir(metres(0)).value().si();
    CHECK((sea - standardAir(metres(1609.344)).value().si()) / pascalsPerPsi ==
          doctest::Approx(2.5958).epsilon(2e-5));
    CHECK((sea - standardAir(metres(3000)).value().si()) / pascalsPerPsi ==
          doctest::Approx(4.5276).epsilon(2e-5));
}
