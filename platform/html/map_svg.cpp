// SPDX-License-Identifier: Apache-2.0
// A map on paper: what lies on it, in the order in which it is drawn.
#include "html/map_svg.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "html/drawing_svg.hpp"
#include "html/html_text.hpp"
#include "map/clusters.hpp"
#include "map/grid.hpp"
#include "map/labels.hpp"
#include "map/land.hpp"

namespace snugwalk::html {
namespace {

constexpr double leastKm = 60.0; ///< so that there is something around
constexpr double roomAround = 0.12;
constexpr double wide = 800.0; ///< user units
constexpr double high = wide / mapAspect;
constexpr double sameDot = 0.7 / wide;
constexpr double spotSize = 30.0;
constexpr double numberWidth = 12.0; ///< of a digit of a spot's number, generous
constexpr double scaleShare = 0.25;
constexpr LabelStyle nameStyle{20.0, 9.5, 5.0, 16};

std::string n(double v) { return fixed(v, 1); }

struct Paper {
    MapFrame frame;
    [[nodiscard]] double scale() const { return wide / frame.width(); }
    [[nodiscard]] FlatPoint on(const FlatPoint &flat) const { return {flat.x * scale(), flat.y * scale()}; }
    [[nodiscard]] FlatPoint at(const GeoPoint &place) const { return on(frame.at(place)); }
};

std::optional<Paper> paperOf(const MapBlock &block)
{
    std::vector<GeoPoint> places;
    for (const auto &line : block.lines)
        places.insert(places.end(), line.begin(), line.end());
    for (const MapSpot &spot : block.spots)
        places.push_back(spot.place);
    const auto frame = MapFrame::around(places, {mapAspect, leastKm, roomAround});
    if (!frame)
        return std::nullopt;
    return Paper{*frame};
}

std::string pathOf(const std::vector<FlatPoint> &line)
{
    std::string out;
    for (const FlatPoint &p : line)
        out += (out.empty() ? "M" : "L") + n(p.x) + " " + n(p.y);
    return out;
}

std::string landSvg(const Paper &paper, const Coast *coast)
{
    if (coast == nullptr)
        return {};
    std::string corners;
    for (FlatRing ring : landOf(*coast, paper.frame, 0.0, sameDot).rings) {
        std::transform(ring.begin(), ring.end(), ring.begin(),
                       [&](const FlatPoint &p) { return paper.on(p); });
        corners += pathOf(ring) + "Z";
    }
    return "<rect width='" + n(wide) + "' height='" + n(high) +
           "' fill='#DDE3E8'/><path fill='#fff' stroke='#565B60' stroke-width='1.2' fill-rule='evenodd' d='" +
           corners + "'/>";
}

std::string gridSvg(const Paper &paper)
{
    std::string lines;
    std::string labels;
    constexpr double whole = 34.0; // a label nearer to the edge would be cut
    for (const GridLine &line : gridOf(paper.frame)) {
        const double at = line.at * paper.scale();
        const std::string text = fixed(line.degrees, line.decimals) + "°";
        if (line.meridian) {
            lines += "M" + n(at) + " 0V" + n(high);
            if (at > whole && at < wide - whole)
                labels += "<text x='" + n(at) + "' y='" + n(high - 8) + "' text-anchor='middle'>" + text +
                          "</text>";
        } else {
            lines += "M0 " + n(at) + "H" + n(wide);
            if (at > whole)
                labels += "<text x='6' y='" + n(at - 5) + "'>" + text + "</text>";
        }
    }
    return "<path stroke='#AEB5BB' stroke-width='0.8' d='" + lines + "'/><g fill='#3B4046'>" + labels +
           "</g>";
}

// Spots that would lie over each other: one shape, the worst, and all their numbers.
struct Gathered {
    FlatPoint at;
    Call call = Call::None;
    std::string numbers;
};

std::vector<Gathered> gather(const MapBlock &block, const Paper &paper)
{
    std::vector<PaperSpot> spots;
    for (const MapSpot &spot : block.spots) {
        const FlatPoint at = paper.at(spot.place);
        spots.push_back({at.x, at.y, static_cast<int>(spot.call.value_or(Call::None))});
    }
    std::vector<SpotCluster> clusters = clustersOf(spots, spotSize);
    std::sort(clusters.begin(), clusters.end(), [](const SpotCluster &a, const SpotCluster &b) {
        return a.members.front() < b.members.front(); // in the order of their numbers
    });
    std::vector<Gathered> out;
    for (const SpotCluster &cluster : clusters) {
        std::vector<std::string> numbers;
        for (const std::size_t member : cluster.members)
            numbers.push_back(std::to_string(block.spots[member].number));
        const PaperSpot &head = spots[cluster.head];
        out.push_back(
            {{head.x, head.y}, block.spots[cluster.head].call.value_or(Call::None), join(numbers, ", ")});
    }
    return out;
}

bool isAtEdge(const Gathered &one) { return one.at.x > wide * 0.7; } // numbers stay within the frame

PaperBox boxOf(const Gathered &one)
{
    const double width = spotSize + numberWidth * static_cast<double>(one.numbers.size());
    return {isAtEdge(one) ? one.at.x + spotSize / 2.0 - width : one.at.x - spotSize / 2.0,
            one.at.y - spotSize / 2.0, width, spotSize};
}

std::string namesSvg(const Paper &paper, const Gazetteer *places, const std::vector<Gathered> &spots,
                     const PaperBox &bar)
{
    if (places == nullptr)
        return {};
    // degrees stand along the left and the lower edge
    std::vector<PaperBox> taken = {bar, {0.0, 0.0, 70.0, high}, {0.0, high - 28.0, wide, 28.0}};
    for (const Gathered &one : spots)
        taken.push_back(boxOf(one));
    std::string dots;
    std::string under;
    std::string names;
    for (const PlaceLabel &label : placeLabels(*places, paper.frame, wide, nameStyle, std::move(taken))) {
        dots += "<circle cx='" + n(label.x) + "' cy='" + n(label.y) + "' r='2.5'/>";
        const bool isLeft = label.box.left + label.box.width < label.x;
        const bool isRight = label.box.left > label.x;
        const double x = isLeft ? label.x - nameStyle.gap : isRight ? label.box.left : label.x;
        const std::string text = "x='" + n(x) + "' y='" + n(label.box.top + 15.0) + "' text-anchor='" +
                                 (isLeft    ? "end"
                                  : isRight ? "start"
                                            : "middle") +
                                 "'>" + escape(label.name) + "</text>";
        under += "<text " + text;
        names += "<text " + text;
    }
    return "<g fill='#3B4046'>" + dots + "</g><g stroke='#fff' stroke-width='4' stroke-linejoin='round'>" +
           under + "</g><g fill='#3B4046'>" + names + "</g>";
}

struct ScaleBar {
    std::string svg;
    PaperBox box;
};

ScaleBar scaleBar(const Paper &paper, UnitSystem units)
{
    const double unitKm = units == UnitSystem::Us ? miles(1.0).si() / kilometres(1.0).si() : 1.0;
    const double length = scaleLength(paper.frame.width() * scaleShare, unitKm);
    const double reach = length * unitKm * paper.scale();
    const std::string text =
        fixed(length, length < 1.0 ? 1 : 0) + "\u00a0" +
        std::string(findUnit(Dimension::Distance, units == UnitSystem::Us ? "mi" : "km")->symbol);
    const double right = wide - 16.0;
    const PaperBox box{right - reach - 8.0, 8.0, reach + 16.0, 36.0};
    return {"<rect x='" + n(box.left) + "' y='" + n(box.top) + "' width='" + n(box.width) + "' height='" +
                n(box.height) + "' fill='#fff' fill-opacity='0.9'/><text x='" + n(right) +
                "' y='24' text-anchor='end' fill='#1B1F23'>" + text +
                "</text><path stroke='#1B1F23' stroke-width='2' d='M" + n(right - reach) + " 30V36H" +
                n(right) + "V30'/>",
            box};
}

std::string spotSvg(const Gathered &one)
{
    const bool atEdge = isAtEdge(one);
    const std::string number =
        " font-weight='bold' font-size='20' text-anchor='" + std::string(atEdge ? "end" : "start") + "' x='" +
        n(one.at.x + (atEdge ? -18 : 18)) + "' y='" + n(one.at.y + 7) + "'>" + one.numbers + "</text>";
    return "<g transform='translate(" + n(one.at.x) + " " + n(one.at.y) + ")'>" + callShape(one.call) +
           "</g><text stroke='#fff' stroke-width='5'" + number + "<text stroke='none'" + number;
}

} // namespace

std::string mapSvg(const MapBlock &block, const MapData &data, const std::string &spoken)
{
    const auto paper = paperOf(block);
    if (!paper)
        return {};
    std::string lines;
    for (const auto &line : block.lines) {
        std::vector<FlatPoint> flat;
        for (const GeoPoint &p : line)
            flat.push_back(paper->at(p));
        lines += pathOf(flat);
    }
    const std::vector<Gathered> gathered = gather(block, *paper);
    std::string spots;
    for (const Gathered &one : gathered)
        spots += spotSvg(one);
    const ScaleBar bar = scaleBar(*paper, data.units);
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + n(wide) + " " + n(high) +
           "' role='img' aria-label='" + escape(spoken) + "' fill='none' font-size='16' font-family='" +
           svgFonts + "'>" + landSvg(*paper, data.coast) + gridSvg(*paper) +
           "<path stroke='#1B1F23' stroke-width='3' stroke-linejoin='round' d='" + lines + "'/>" +
           namesSvg(*paper, data.places, gathered, bar.box) +
           "<g stroke='#1B1F23' stroke-width='1.4' fill='#1B1F23'>" + spots + "</g>" + bar.svg +
           "<rect width='" + n(wide) + "' height='" + n(high) +
           "' stroke='#1B1F23' stroke-width='2'/></svg>\n";
}

} // namespace snugwalk::html
