// SPDX-License-Identifier: Apache-2.0
// 65 psi set at 20 degC at sea level, elsewhere: ideal gas law at constant volume with the air of
// [USSA-1976]; figures computed apart from this code (double precision, SciPy 1.10).
#include <doctest/doctest.h>

#include <cmath>

#include "base/units.hpp"
#include "bench/tires/tire_pressure.hpp"

using namespace snugwalk;

namespace {

double psiAt(double degC, double altitude, TirePlace from = {celsius(20), {}})
{
    return inPsi(pressureElsewhere(psi(65), from, {celsius(degC), metres(altitude)}).value());
}

} // namespace

TEST_CASE("temperature alone")
{
    CHECK(psiAt(0, 0) == doctest::Approx(59.562787).epsilon(1e-8));
    CHECK(psiAt(50, 0) == doctest::Approx(73.155819).epsilon(1e-8));
}

TEST_CASE("altitude alone, and both")
{
    CHECK(psiAt(20, 2000) == doctest::Approx(68.166143).epsilon(1e-8));
    CHECK(psiAt(5, 2500) == doctest::Approx(64.786253).epsilon(1e-8));
    CHECK(psiAt(-5, 2000, {celsius(35), metres(300)}) == doctest::Approx(57.372703).epsilon(1e-8));
}

TEST_CASE("figures of the trade, rounded: 70.4, 59.6, 56.8, 75.9 psi, and 64.3 over a pass")
{
    // Worked by hand from the same law
    CHECK(psiAt(40, 0) == doctest::Approx(70.4).epsilon(0.0008));
    CHECK(psiAt(0, 0) == doctest::Approx(59.6).epsilon(0.0009));
    CHECK(psiAt(-10, 0) == doctest::Approx(56.8).epsilon(0.0009));
    CHECK(psiAt(60, 0) == doctest::Approx(75.9).epsilon(0.0007));
    CHECK(psiAt(5, 2134) == doctest::Approx(64.3).epsilon(0.0008));
}

TEST_CASE("per 10 degF from 20 degC: 1.23, 1.51 and 1.79 psi at 50, 65 and 80 psi")
{
    const struct {
        double start, rise, tolerance;
    } rows[] = {{50, 1.23, 0.005}, {65, 1.51, 0.005}, {80, 1.79, 0.005}};
    for (const auto &row : rows) {
        const TirePlace warmer{celsius(20) + TemperatureDifference::fromSi(10.0 / 1.8), {}};
        const double rise =
            inPsi(pressureElsewhere(psi(row.start), {celsius(20), {}}, warmer).value()) - row.start;
        CAPTURE(row.start);
        CHECK(std::abs(rise - row.rise) <= row.tolerance);
    }
}
