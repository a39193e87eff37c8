// SPDX-License-Identifier: Apache-2.0
// Mercator's projection and its inverse.
#include "map/frame.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

constexpr double earthKm = 6371.0;
constexpr double radian = std::numbers::pi / 180.0;
constexpr double furthest = 85.0; ///< degrees of latitude
constexpr double turn = 2.0 * std::numbers::pi;

double across(double longitude) { return longitude * radian; }

double up(double latitude)
{
    return std::asinh(std::tan(std::clamp(latitude, -furthest, furthest) * radian));
}

double latitudeOf(double y) { return std::atan(std::sinh(y)) / radian; }

} // namespace

std::optional<MapFrame> MapFrame::around(std::span<const GeoPoint> places, const FrameRoom &room)
{
    if (places.empty())
        return std::nullopt;
    double west = 1e9;
    double east = -1e9;
    double south = 1e9;
    double north = -1e9;
    for (const GeoPoint &place : places) {
        const double x = across(unwrapLongitude(place.longitude, places.front().longitude));
        west = std::min(west, x);
        east = std::max(east, x);
        south = std::min(south, up(place.latitude));
        north = std::max(north, up(place.latitude));
    }
    MapFrame frame;
    const double middle = (south + north) / 2.0;
    frame.m_unit = earthKm / std::cosh(middle); // cos(phi) of that y
    const double wide = (east - west) * frame.m_unit;
    const double high = (north - south) * frame.m_unit;
    const double around = 2.0 * room.roomAround * std::max(wide, high);
    frame.m_width = std::max({wide + around, (high + around) * room.shape, room.leastWidth});
    frame.m_height = frame.m_width / room.shape;
    frame.m_west = (west + east) / 2.0 - frame.m_width / 2.0 / frame.m_unit;
    frame.m_top = middle + frame.m_height / 2.0 / frame.m_unit;
    return frame;
}

MapFrame MapFrame::looking(const MapPoint &middle, double degreesAcross, double shape)
{
    MapFrame frame;
    const double y = up(middle.latitude);
    const double wide = std::clamp(across(degreesAcross), 1e-9, turn);
    frame.m_unit = earthKm / std::cosh(y);
    frame.m_width = wide * frame.m_unit;
    frame.m_height = frame.m_width / shape;
    frame.m_west = across(middle.longitude) - wide / 2.0;
    frame.m_top = y + wide / shape / 2.0;
    return frame;
}

double MapFrame::degreesAcross() const { return m_width / m_unit / radian; }

FlatPoint MapFrame::at(double latitude, double longitude) const
{
    return {(across(longitude) - m_west) * m_unit, (m_top - up(latitude)) * m_unit};
}

FlatPoint MapFrame::at(const GeoPoint &place) const
{
    const double middle = (m_west + m_width / 2.0 / m_unit) / radian;
    const double turns = std::round((middle - place.longitude) / 360.0);
    return at(place.latitude, place.longitude + 360.0 * turns);
}

MapPoint MapFrame::placeAt(const FlatPoint &point) const
{
    return {latitudeOf(m_top - point.y / m_unit), (m_west + point.x / m_unit) / radian};
}

GeoBox MapFrame::box(double over) const
{
    const MapPoint topLeft = placeAt({-over * m_width, -over * m_height});
    const MapPoint bottomRight = placeAt({(1.0 + over) * m_width, (1.0 + over) * m_height});
    GeoBox box{bottomRight.latitude, topLeft.longitude, topLeft.latitude, bottomRight.longitude};
    if (const double more = box.east - box.west - 360.0; more > 0.0) {
        box.west += more / 2.0;
        box.east = box.west + 360.0;
    }
    return box;
}

} // namespace snugwalk
