// SPDX-License-Identifier: Apache-2.0
// The quarter car of fixed springs and dampers that roads are compared by.
#pragma once

#include <array>
#include <complex>

#include "base/quantity.hpp"

namespace snugwalk {

/// 80 km/h, part of the definition of the index.
inline constexpr Speed goldenSpeed = Speed::fromSi(80.0 / 3.6);

/// Slope of body, its rate, slope of wheel, its rate: driven by the road's slope, all states are slopes.
using CarState = std::array<double, 4>;

/// The exact step over one spacing on which the road's slope is constant: x' = S x + P slope.
struct CarStep {
    std::array<std::array<double, 4>, 4> s{};
    CarState p{};
    [[nodiscard]] CarState next(const CarState &x, double slope) const
    {
        CarState out{};
        for (std::size_t i = 0; i < 4; ++i)
            out[i] = s[i][0] * x[0] + s[i][1] * x[1] + s[i][2] * x[2] + s[i][3] * x[3] + p[i] * slope;
        return out;
    }
};

/// Exponential of the 5x5 block [[A, B], [0, 0]] dt, by Taylor's series and squaring.
///
/// Source:   [SAYERS-1986] K1 653, K2 63.3, C 6.00, mass ratio 0.150, as read in open software
/// Accuracy: 1e-9; the matrix printed for 0.25 m and 80 km/h is good to 2e-5 (single precision, and one
///           digit of two public copies is a slip)
/// Tests:    tests/published/road/tst_road_golden_car.cpp
[[nodiscard]] CarStep carStep(Length spacing, Speed speed);

/// Steady answer of the four states to a sine of slope 1 with `waves` a metre.
[[nodiscard]] std::array<std::complex<double>, 4> carResponse(double waves, Speed speed);
/// Amplitude of body less wheel for a slope of 1: what the index weighs waves by.
[[nodiscard]] double carGain(Length wave);

} // namespace snugwalk
