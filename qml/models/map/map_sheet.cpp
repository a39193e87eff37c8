// SPDX-License-Identifier: Apache-2.0
// Laying history, land and names on one sheet; the worker's work.
#include "map_sheet.hpp"

#include <algorithm>
#include <cmath>

#include "map/land.hpp"

namespace snugwalk {
namespace {

constexpr double closestDegrees = 0.01; ///< some 1 km: the coast knows nothing finer
constexpr double furthestLatitude = 84.0;
constexpr double leastKm = 20.0; ///< across, of what is shown when opened
constexpr double roomAround = 0.15;
constexpr double cornersApart = 1.2; ///< pixels
constexpr std::size_t fewestNames = 4;
constexpr double paperForName = 12'000.0; ///< pixels² for each name

class Sheet {
public:
    Sheet(const MapItems &items, const MapView &view) : m_items(items), m_frame(view.frame())
    {
        m_sheet.view = view;
        m_scale = view.width / m_frame.width();
    }
    void addLand(const Coast *coast);
    void addLines();
    void addGroups();
    void addNames(const Gazetteer *places);
    void addGrid();
    MapSheet take() { return std::move(m_sheet); }

private:
    [[nodiscard]] FlatPoint at(const GeoPoint &place) const
    {
        const FlatPoint flat = m_frame.at(place);
        return {flat.x * m_scale, flat.y * m_scale};
    }
    // Whether a stretch may be seen: its box meets that of the sheet.
    [[nodiscard]] bool isCrossed(const FlatPoint &a, const FlatPoint &b) const
    {
        const MapView &v = m_sheet.view;
        return std::max(a.x, b.x) > -mapOver * v.width && std::min(a.x, b.x) < (1.0 + mapOver) * v.width &&
               std::max(a.y, b.y) > -mapOver * v.height && std::min(a.y, b.y) < (1.0 + mapOver) * v.height;
    }
    [[nodiscard]] bool isNear(double x, double y) const
    {
        const MapView &v = m_sheet.view;
        return x > -mapOver * v.width && x < (1.0 + mapOver) * v.width && y > -mapOver * v.height &&
               y < (1.0 + mapOver) * v.height;
    }

    const MapItems &m_items;
    MapFrame m_frame;
    double m_scale = 1.0;
    MapSheet m_sheet;
};

void Sheet::addLand(const Coast *coast)
{
    if (coast == nullptr)
        return;
    m_sheet.coastKnown = true;
    const MapLand land = landOf(*coast, m_frame, mapOver + 0.02, cornersApart / m_sheet.view.width);
    m_sheet.sea = land.seaInView;
    for (const FlatRing &ring : land.rings) {
        QVariantList flat;
        flat.reserve(static_cast<qsizetype>(2 * ring.size()));
        for (const FlatPoint &p : ring)
            flat << p.x * m_scale << p.y * m_scale;
        m_sheet.land << QVariant(flat);
    }
}

// Only stretches that may be seen, so that a long way is not drawn far outside of a small view; points closer
// than a pixel fall on one dot. Each point lies on the turn that is nearest to the one before, so that no
// line runs across the whole map.
void Sheet::addLines()
{
    const double turn = (m_frame.at(0.0, 360.0).x - m_frame.at(0.0, 0.0).x) * m_scale;
    for (const MapLine &line : m_items.lines) {
        FlatPoint last = at(line.points.front());
        MapSheet::Line stretch{line.trip, line.road, {last}};
        const auto end = [&](const FlatPoint &from) {
            if (stretch.points.size() > 1)
                m_sheet.lines.push_back(stretch);
            stretch.points = {from};
        };
        for (const GeoPoint &place : line.points) {
            FlatPoint p = at(place);
            p.x += std::round((last.x - p.x) / turn) * turn;
            if (std::hypot(p.x - last.x, p.y - last.y) < 1.0)
                continue;
            if (isCrossed(last, p))
                stretch.points.push_back(p);
            else
                end(p);
            last = p;
        }
        end(last);
    }
}

// Gathered over all spots, not those in view, so that moving the map parts no group.
void Sheet::addGroups()
{
    std::vector<PaperSpot> spots;
    spots.reserve(m_items.spots.size());
    for (const MapItem &item : m_items.spots) {
        const FlatPoint p = at(item.place);
        spots.push_back({p.x, p.y, static_cast<int>(item.kind)});
    }
    for (const SpotCluster &cluster : clustersOf(spots, m_sheet.view.target)) {
        const PaperSpot &head = spots[cluster.head];
        if (!isNear(head.x, head.y))
            continue;
        MapGroup group{head.x, head.y, m_items.spots[cluster.head].kind, {}};
        for (const std::size_t member : cluster.members)
            group.members.push_back(m_items.spots[member]);
        std::stable_sort(group.members.begin(), group.members.end(),
                         [](const MapItem &a, const MapItem &b) { return a.kind > b.kind; });
        m_sheet.groups.push_back(std::move(group));
    }
}

void Sheet::addNames(const Gazetteer *places)
{
    if (places == nullptr)
        return;
    m_sheet.namesKnown = true;
    const MapView &v = m_sheet.view;
    std::vector<PaperBox> taken;
    for (const MapGroup &group : m_sheet.groups) {
        const double side = v.target * 0.75;
        const double count = group.members.size() > 1 ? 3.0 * v.letter : 0.0;
        // the number stands as high as a target, beside the shape
        taken.push_back({group.x - side / 2.0, group.y - v.target / 2.0 - 4.0, side + count, v.target + 4.0});
    }
    // degrees stand along the upper and the left edge, the scale and the buttons below
    taken.push_back({0.0, 0.0, v.width, v.lineHeight});
    taken.push_back({0.0, 0.0, 8.0 * v.letter, v.height});
    taken.push_back({0.0, v.height - v.target, v.width, v.target});
    taken.push_back({v.width - v.target - 16.0, v.height - 4.0 * v.target, v.target + 16.0, 4.0 * v.target});
    LabelStyle style{v.lineHeight, v.letter, 5.0, fewestNames};
    style.atMost = std::max(fewestNames, static_cast<std::size_t>(v.width * v.height / paperForName));
    m_sheet.labels = placeLabels(*places, m_frame, v.width, style, std::move(taken));
}

void Sheet::addGrid()
{
    m_sheet.grid = gridOf(m_frame);
    for (GridLine &line : m_sheet.grid)
        line.at *= m_scale;
}

// Square of the distance from a point to a stretch between two.
double squaredTo(const FlatPoint &a, const FlatPoint &b, double x, double y)
{
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double whole = dx * dx + dy * dy;
    const double share = whole > 0.0 ? std::clamp(((x - a.x) * dx + (y - a.y) * dy) / whole, 0.0, 1.0) : 0.0;
    const double ex = a.x + share * dx - x;
    const double ey = a.y + share * dy - y;
    return ex * ex + ey * ey;
}

} // namespace

MapSheet mapSheet(const MapItems &items, const MapView &view, const Coast *coast, const Gazetteer *places)
{
    Sheet sheet(items, view);
    sheet.addLand(coast);
    sheet.addLines();
    sheet.addGroups();
    sheet.addNames(places);
    sheet.addGrid();
    return sheet.take();
}

MapView withinLimits(MapView view)
{
    view.degrees = std::clamp(view.degrees, closestDegrees, 360.0);
    view.middle.latitude = std::clamp(view.middle.latitude, -furthestLatitude, furthestLatitude);
    view.middle.longitude -= 360.0 * std::round(view.middle.longitude / 360.0);
    return view;
}

MapView viewOf(const std::vector<GeoPoint> &places, MapView view)
{
    if (places.empty() || view.width <= 0.0 || view.height <= 0.0)
        return view;
    const auto frame = MapFrame::around(places, {view.width / view.height, leastKm, roomAround});
    view.middle = frame->middle();
    view.degrees = frame->degreesAcross();
    return withinLimits(view);
}

MapView wholeView(const MapItems &items, MapView view)
{
    std::vector<GeoPoint> places;
    for (const MapItem &item : items.spots)
        places.push_back(item.place);
    for (const MapLine &line : items.lines)
        places.insert(places.end(), line.points.begin(), line.points.end());
    return viewOf(places, view);
}

const Id *tripAt(const MapSheet &sheet, double x, double y, double reach)
{
    const Id *found = nullptr;
    double nearest = reach * reach;
    for (const MapSheet::Line &line : sheet.lines) {
        for (std::size_t i = 1; i < line.points.size(); ++i) {
            const double squared = squaredTo(line.points[i - 1], line.points[i], x, y);
            if (squared < nearest) {
                nearest = squared;
                found = &line.trip;
            }
        }
    }
    return found;
}

} // namespace snugwalk
