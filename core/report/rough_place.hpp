// SPDX-License-Identifier: Apache-2.0
// How much of a place leaves the house with a report.
#pragma once

#include <optional>
#include <string_view>

#include "base/geo.hpp"

namespace snugwalk {

enum class PlaceDetail {
    LeftOut, ///< unless the person says otherwise
    Coarse,  ///< to a cell of some 5 km
    Exact    ///< as it was measured, without altitude
};
/// left_out, coarse, exact.
[[nodiscard]] std::string_view slug(PlaceDetail detail);
[[nodiscard]] std::optional<PlaceDetail> parsePlaceDetail(std::string_view slug);

/// The middle of the geohash cell (`roughGeohash`, 0.044° a side) that `place` lies in, to two digits after
/// the point: every place of the cell comes out alike. `place` must be `isValid`. Limits:   a place that
/// comes up again and again still tells where somebody lives Tests:    tests/unit/report/tst_rough_place.cpp
[[nodiscard]] GeoPoint roughPlace(const GeoPoint &place);

/// What may be told of `place`: nothing where it is left out, unknown or no place on earth. Altitude and
/// accuracy never are.
[[nodiscard]] std::optional<GeoPoint> placeToTell(const std::optional<GeoPoint> &place, PlaceDetail detail);

} // namespace snugwalk
