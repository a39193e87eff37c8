// SPDX-License-Identifier: Apache-2.0
// Air pressure of the standard atmosphere at an altitude.
#pragma once

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// The lowest layer of the standard atmosphere.
///
/// \param altitude geopotential, -500 m to 11,000 m; the difference to a map's altitude is under
///                 2 m below 3,000 m, less than 0.003 psi.
/// \returns the absolute air pressure; `OutOfRange` outside that interval.
///
/// Formula:  p = 101325 (1 - 0.0065 h / 288.15)^5.25587611
/// Source:   [USSA-1976] equation 33a and table I
/// Accuracy: weather moves the true pressure by about 3 kPa (0.4 psi) either way (common practice)
/// Tests:    tests/published/bench/tst_standard_air.cpp
[[nodiscard]] Result<AbsolutePressure> standardAir(Length altitude);

/// Geopotential altitude of a geometric one: h = r z / (r + z), r = 6,356,766 m. Source [USSA-1976].
[[nodiscard]] Length geopotential(Length geometric);

} // namespace snugwalk
