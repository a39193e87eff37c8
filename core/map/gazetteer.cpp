// SPDX-License-Identifier: Apache-2.0
// places.bin, and looking through it from a place outward.
#include "map/gazetteer.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "base/contract.hpp"
#include "trip/geodesic.hpp"
#include "weather/data_bytes.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view fileName = "places.bin";
constexpr std::string_view magic = "SNUGPLC1";
constexpr double perDegree = 1000.0;
constexpr std::int32_t pole = 90'000;
constexpr std::int32_t halfTurn = 180'000;
constexpr std::size_t leastRecord = 6; ///< bytes: two differences, three numbers, one letter
constexpr double equatorRadius = 6378137.0;
constexpr double eccentricity2 = 6.69437999014e-3; // WGS84
constexpr double radian = std::numbers::pi / 180.0;
constexpr double alike = 1.001; ///< chords closer than this are told apart by geodesics

} // namespace

Gazetteer::Solid Gazetteer::solid(double latitude, double longitude)
{
    const double sine = std::sin(latitude * radian);
    const double cosine = std::cos(latitude * radian);
    const double n = equatorRadius / std::sqrt(1.0 - eccentricity2 * sine * sine);
    return {n * cosine * std::cos(longitude * radian), n * cosine * std::sin(longitude * radian),
            n * (1.0 - eccentricity2) * sine};
}

Result<Gazetteer> Gazetteer::fromBytes(std::string_view content)
{
    DataBytes bytes(content);
    if (bytes.take(magic.size()) != magic)
        return bytes.fault(fileName, "these are no places of this version");
    Gazetteer places;
    const std::uint32_t count = bytes.u32();
    const auto countries = static_cast<std::size_t>(bytes.number(1));
    places.m_countries = bytes.take(2 * countries);
    if (!bytes.whole() || count == 0 || count > bytes.left() / leastRecord)
        return bytes.fault(fileName, "there are fewer places than are told");
    places.m_entries.reserve(count);
    places.m_solids.reserve(count);
    std::int64_t latitude = 0;
    std::int64_t longitude = 0;
    for (std::uint32_t i = 0; i < count; ++i) {
        const std::int64_t before = latitude;
        latitude += bytes.varint();
        longitude += bytes.varint();
        Entry entry;
        entry.size = static_cast<std::uint8_t>(bytes.number(1));
        entry.country = static_cast<std::uint8_t>(bytes.number(1));
        entry.nameSize = static_cast<std::uint8_t>(bytes.number(1));
        entry.nameAt = static_cast<std::uint32_t>(places.m_names.size());
        places.m_names += bytes.take(entry.nameSize);
        const bool isPlace = latitude >= -pole && latitude <= pole && longitude >= -halfTurn &&
                             longitude <= halfTurn && entry.country < countries && entry.nameSize > 0;
        if (!bytes.whole() || !isPlace || (i > 0 && latitude < before))
            return bytes.fault(fileName, "this is no place, or it stands in the wrong order");
        entry.latitude = static_cast<std::int32_t>(latitude);
        entry.longitude = static_cast<std::int32_t>(longitude);
        places.m_solids.push_back(
            solid(static_cast<double>(latitude) / perDegree, static_cast<double>(longitude) / perDegree));
        places.m_entries.push_back(entry);
    }
    if (bytes.left() != 0)
        return bytes.fault(fileName, "more bytes follow than the places hold");
    return places;
}

NamedPlace Gazetteer::at(std::size_t index) const
{
    SNUG_ASSERT(index < m_entries.size());
    const Entry &entry = m_entries[index];
    return {m_names.substr(entry.nameAt, entry.nameSize), m_countries.substr(2U * entry.country, 2),
            GeoPoint{entry.latitude / perDegree, entry.longitude / perDegree, std::nullopt, std::nullopt},
            entry.size};
}

// Calls `visit` with each index whose height along the axis is within `within` metres of that of `from`;
// `visit` may narrow `within` meanwhile.
template <typename Visit>
void Gazetteer::outward(const Solid &from, const double &within, Visit visit) const
{
    const auto middle = std::lower_bound(m_solids.begin(), m_solids.end(), from.z,
                                         [](const Solid &s, double z) { return s.z < z; });
    auto up = static_cast<std::size_t>(middle - m_solids.begin());
    std::size_t down = up;
    bool going = true;
    while (going) {
        going = false;
        if (up < m_solids.size() && m_solids[up].z - from.z <= within) {
            visit(up++);
            going = true;
        }
        if (down > 0 && from.z - m_solids[down - 1].z <= within) {
            visit(--down);
            going = true;
        }
    }
}

NearPlace Gazetteer::nearest(const GeoPoint &place) const
{
    SNUG_ASSERT(isValid(place) && !m_entries.empty());
    const Solid here = solid(place.latitude, place.longitude);
    const auto chord = [&](std::size_t i) {
        const Solid &s = m_solids[i];
        return std::hypot(s.x - here.x, s.y - here.y, s.z - here.z);
    };
    double shortest = std::numeric_limits<double>::infinity();
    outward(here, shortest, [&](std::size_t i) { shortest = std::min(shortest, chord(i)); });
    const double reach = shortest * alike + 1.0; // and a metre, for a place that is met exactly
    NearPlace best;
    best.distance = Distance::fromSi(std::numeric_limits<double>::infinity());
    std::size_t found = 0;
    outward(here, reach, [&](std::size_t i) {
        if (chord(i) > reach)
            return;
        const Entry &e = m_entries[i];
        const Distance distance = distanceBetween(
            GeoPoint{e.latitude / perDegree, e.longitude / perDegree, std::nullopt, std::nullopt}, place);
        if (distance < best.distance) {
            best.distance = distance;
            found = i;
        }
    });
    best.named = at(found);
    best.bearing = bearing(best.named.place, place);
    return best;
}

std::vector<NamedPlace> Gazetteer::largestWithin(const GeoBox &box, std::size_t atMost) const
{
    const auto south = static_cast<std::int32_t>(std::ceil(box.south * perDegree));
    const auto first = std::lower_bound(m_entries.begin(), m_entries.end(), south,
                                        [](const Entry &e, std::int32_t at) { return e.latitude < at; });
    std::vector<std::size_t> inside;
    for (auto it = first; it != m_entries.end() && it->latitude / perDegree <= box.north; ++it) {
        double longitude = it->longitude / perDegree;
        longitude += 360.0 * std::ceil((box.west - longitude) / 360.0);
        if (longitude <= box.east)
            inside.push_back(static_cast<std::size_t>(it - m_entries.begin()));
    }
    const std::size_t kept = std::min(atMost, inside.size());
    std::partial_sort(inside.begin(), inside.begin() + static_cast<std::ptrdiff_t>(kept), inside.end(),
                      [&](std::size_t a, std::size_t b) {
                          const Entry &one = m_entries[a];
                          const Entry &other = m_entries[b];
                          return one.size != other.size ? one.size > other.size : a < b;
                      });
    std::vector<NamedPlace> out;
    for (std::size_t i = 0; i < kept; ++i)
        out.push_back(at(inside[i]));
    return out;
}

} // namespace snugwalk
