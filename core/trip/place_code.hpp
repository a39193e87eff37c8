// SPDX-License-Identifier: Apache-2.0
// Short codes for the cell of the earth that a place lies in, to tell it roughly.
#pragma once

#include <string>

#include "base/geo.hpp"

namespace snugwalk {

/// Height and width of a cell in degrees.
struct CellSpan {
    double latitude = 0.0;
    double longitude = 0.0;
};

/// The cell that names a place to the next village: 5 km a side at the equator.
inline constexpr int roughGeohash = 5;
/// The same as an Open Location Code: a twentieth of a degree a side.
inline constexpr int roughLocationCode = 6;

/// Geohash of a place, which must be `isValid`. Latitude 90 is in the last cell, longitude 180 in that of
/// -180.
///
/// \param length  1 to 12 characters
/// Method:   [GEOHASH]: five halvings a character, longitude first
/// Accuracy: exact: every border is a binary fraction
/// Limits:   shortening hides a place, it does not hide who stays there again and again
/// Tests:    tests/published/trip/tst_place_code.cpp
[[nodiscard]] std::string geohash(const GeoPoint &place, int length = roughGeohash);

/// Height and width of a geohash's cell, `length` 1 to 12.
[[nodiscard]] CellSpan geohashSpan(int length = roughGeohash);

/// Open Location Code of a place, which must be `isValid`; edges as above.
///
/// \param digits  2, 4, 6, 8 or 10; fewer than 8 are filled up with zeros
/// Method:   [OPEN-LOCATION-CODE]: pairs of digits to base 20, latitude first
/// Accuracy: 10 digits are 1/8000 degree; a place within 1e-10 degree of a border counts as beyond it
/// Limits:   no grid digits after the tenth
/// Tests:    tests/published/trip/tst_place_code.cpp
[[nodiscard]] std::string openLocationCode(const GeoPoint &place, int digits = roughLocationCode);

} // namespace snugwalk
