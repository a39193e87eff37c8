// SPDX-License-Identifier: Apache-2.0
// Distance and direction between places on earth. Altitude plays no part.
#pragma once

#include "base/geo.hpp"

namespace snugwalk {

/// Shortest way over the WGS84 ellipsoid. Both points must be `isValid`, else the process ends.
///
/// Source:   [KARNEY-2013] Algorithms for geodesics, J. Geodesy 87, 43-55; by GeographicLib
/// Accuracy: 15 nanometres
/// Limits:   none: poles, antipodes and the antimeridian included
/// Tests:    tests/published/trip/tst_trip_geodesic.cpp
[[nodiscard]] Distance distanceBetween(const GeoPoint &a, const GeoPoint &b);

/// Direction at `a` towards `b`, degrees clockwise from true north, 0 <= bearing < 360; 0 when the
/// points are the same. Source and accuracy as above.
[[nodiscard]] double bearing(const GeoPoint &a, const GeoPoint &b);

/// As `distanceBetween`, some ten times faster for the short steps of a track: below 10 km and
/// 65 degrees of latitude on the local plane of the ellipsoid, else the geodesic.
///
/// Formula:  d^2 = (M dlat)^2 + (N cos(lat) dlon)^2, radii M and N at the mid-latitude
/// Source:   radii of curvature as in any text on geodesy; from memory
/// Accuracy: 5.4e-7 of the distance at 10 km, 5.3e-9 at 1 km, checked against the geodesic
/// Tests:    tests/published/trip/tst_trip_geodesic.cpp
[[nodiscard]] Distance stepBetween(const GeoPoint &a, const GeoPoint &b);

/// A place told in metres east and north of another, on the plane used by `stepBetween`.
struct PlaneOffset {
    double east = 0.0;
    double north = 0.0;
};

/// \param scaleLatitude  degrees; where the metres of the plane are true.
[[nodiscard]] PlaneOffset planeOffset(const GeoPoint &from, const GeoPoint &to, double scaleLatitude);

/// `longitude` or the same meridian a turn away, whichever is within 180 degrees of `near`.
[[nodiscard]] double unwrapLongitude(double longitude, double near);

} // namespace snugwalk
