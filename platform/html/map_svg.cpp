// SPDX-License-Identifier: Apache-2.0
// A flat map: longitudes stretched by the cosine of the middle latitude.
#include "html/map_svg.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/text.hpp"
#include "html/drawing_svg.hpp"
#include "html/html_text.hpp"

namespace snugwalk::html {
namespace {

constexpr double kmPerDegree = 111.195; // of a sphere of 6371 km: a sketch needs no more
constexpr double leastKm = 60.0;        ///< so that there is something around
constexpr double roomAround = 0.12;
constexpr double wide = 800.0; ///< user units
constexpr double high = wide / mapAspect;
constexpr double widestFineKm = 1200.0;
constexpr int mostLines = 4;

std::string n(double v) { return fixed(v, 1); }

class Map {
public:
    explicit Map(const MapBlock &block);
    [[nodiscard]] bool isEmpty() const { return m_empty; }
    [[nodiscard]] std::string land(const Coast *coast) const;
    [[nodiscard]] std::string grid() const;
    [[nodiscard]] std::string path(const std::vector<GeoPoint> &line) const;
    [[nodiscard]] std::pair<double, double> at(double latitude, double longitude) const
    {
        return {(longitude - m_west) * m_perLon, (m_north - latitude) * m_perLat};
    }
    [[nodiscard]] std::pair<double, double> at(const GeoPoint &p) const
    {
        return at(p.latitude, unrolled(p.longitude));
    }

private:
    template <typename Each>
    static void eachPlace(const MapBlock &block, Each each)
    {
        for (const auto &line : block.lines)
            std::for_each(line.begin(), line.end(), each);
        for (const MapSpot &spot : block.spots)
            each(spot.place);
    }
    // What crosses 180 degrees goes on counting.
    [[nodiscard]] double unrolled(double longitude) const
    {
        return longitude < m_reference - 180.0   ? longitude + 360.0
               : longitude > m_reference + 180.0 ? longitude - 360.0
                                                 : longitude;
    }

    bool m_empty = true;
    double m_reference = 0.0;
    double m_west = 0.0;
    double m_north = 0.0;
    double m_spanLon = 1.0; ///< degrees across
    double m_spanLat = 1.0;
    double m_perLon = 1.0; ///< user units a degree
    double m_perLat = 1.0;
    double m_km = leastKm; ///< across
};

Map::Map(const MapBlock &block)
{
    double west = 1e9;
    double east = -1e9;
    double south = 90.0;
    double north = -90.0;
    eachPlace(block, [&](const GeoPoint &p) {
        if (m_empty)
            m_reference = p.longitude;
        m_empty = false;
        west = std::min(west, unrolled(p.longitude));
        east = std::max(east, unrolled(p.longitude));
        south = std::min(south, p.latitude);
        north = std::max(north, p.latitude);
    });
    if (m_empty)
        return;
    const double middle = (south + north) / 2.0;
    const double kmPerLon = kmPerDegree * std::max(0.05, std::cos(middle * std::numbers::pi / 180.0));
    const double across = (east - west) * kmPerLon;
    const double up = (north - south) * kmPerDegree;
    const double room = 2.0 * roomAround * std::max(across, up);
    m_km = std::max({across + room, (up + room) * mapAspect, leastKm});
    m_spanLon = m_km / kmPerLon;
    m_spanLat = m_km / mapAspect / kmPerDegree;
    m_perLon = wide / m_spanLon;
    m_perLat = high / m_spanLat;
    m_west = (west + east) / 2.0 - m_spanLon / 2.0;
    m_north = middle + m_spanLat / 2.0;
}

std::string Map::land(const Coast *coast) const
{
    const GeoBox box{std::max(-90.0, m_north - m_spanLat), m_west, std::min(90.0, m_north),
                     m_west + m_spanLon};
    if (coast == nullptr || m_spanLon > 360.0)
        return {};
    std::string corners;
    for (const MapRing &ring :
         coast->landWithin(box, m_km > widestFineKm ? CoastDetail::Coarse : CoastDetail::Fine)) {
        std::pair<double, double> before{-1e9, -1e9};
        std::string outline;
        for (const MapPoint &point : ring) {
            const auto here = at(point.latitude, point.longitude);
            if (std::hypot(here.first - before.first, here.second - before.second) < 0.7)
                continue; // the same dot
            outline += (outline.empty() ? "M" : "L") + n(here.first) + " " + n(here.second);
            before = here;
        }
        corners += outline + "Z";
    }
    return "<rect width='" + n(wide) + "' height='" + n(high) +
           "' fill='#DDE3E8'/><path fill='#fff' stroke='#565B60' stroke-width='1.2' fill-rule='evenodd' d='" +
           corners + "'/>";
}

std::string Map::grid() const
{
    constexpr std::array steps = {0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 45.0};
    std::string lines;
    std::string labels;
    const auto add = [&](double from, double span, bool meridian) {
        const auto found =
            std::find_if(steps.begin(), steps.end(), [&](double s) { return span / s <= mostLines; });
        const double by = found == steps.end() ? steps.back() : *found;
        for (double k = std::ceil(from / by); k * by < from + span; k += 1.0) {
            const double degrees = k * by;
            const double lon = degrees > 180.0    ? degrees - 360.0
                               : degrees < -180.0 ? degrees + 360.0
                                                  : degrees;
            const std::string text = fixed(meridian ? lon : degrees, by < 0.1 ? 2 : by < 1.0 ? 1 : 0) + "°";
            constexpr double whole = 34.0; // a label nearer to the edge would be cut
            if (meridian) {
                const double x = at(0.0, degrees).first;
                lines += "M" + n(x) + " 0V" + n(high);
                if (x > whole && x < wide - whole)
                    labels += "<text x='" + n(x) + "' y='" + n(high - 8) + "' text-anchor='middle'>" + text +
                              "</text>";
            } else {
                const double y = at(degrees, 0.0).second;
                lines += "M0 " + n(y) + "H" + n(wide);
                if (y > whole)
                    labels += "<text x='6' y='" + n(y - 5) + "'>" + text + "</text>";
            }
        }
    };
    add(m_west, m_spanLon, true);
    add(m_north - m_spanLat, m_spanLat, false);
    return "<path stroke='#AEB5BB' stroke-width='0.8' d='" + lines + "'/><g fill='#3B4046'>" + labels +
           "</g>";
}

std::string Map::path(const std::vector<GeoPoint> &line) const
{
    std::string out;
    for (const GeoPoint &p : line) {
        const auto [x, y] = at(p);
        out += (out.empty() ? "M" : "L") + n(x) + " " + n(y);
    }
    return out;
}

// Spots that would lie over each other: one shape, the worst, and all their numbers.
struct Cluster {
    double x = 0.0;
    double y = 0.0;
    Call call = Call::None;
    std::string numbers;
};

std::vector<Cluster> clustersOf(const MapBlock &block, const Map &map)
{
    constexpr double near = 30.0;
    std::vector<Cluster> out;
    for (const MapSpot &spot : block.spots) {
        const auto [x, y] = map.at(spot.place);
        const double spotX = x;
        const double spotY = y;
        const auto found = std::find_if(out.begin(), out.end(), [&](const Cluster &c) {
            return std::hypot(c.x - spotX, c.y - spotY) < near;
        });
        const Call call = spot.call.value_or(Call::None);
        if (found == out.end()) {
            out.push_back({x, y, call, std::to_string(spot.number)});
        } else {
            found->call = std::max(found->call, call);
            found->numbers += ", " + std::to_string(spot.number);
        }
    }
    return out;
}

std::string spotSvg(const Cluster &one)
{
    const bool atEdge = one.x > wide * 0.7; // numbers stay within the frame
    const std::string number =
        " font-weight='bold' font-size='20' text-anchor='" + std::string(atEdge ? "end" : "start") + "' x='" +
        n(one.x + (atEdge ? -18 : 18)) + "' y='" + n(one.y + 7) + "'>" + one.numbers + "</text>";
    return "<g transform='translate(" + n(one.x) + " " + n(one.y) + ")'>" + callShape(one.call) +
           "</g><text stroke='#fff' stroke-width='5'" + number + "<text stroke='none'" + number;
}

} // namespace

std::string mapSvg(const MapBlock &block, const Coast *coast, const std::string &spoken)
{
    const Map map(block);
    if (map.isEmpty())
        return {};
    std::string lines;
    for (const auto &line : block.lines)
        lines += map.path(line);
    std::string spots;
    for (const Cluster &one : clustersOf(block, map))
        spots += spotSvg(one);
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + n(wide) + " " + n(high) +
           "' role='img' aria-label='" + escape(spoken) + "' fill='none' font-size='16' font-family='" +
           svgFonts + "'>" + map.land(coast) + map.grid() +
           "<path stroke='#1B1F23' stroke-width='3' stroke-linejoin='round' d='" + lines +
           "'/><g stroke='#1B1F23' stroke-width='1.4' fill='#1B1F23'>" + spots + "</g><rect width='" +
           n(wide) + "' height='" + n(high) + "' stroke='#1B1F23' stroke-width='2'/></svg>\n";
}

} // namespace snugwalk::html
