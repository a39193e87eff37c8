// SPDX-License-Identifier: Apache-2.0
// What a passenger tire carries by its size alone: catches a load misread from a worn sidewall.
#pragma once

#include <string_view>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Load of a tire of `size` such as "P235/75R15" at a cold pressure, before anything is taken off for a
/// trailer.
///
/// \returns `InvalidInput` naming `size` for what is no such size, or for one that no passenger tire has.
/// Formula:  L = 6.67e-5 P^0.5 Sd^1.39 (D + Sd) kg; Sd = (0.34848 + 0.6497 aspect) width mm, D rim in mm, P
/// in kPa Source:   [TRA] design formula, from memory Accuracy: yearbook rows are stepped to load indices,
/// within 2 % of it Tests:    tests/published/bench/tires/tst_tire_load.cpp
[[nodiscard]] Result<Mass> passengerLoad(std::string_view size, Pressure pressure);

} // namespace snugwalk
