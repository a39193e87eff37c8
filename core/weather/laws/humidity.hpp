// SPDX-License-Identifier: Apache-2.0
// Water vapor: what the air can hold, and when it gives it up.
#pragma once

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// es = 6.1094 exp(17.625 t / (243.04 + t)) hPa, t in °C, over water.
/// Source:   [ALDUCHOV-ESKRIDGE-1996], from memory
/// Accuracy: under 0.4 % from -40 to 50 °C; over ice the true one is lower, which is not modelled
/// Tests:    tests/published/weather/tst_humidity.cpp
[[nodiscard]] AbsolutePressure saturationPressure(Temperature at);

/// e° = 0.6108 exp(17.27 t / (t + 237.3)) kPa. Source [FAO-56] equation 11.
[[nodiscard]] AbsolutePressure saturationPressureFao(Temperature at);

/// Temperature to which air must cool until water comes out; the inverse of `saturationPressure`.
///
/// \param humidity percent; above 100 counts as 100
/// \returns `OutOfRange` for a humidity under 0.001, or air outside -40 to 50 °C.
[[nodiscard]] Result<Temperature> dewPoint(Temperature air, double humidity);

/// Percent, at most 100.
[[nodiscard]] double relativeHumidity(Temperature air, Temperature dewPoint);

} // namespace snugwalk
