// SPDX-License-Identifier: Apache-2.0
// A place on earth and a fix of a receiver.
#pragma once

#include <optional>

#include "base/quantity.hpp"
#include "base/time.hpp"

namespace snugwalk {

/// WGS84, degrees; latitude -90 to 90, longitude -180 to 180.
struct GeoPoint {
    double latitude = 0.0;
    double longitude = 0.0;
    std::optional<double> altitude; ///< metres above mean sea level
    std::optional<Length> accuracy; ///< 68 % radius, as the receiver says
    friend bool operator==(const GeoPoint &, const GeoPoint &) = default;
};

/// False for NaN and for anything outside the ranges above.
[[nodiscard]] constexpr bool isValid(const GeoPoint &p)
{
    return p.latitude >= -90.0 && p.latitude <= 90.0 && p.longitude >= -180.0 && p.longitude <= 180.0;
}

/// One position with its time.
struct Fix {
    Instant time{};
    GeoPoint point;
    std::optional<double> hdop;
    std::optional<Speed> speed;
};

} // namespace snugwalk
