// SPDX-License-Identifier: Apache-2.0
// Cells instead of spots.
#include "report/rough_place.hpp"

#include <algorithm>
#include <cmath>

#include "trip/place_code.hpp"

namespace snugwalk {
namespace {

double middle(double degrees, double least, double span, double most)
{
    const double cells = std::round((most - least) / span);
    const double cell =
        std::min(std::floor((degrees - least) / span), cells - 1.0); // the edge is in the last
    return std::round((least + (cell + 0.5) * span) * 100.0) / 100.0;
}

} // namespace

std::string_view slug(PlaceDetail detail)
{
    switch (detail) {
    case PlaceDetail::LeftOut:
        return "left_out";
    case PlaceDetail::Coarse:
        return "coarse";
    case PlaceDetail::Exact:
        return "exact";
    }
    return "left_out";
}

std::optional<PlaceDetail> parsePlaceDetail(std::string_view text)
{
    for (const PlaceDetail detail : {PlaceDetail::LeftOut, PlaceDetail::Coarse, PlaceDetail::Exact}) {
        if (slug(detail) == text)
            return detail;
    }
    return std::nullopt;
}

GeoPoint roughPlace(const GeoPoint &place)
{
    const CellSpan span = geohashSpan(roughGeohash);
    return {middle(place.latitude, -90.0, span.latitude, 90.0),
            middle(place.longitude, -180.0, span.longitude, 180.0), std::nullopt, std::nullopt};
}

std::optional<GeoPoint> placeToTell(const std::optional<GeoPoint> &place, PlaceDetail detail)
{
    if (!place || !isValid(*place) || detail == PlaceDetail::LeftOut)
        return std::nullopt;
    if (detail == PlaceDetail::Coarse)
        return roughPlace(*place);
    return GeoPoint{place->latitude, place->longitude, std::nullopt, std::nullopt};
}

} // namespace snugwalk
