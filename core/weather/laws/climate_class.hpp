// SPDX-License-Identifier: Apache-2.0
// The class of a climate, for names and not for computing with.
#pragma once

#include <array>
#include <string>

#include "base/result.hpp"

namespace snugwalk {

/// January to December.
struct ClimateMonths {
    std::array<double, 12> temperature{}; ///< °C, mean of the month
    std::array<double, 12> rain{};        ///< mm in the month
};

struct ClimateClass {
    std::string name;       ///< such as `Csb`
    std::string runnerUp;   ///< the class that the smallest change leads to; empty when none is near
    std::string nearestBy;  ///< `rain` or `temperature`: what that change is of
    double margin = 0.0;    ///< that change: a share of the rain, or kelvin; signed
    double mean = 0.0;      ///< °C over the year
    double rain = 0.0;      ///< mm in the year
    double aridBelow = 0.0; ///< mm in the year: with less the climate is arid
};

/// Köppen's classes with arid climates tested first, then tropical, temperate, cold, polar.
///
/// The runner-up comes from shifting all temperatures by up to 3 K and scaling all rain by up to 30 %, 1 K
/// weighing as much as 10 %. Winter and summer are the cooler and the warmer half year, so both hemispheres
/// read alike. A warmest month of exactly 10 °C is polar.
///
/// \returns `OutOfRange` for temperatures outside -80 to 60 °C or rain outside 0 to 5,000 mm, naming the
///          month.
/// Source:  [PEEL-2007] table 1, rules within the groups from memory
/// Tests:   tests/published/weather/tst_climate_class.cpp
[[nodiscard]] Result<ClimateClass> climateClass(const ClimateMonths &months);

} // namespace snugwalk
