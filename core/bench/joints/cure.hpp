// SPDX-License-Identifier: Apache-2.0
// When a bead has a skin, takes rain, is cured through, and how long it lasts.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

struct CureTimes {
    Estimate full; ///< s
    Estimate skin; ///< s
    Estimate rain; ///< s, until it takes rain
};

/// Skin 30 min (10 to 60), rain 1 h (to a day), through in 5 d (3 to 7), all at 23 °C and half-damp air
/// with a bead of 6 mm; elsewhere times the water in that air over the water in this, held to 0.5 to 4,
/// and for a deeper bead by the square of its depth, since water has to come through what is cured.
///
/// \param depth of the bead, 1 to 25 mm
/// \param humidity percent, above 0
/// \returns `OutOfRange` naming depth or temperature (4 to 50 °C), or as `dewPoint`; warns `slow_cure`
///          where the factor is at its end.
/// Source:   common practice, no source; the label goes before it. Water in the air [ALDUCHOV-ESKRIDGE-1996]
/// Tests:    tests/published/bench/joints/tst_cure.cpp
[[nodiscard]] Result<CureTimes> cureTimes(Length depth, Temperature air, double humidity);

enum class RoofClimate { Hot, Mixed, Mild };
[[nodiscard]] std::optional<RoofClimate> parseRoofClimate(std::string_view slug);

/// Years that a bead of self-leveling sealant of about 6 mm (1/4 in) lies on a roof before it is stripped
/// and laid anew: 5 (4 to 7) in hot sun, 6 (5 to 9) between, 8 (7 to 10) in a mild climate. A thinner bead
/// may last less: its low end falls in proportion and it warns `thin_bead`; a thicker one lasts no longer.
///
/// \returns value in s; `OutOfRange` for a height outside 0.5 to 100 mm.
/// Source:   common practice, no source
[[nodiscard]] Result<Estimate> sealantLife(Length height, RoofClimate climate);

} // namespace snugwalk
