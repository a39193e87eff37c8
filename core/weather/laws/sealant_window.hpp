// SPDX-License-Identifier: Apache-2.0
// Whether sealant can go on now: warm enough, cool enough, and no dew about to form.
#pragma once

#include <optional>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

inline constexpr double sealantColdest = 5.0;  ///< °C
inline constexpr double sealantHottest = 32.0; ///< °C
inline constexpr double sealantAboveDew = 3.0; ///< K

struct SealantWindow {
    Temperature dewPoint;
    TemperatureDifference aboveDew; ///< surface less dew point
    bool tooCold = false;
    bool tooHot = false;
    bool tooDamp = false;
    [[nodiscard]] bool open() const { return !tooCold && !tooHot && !tooDamp; }
};

/// Air and surface between 5 and 32 °C, surface at least 3 K above the dew point.
///
/// \param surface that of the joint; without it, the air's is taken
/// \returns errors of `dewPoint`; `OutOfRange` for a surface outside -40 to 90 °C.
/// Basis:   guide specifications print 4 to 32 °C (40 to 90 °F), product sheets 5 °C: the stricter one
/// stands;
///          the 3 K is common practice; the label of the cartridge goes before them
/// Tests:   tests/published/weather/tst_humidity.cpp
[[nodiscard]] Result<SealantWindow> sealantWindow(Temperature air, double humidity,
                                                  std::optional<Temperature> surface = std::nullopt);

/// Hours of a day within those limits in shade, when the air swings like a cosine between its low and
/// high over a steady dew point.
[[nodiscard]] double sealantHours(Temperature low, Temperature high, double meanHumidity);

} // namespace snugwalk
