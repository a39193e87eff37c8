// SPDX-License-Identifier: Apache-2.0
// Effective days against days of the calendar: the clock of points with the same drivers.
#pragma once

#include <vector>

#include "due/aging/exposure.hpp"

namespace snugwalk {

/// How far the doubt about exponents and rates is taken one way.
enum class Doubt { Slow, Middle, Fast };

/// A broken line that only rises; before what is known it has slope 1, after it the usual year repeats.
///
/// The integral of the product of rate^exponent over the drivers. Slow and Fast take each driver's rate to
/// its low and high end, and its exponent off by `gammaDoubt` to the side that ages less and more over a
/// usual year; they stand for 10 and 90 %.
/// Source: common practice, declared; the form is the accelerated-life clock of survival analysis.
/// Tests:  tests/unit/due/tst_aging.cpp, tests/property/due
class AgeLine {
public:
    AgeLine(const Exposure &exposure, const AgeWeights &weights, Doubt doubt);

    /// Effective days at a day, from an arbitrary start.
    [[nodiscard]] double at(double day) const;

private:
    std::vector<double> m_days;
    std::vector<double> m_aged;
    double m_yearDays = 365.0;
    double m_yearAged = 365.0;
    std::size_t m_usualFrom = 0; ///< first knot of the year that repeats
};

/// The exponents at one end of their doubt.
[[nodiscard]] AgeWeights doubted(const Exposure &exposure, const AgeWeights &weights, Doubt doubt);
/// A product of rate^exponent.
[[nodiscard]] double agingRate(const DriverRates &rates, const AgeWeights &weights, Doubt doubt);

} // namespace snugwalk
