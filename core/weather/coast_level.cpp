// SPDX-License-Identifier: Apache-2.0
// Reads one level of coast.bin and cuts its rings into pieces.
#include "weather/coast_level.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>

#include "weather/data_bytes.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view fileName = "coast.bin";
constexpr std::size_t pieceCorners = 32;
constexpr std::uint32_t mostCorners = 4'000'000;
constexpr double metresOfDegree = 111'700.0; // the longest there is, along a meridian at a pole
constexpr double equatorRadius = 6378137.0;  // WGS84
constexpr double eccentricity2 = 6.69437999014e-3;

} // namespace

void CoastLevel::Extent::add(const Corner &corner)
{
    west = std::min(west, corner.x);
    east = std::max(east, corner.x);
    south = std::min(south, corner.y);
    north = std::max(north, corner.y);
}

Result<CoastLevel> CoastLevel::read(DataBytes &bytes)
{
    CoastLevel level;
    level.m_scaleX = bytes.f64();
    level.m_west = bytes.f64();
    level.m_scaleY = bytes.f64();
    level.m_south = bytes.f64();
    const std::uint32_t rings = bytes.u32();
    const std::uint32_t corners = bytes.u32();
    const std::uint32_t size = bytes.u32();
    const bool plausible = level.m_scaleX > 1e-5 && level.m_scaleX < 1.0 && level.m_scaleY > 1e-5 &&
                           level.m_scaleY < 1.0 && level.m_west == -180.0 && level.m_south >= -90.0 &&
                           level.m_south <= 0.0;
    if (!bytes.whole() || !plausible || rings < 1 || corners > mostCorners || rings > corners / 3)
        return bytes.fault(fileName, "the head of a level makes no sense");
    if (size > bytes.left() || size / 2 < corners) // two bytes a corner at least
        return bytes.fault(fileName, "the file ends before the corners it announces");
    level.m_turn = static_cast<std::int32_t>(std::lround(360.0 / level.m_scaleX));
    const std::size_t end = bytes.at() + size;
    level.m_corners.reserve(corners + rings);
    level.m_rings.reserve(rings);
    for (std::uint32_t i = 0; i < rings; ++i)
        SNUG_TRY(level.readRing(bytes, corners + i - level.m_corners.size()));
    if (level.m_corners.size() != corners + rings || bytes.at() != end)
        return bytes.fault(fileName, "a level holds more or less than its head says");
    level.cutIntoPieces();
    return level;
}

Status CoastLevel::readRing(DataBytes &bytes, std::size_t mostLeft)
{
    const std::uint32_t count = bytes.u32();
    if (!bytes.whole() || count < 3 || count > mostLeft)
        return bytes.fault(fileName, "a ring has too many corners or too few");
    Ring ring{m_corners.size(), count + 1U, {}};
    std::int64_t x = 0;
    std::int64_t y = 0;
    for (std::uint32_t i = 0; i < count; ++i) {
        x += bytes.varint();
        y += bytes.varint();
        const double latitude = static_cast<double>(y) * m_scaleY + m_south;
        if (!bytes.whole() || std::abs(x) > 3LL * m_turn || !(std::abs(latitude) <= 90.0))
            return bytes.fault(fileName, "a corner of the coast lies beyond the earth");
        m_corners.push_back({static_cast<std::int32_t>(x), static_cast<std::int32_t>(y)});
        ring.extent.add(m_corners.back());
    }
    // round the pole the first corner comes again a turn further on
    const Corner first = m_corners[ring.first];
    const auto turns = static_cast<std::int32_t>(std::lround(static_cast<double>(x - first.x) / m_turn));
    m_corners.push_back({first.x + turns * m_turn, first.y});
    ring.extent.add(m_corners.back());
    m_rings.push_back(ring);
    return done();
}

void CoastLevel::cutIntoPieces()
{
    m_pieces.reserve(m_corners.size() / pieceCorners + m_rings.size());
    for (const Ring &ring : m_rings) {
        for (std::size_t from = 0; from + 1 < ring.count; from += pieceCorners) {
            Piece piece{ring.first + from, std::min(pieceCorners + 1, ring.count - from), {}, {}, 0.0};
            const Corner first = m_corners[piece.first];
            for (std::size_t i = 0; i < piece.count; ++i) {
                const Corner &corner = m_corners[piece.first + i];
                piece.extent.add(corner);
                // along a parallel and then a meridian is never shorter than straight through
                const double degreesAway =
                    std::abs(corner.x - first.x) * m_scaleX + std::abs(corner.y - first.y) * m_scaleY;
                piece.reach = std::max(piece.reach, degreesAway * metresOfDegree);
            }
            piece.middle = solid(degrees(first));
            m_pieces.push_back(piece);
        }
    }
}

bool CoastLevel::isCut(const Corner &a, const Corner &b) const { return a.x == b.x && a.x % m_turn == 0; }

MapPoint CoastLevel::degrees(const Corner &corner) const
{
    return {corner.y * m_scaleY + m_south, corner.x * m_scaleX + m_west};
}

CoastLevel::Solid CoastLevel::solid(const MapPoint &point)
{
    const double phi = point.latitude * std::numbers::pi / 180.0;
    const double lambda = point.longitude * std::numbers::pi / 180.0;
    const double s = std::sin(phi);
    const double n = equatorRadius / std::sqrt(1.0 - eccentricity2 * s * s);
    return {n * std::cos(phi) * std::cos(lambda), n * std::cos(phi) * std::sin(lambda),
            n * (1.0 - eccentricity2) * s};
}

} // namespace snugwalk
