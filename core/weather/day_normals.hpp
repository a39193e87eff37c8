// SPDX-License-Identifier: Apache-2.0
// A day's normal weather from that of the months.
#pragma once

#include <array>

#include "base/quantity.hpp"
#include "base/time.hpp"
#include "weather/climate.hpp"

namespace snugwalk {

/// A smooth year through twelve monthly means.
///
/// Straight lines between the middles of months, whose heights are chosen so that the mean over each month
/// is the month's own: (k[i-1] + 6 k[i] + k[i+1]) / 8 = mean[i], a cyclic system solved once. Plain lines
/// between the means would cut off summers and winters.
///
/// Source:   [SHENG-ZWIERS-1998], from memory
/// Accuracy: monthly means within 0.1 % of the year's swing; the turns of a cosine stand out by 2.3 % of its
///           half swing
/// Tests:    tests/unit/weather/tst_day_normals.cpp
class MonthlyCurve {
public:
    explicit MonthlyCurve(const std::array<double, 12> &means);
    [[nodiscard]] double on(CivilDate date) const;

private:
    std::array<double, 12> m_knots{};
};

struct DayNormal {
    Temperature mean, low, high;
    double humidity = 0.0; ///< percent
    double rain = 0.0;     ///< mm in the day
};

/// All of a place's curves; every figure is estimated, as the months are.
class DayNormals {
public:
    explicit DayNormals(const ClimateNormals &normals);
    /// Low, mean and high in this order; humidity within 1 to 100, rain not below 0.
    [[nodiscard]] DayNormal on(CivilDate date) const;

private:
    MonthlyCurve m_mean, m_low, m_high, m_humidity, m_rain;
};

} // namespace snugwalk
