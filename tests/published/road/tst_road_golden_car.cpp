// SPDX-License-Identifier: Apache-2.0
// The golden car's matrices and gains. Matrix for 0.25 m at 80 km/h: [SAYERS-1986] as read in several open
// programs, in single precision; one digit of S44 (0.4347664 for 0.4347564) is a slip of two of them and is
// left out. All other figures: computed with SciPy's expm and a plain complex solution.
#include <array>
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/profile/golden_car.hpp"

using namespace snugwalk;

namespace {

void checkWithin(double value, double wanted, double tolerance)
{
    INFO(value, " against ", wanted);
    CHECK(std::abs(value - wanted) <= tolerance);
}

// Half a unit in the last of `digits` significant digits.
double halfDigit(double wanted, int digits)
{
    return 0.5 * std::pow(10.0, std::floor(std::log10(std::abs(wanted))) + 1 - digits) * 1.0001;
}

struct Printed {
    double dx;
    int digits;
    CarState firstRow, p;
};

} // namespace

TEST_CASE("the printed matrix of 0.25 m is met to its single precision")
{
    constexpr double s[4][4] = {{0.9966071, 0.01091514, -0.002083274, 0.0003190145},
                                {-0.5563044, 0.9438768, -0.8324718, 0.05064701},
                                {0.02153176, 0.002126763, 0.7508714, 0.008221888},
                                {3.335013, 0.3376467, -39.12762, 0.4347564}};
    constexpr double p[4] = {0.005476107, 1.388776, 0.2275968, 35.79262};
    const CarStep step = carStep(metres(0.25), goldenSpeed);
    for (std::size_t i = 0; i < 4; ++i) {
        for (std::size_t j = 0; j < 4; ++j)
            checkWithin(step.s[i][j], s[i][j], 2e-5 * std::max(1.0, std::abs(s[i][j])));
        checkWithin(step.p[i], p[i], 2e-5 * std::max(1.0, p[i]));
    }
    checkWithin(step.s[3][3], 0.4347563973, 5e-11);
    checkWithin(step.s[3][2], -39.1276349, 5e-8);
    checkWithin(step.p[0], 5.4762056e-3, 5e-11);
}

TEST_CASE("the matrix of 0.1 m, computed")
{
    constexpr double s[4][4] = {{0.99940144, 0.0044423510, 0.00021888541, 5.7217910e-5},
                                {-0.25705486, 0.97503605, 0.0079662234, 0.024584275},
                                {0.0039603791, 0.00038145273, 0.95480485, 0.0040555876},
                                {1.6873120, 0.16389516, -19.342636, 0.79487006}};
    constexpr double p[4] = {3.7967684e-4, 0.24908863, 0.041234773, 17.655324};
    const CarStep step = carStep(metres(0.1), goldenSpeed);
    for (std::size_t i = 0; i < 4; ++i) {
        for (std::size_t j = 0; j < 4; ++j)
            checkWithin(step.s[i][j], s[i][j], halfDigit(s[i][j], 8));
        checkWithin(step.p[i], p[i], halfDigit(p[i], 8));
    }
}

TEST_CASE("first rows of 0.05 m and corners of 0.5 m, computed")
{
    const CarStep fine = carStep(metres(0.05), goldenSpeed);
    constexpr double row[4] = {0.99984519, 0.0022352086, 0.00010625453, 1.4763996e-5};
    constexpr double fineP[4] = {4.8559505e-5, 0.064272594, 0.010675781, 9.3313730};
    const CarStep coarse = carStep(metres(0.5), goldenSpeed);
    constexpr double coarseP[4] = {0.037036747, 4.3198853, 0.69584732, 42.935545};
    for (std::size_t i = 0; i < 4; ++i) {
        checkWithin(fine.s[0][i], row[i], halfDigit(row[i], 8));
        checkWithin(fine.p[i], fineP[i], halfDigit(fineP[i], 8));
        checkWithin(coarse.p[i], coarseP[i], halfDigit(coarseP[i], 8));
    }
    checkWithin(coarse.s[0][0], 0.98817257, 5e-9);
    checkWithin(coarse.s[3][3], -0.11452522, 5e-9);
}

TEST_CASE("a step of slope from rest gives P, and two steps of 0.25 m one of 0.5 m")
{
    const CarStep step = carStep(metres(0.25), goldenSpeed);
    const CarState two = carStep(metres(0.5), goldenSpeed).p;
    struct Row {
        int steps;
        CarState x;
        int digits[4];
    };
    constexpr Row rows[] = {{2, {0.037036747, 4.3198853, 0.69584732, 42.935545}, {8, 8, 8, 8}},
                            {5, {0.2880107, 8.5980282, 1.300576, -8.9930497}, {7, 8, 7, 8}},
                            {20, {1.2558574, 3.5230037, 1.0528738, 0.6963903}, {8, 8, 8, 7}}};
    for (const Row &row : rows) {
        CarState x{};
        for (int i = 0; i < row.steps; ++i)
            x = step.next(x, 1.0);
        for (std::size_t i = 0; i < 4; ++i)
            checkWithin(x[i], row.x[i], halfDigit(row.x[i], row.digits[i]));
    }
    const CarState one = step.next(CarState{}, 1.0);
    const CarState both = step.next(one, 1.0);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(one[i] == step.p[i]);
        checkWithin(both[i], two[i], 1e-9 * std::abs(two[i]));
    }
}

TEST_CASE("gains by wavelength, computed")
{
    constexpr double rows[][2] = {{1, .27309},   {2, 1.53354},  {2.4, 1.66400}, {5, 1.16967}, {10, 1.25968},
                                  {15, 1.52731}, {16, 1.53668}, {20, 1.23403},  {30, .45481}};
    for (const auto &[wave, gain] : rows)
        checkWithin(carGain(metres(wave)), gain, 5e-6);
    checkWithin(carGain(metres(50)), 0.136594067, 5e-10);
}
