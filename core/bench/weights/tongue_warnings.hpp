// SPDX-License-Identifier: Apache-2.0
// What a share of tongue weight draws in warnings.
#pragma once

#include <string>
#include <vector>

#include "bench/weights/weighing.hpp"

namespace snugwalk {

/// Over 40 % is no trailer but a reading to take again.
inline constexpr double tooMuchTongue = 0.40;

/// `tongue_over_40`, `tongue_under_least` or `tongue_under_band`, `tongue_over_band`.
inline void addTongueWarnings(double share, const TongueBand &band, std::vector<std::string> &warnings)
{
    if (share > tooMuchTongue)
        warnings.emplace_back("tongue_over_40");
    if (share < band.least)
        warnings.emplace_back("tongue_under_least");
    else if (share < band.low)
        warnings.emplace_back("tongue_under_band");
    if (share > band.high)
        warnings.emplace_back("tongue_over_band");
}

} // namespace snugwalk
