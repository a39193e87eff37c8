// SPDX-License-Identifier: Apache-2.0
// 65 psi set at 20 degC at sea level, elsewhere: ideal gas law at constant volume with the air of
// [USSA-1976]; figures computed apart from this code (double precision, SciPy 1.10).
#include "../sourced.hpp"

#include "base/units.hpp"
#include "bench/tires/tire_pressure.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

double psiAt(double degC, double altitude, TirePlace from = {celsius(20), {}})
{
    return inPsi(pressureElsewhere(psi(65), from, {celsius(degC), metres(altitude)}).value());
}

} // namespace

TEST_CASE("temperature alone")
{
    SOURCED("computed", psiAt(0, 0), 59.562787, half(1e-6));
    SOURCED("computed", psiAt(50, 0), 73.155819, half(1e-6));
}

TEST_CASE("altitude alone, and both")
{
    SOURCED("computed", psiAt(20, 2000), 68.166143, half(1e-6));
    SOURCED("computed", psiAt(5, 2500), 64.786253, half(1e-6));
    SOURCED("computed", psiAt(-5, 2000, {celsius(35), metres(300)}), 57.372703, half(1e-6));
}

TEST_CASE("figures of the trade, rounded: 70.4, 59.6, 56.8, 75.9 psi, and 64.3 over a pass")
{
    // Worked by hand from the same law
    SOURCED("computed", psiAt(40, 0), 70.4, half(0.1));
    SOURCED("computed", psiAt(0, 0), 59.6, half(0.1));
    SOURCED("computed", psiAt(-10, 0), 56.8, half(0.1));
    SOURCED("computed", psiAt(60, 0), 75.9, half(0.1));
    SOURCED("computed", psiAt(5, 2134), 64.3, half(0.1));
}

// The trade prints 3.35 psi for the altitude alone, from an air rounded to 78.2 kPa; unrounded it is 3.36.
TEST_CASE("of that pass the cold takes 4.1 psi and the altitude gives 3.4; 6 K are 2 % of the absolute")
{
    SOURCED("computed", psiAt(5, 0) - 65, -4.1, half(0.1));
    SOURCED("computed", psiAt(5, 2134) - psiAt(5, 0), 3.4, half(0.1));
    SOURCED("computed", psiAt(20, 2134) - 65, 3.36, half(0.01));
    SOURCED("CP", (psiAt(26, 0) - 65) / (65 + 14.696), 0.02, half(0.01));
}

TEST_CASE("per 10 degF from 20 degC: 1.23, 1.51 and 1.79 psi at 50, 65 and 80 psi, the last to 1.795")
{
    const struct {
        double start, rise, digit;
    } rows[] = {{50, 1.23, 0.01}, {65, 1.51, 0.01}, {80, 1.79, 0.01}, {80, 1.795, 0.001}};
    for (const auto &row : rows) {
        const TirePlace warmer{celsius(20) + TemperatureDifference::fromSi(10.0 / 1.8), {}};
        const double rise =
            inPsi(pressureElsewhere(psi(row.start), {celsius(20), {}}, warmer).value()) - row.start;
        CAPTURE(row.start);
        SOURCED("computed", rise, row.rise, half(row.digit));
    }
}
