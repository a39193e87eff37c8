// SPDX-License-Identifier: Apache-2.0
// What is left of a tire by two readings: distance until the tread limit, air lost a month.
#pragma once

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"
#include "base/time.hpp"
#include "bench/tires/tire_pressure.hpp"

namespace snugwalk {

struct TreadReadings {
    Length before;
    Length now;
    Distance driven; ///< between the two
    Length limit;    ///< 2/32 in unless the law of the place asks for more
};

/// Distance until the tread is at its limit: (now - limit) / ((before - now) / driven).
///
/// Range: each reading is known to 1/32 in either way (common practice), so that
/// sd(ln L) = sqrt(2 (u / (before - now))^2 + (u / (now - limit))^2), u = (1/32 in) / sqrt 3; low and high
/// are L exp(-+1.2816 sd), 8 in 10. \returns metres; 0 with the warning `at_limit` when the tread is at its
/// limit or under.
///          `OutOfRange` naming `before` when less than 1/32 in was worn off, `driven` under 1,000 miles:
///          both are less than such a gauge can tell.
/// Source:  2/32 in [49CFR570] 570.62
/// Tests:   tests/published/bench/tires/tst_tire_wear.cpp
[[nodiscard]] Result<Estimate> treadLeft(const TreadReadings &readings);

struct ColdReading {
    Pressure pressure;
    TirePlace place;
    CivilDate date{};
};

/// Share of its pressure that a tire loses in a month, both readings brought to 20 degC at sea level.
///
/// Range: the same gauge twice, 1 psi either way each (common practice).
/// \returns a share a month, below zero when it gained; `OutOfRange` naming `second-date` under 3 days.
/// Warnings: `leaking` over 5 % a month (common practice: 0.5 to 2 % is what tires lose), `gained`.
/// Source:  ideal gas law, [USSA-1976]
/// Tests:   tests/published/bench/tires/tst_tire_wear.cpp
[[nodiscard]] Result<Estimate> leakRate(const ColdReading &first, const ColdReading &second);

} // namespace snugwalk
