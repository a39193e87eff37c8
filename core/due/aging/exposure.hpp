// SPDX-License-Identifier: Apache-2.0
// How hard time was on the rig, and will be: the rate of each age driver, a calendar month at a time.
#pragma once

#include <array>
#include <vector>

#include "due/aging/age_drivers.hpp"
#include "due/aging/ahead.hpp"
#include "due/rig_history.hpp"
#include "due/usage.hpp"

namespace snugwalk {

using DriverRates = std::array<RateRange, ageDriverCount>;

/// A stretch of days with one set of rates. Days count from 1970-01-01, as in `dayNumber`.
struct Stretch {
    double from = 0.0;
    double until = 0.0;
    DriverRates rates;
};

[[nodiscard]] double dayNumber(CivilDate date);
/// The same with the time of day, by the clock on the wall.
[[nodiscard]] double momentOf(const LocalTime &time);

/// Months as they were up to today, then as planned, then the usual year for ever after.
struct Exposure {
    std::vector<Stretch> known; ///< without gaps, oldest first; never empty
    std::vector<Stretch> usual; ///< the twelve months that follow, which then repeat
};

/// Distance a year that goes with the catalogue's months: common practice, no source.
[[nodiscard]] Distance referenceYearly();

/// Each month's mean rate, dose over reference dose, held within 0.25 and 4. What nobody knows is 1: the
/// reference of the weather (see `weatheringOf`), and for the road 10,000 smooth km a year.
/// Source: common practice, declared. Tests: tests/unit/due/tst_aging.cpp
[[nodiscard]] Exposure exposureOf(const RigHistory &history, const UsageForecast &usage, LocalTime now,
                                  const Ahead &ahead = {});

} // namespace snugwalk
