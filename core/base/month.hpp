// SPDX-License-Identifier: Apache-2.0
// The month where months tell a length.
#pragma once

namespace snugwalk {

/// Days of a year of 365.25 days by twelve.
inline constexpr double daysPerMonth = 365.25 / 12.0;

} // namespace snugwalk
