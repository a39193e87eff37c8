// SPDX-License-Identifier: Apache-2.0
// Hours in which metal and wood are wet: humidity above 80 % and no frost.
#pragma once

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Relative humidity above 80 % and air above 0 °C. Source [ISO-9223-1992].
[[nodiscard]] bool isWetHour(Temperature air, double humidity);

/// 1 to 5 for wet hours a year up to 10, 250, 2,500, 5,500 and more.
/// Source [ISO-9223-1992], from memory. `OutOfRange` outside 0 to 8,784.
[[nodiscard]] Result<int> wetnessClass(double hoursOfYear);

/// Wet hours to expect of a day whose normals are known.
///
/// The air swings like a cosine between low and high over a steady dew point; from day to day the gap between
/// air and dew point scatters by 4 K and the air by 4.5 K. Each of 24 hours adds its chance of being wet.
/// \param meanHumidity percent, the day's mean
/// Basis:    common practice, no source: the method is ours
/// Accuracy: not known: no year of humid hours is at hand to hold it against; hours of a record replace it
/// Tests:    tests/unit/weather/tst_wetness.cpp
[[nodiscard]] double expectedWetHours(Temperature low, Temperature high, double meanHumidity);

} // namespace snugwalk
