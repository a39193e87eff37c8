// SPDX-License-Identifier: Apache-2.0
// coast.bin: the coarse level, then the fine one.
#include "weather/coast.hpp"

#include "trip/geodesic.hpp"
#include "weather/data_bytes.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view fileName = "coast.bin";
constexpr std::string_view magic = "SNUGCST1";

} // namespace

Result<Coast> Coast::fromBytes(std::string_view content)
{
    DataBytes bytes(content);
    if (bytes.take(magic.size()) != magic || bytes.u32() != 2)
        return bytes.fault(fileName, "this is no coastline of this version");
    auto coarse = CoastLevel::read(bytes);
    if (!coarse)
        return coarse.error();
    auto fine = CoastLevel::read(bytes);
    if (!fine)
        return fine.error();
    if (bytes.left() != 0)
        return bytes.fault(fileName, "more bytes follow than the coastline holds");
    return Coast(std::move(*coarse), std::move(*fine));
}

Distance Coast::distanceTo(const GeoPoint &place) const
{
    return distanceBetween(place, m_fine.nearest(place));
}

bool Coast::isLand(const GeoPoint &place) const { return m_fine.isLand(place); }

std::vector<MapRing> Coast::landWithin(const GeoBox &box, CoastDetail detail) const
{
    return (detail == CoastDetail::Coarse ? m_coarse : m_fine).landWithin(box);
}

} // namespace snugwalk
