// SPDX-License-Identifier: Apache-2.0
// The geodesic is GeographicLib's; the plane for short steps is ours.
#include "trip/geodesic.hpp"

#include <cmath>
#include <numbers>

#include <GeographicLib/Geodesic.hpp>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double equatorRadius = 6378137.0;        // WGS84, defining
constexpr double flattening = 1.0 / 298.257223563; // WGS84, defining
constexpr double eccentricity2 = flattening * (2.0 - flattening);
constexpr double radian = std::numbers::pi / 180.0;
constexpr double planeReach = 10'000.0; // metres
constexpr double planeLatitude = 65.0;  // degrees

} // namespace

Distance distanceBetween(const GeoPoint &a, const GeoPoint &b)
{
    SNUG_ASSERT(isValid(a) && isValid(b));
    double distance = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(a.latitude, a.longitude, b.latitude, b.longitude, distance);
    return Distance::fromSi(distance);
}

double bearing(const GeoPoint &a, const GeoPoint &b)
{
    SNUG_ASSERT(isValid(a) && isValid(b));
    double distance = 0.0;
    double azimuth = 0.0;
    double arrival = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(a.latitude, a.longitude, b.latitude, b.longitude, distance,
                                             azimuth, arrival);
    if (distance == 0.0)
        return 0.0;
    const double turned = azimuth < 0.0 ? azimuth + 360.0 : azimuth;
    return turned < 360.0 ? turned + 0.0 : 0.0; // a tiny negative azimuth rounds up to 360
}

double unwrapLongitude(double longitude, double near)
{
    if (longitude - near > 180.0)
        return longitude - 360.0;
    return longitude - near < -180.0 ? longitude + 360.0 : longitude;
}

PlaneOffset planeOffset(const GeoPoint &from, const GeoPoint &to, double scaleLatitude)
{
    const double sine = std::sin(scaleLatitude * radian);
    const double w2 = 1.0 - eccentricity2 * sine * sine;
    const double normalRadius = equatorRadius / std::sqrt(w2);
    const double meridianRadius = normalRadius * (1.0 - eccentricity2) / w2;
    const double longitude = unwrapLongitude(to.longitude, from.longitude);
    return {normalRadius * std::cos(scaleLatitude * radian) * (longitude - from.longitude) * radian,
            meridianRadius * (to.latitude - from.latitude) * radian};
}

Distance stepBetween(const GeoPoint &a, const GeoPoint &b)
{
    SNUG_ASSERT(isValid(a) && isValid(b));
    const double middle = (a.latitude + b.latitude) / 2.0;
    if (std::abs(middle) < planeLatitude) {
        const PlaneOffset offset = planeOffset(a, b, middle);
        const double distance = std::hypot(offset.east, offset.north);
        if (distance < planeReach)
            return Distance::fromSi(distance);
    }
    return distanceBetween(a, b);
}

} // namespace snugwalk
