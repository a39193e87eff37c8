// SPDX-License-Identifier: Apache-2.0
// Views put on sheets, each with its balloons; the lines themselves come from the core.
#include "html/drawing_svg.hpp"

#include <algorithm>
#include <numeric>

#include "base/text.hpp"
#include "html/html_text.hpp"
#include "html/outline_svg.hpp"
#include "rig/outline/balloons.hpp"
#include "rig/outline/outline.hpp"

namespace snugwalk::html {
namespace {

using outline::FaceSheet;
using outline::FaceView;
using outline::PaperSpot;

constexpr double sheetWidth = 850.0;
constexpr double margin = 30.0;
constexpr double mostScale = 140.0; ///< user units a metre: a small rig does not fill the sheet
constexpr double balloon = 23.0;    ///< its radius
constexpr double side = 54.0;       ///< of the square that a balloon has to itself
constexpr double captionRoom = 42.0;
constexpr double gap = 40.0;

std::string n(double v) { return fixed(v, 1); }

struct Spot {
    RigSpot of;
    Face face;
    RigPosition at;
};

// Spots with a face and a place, named places where they are on this rig.
std::vector<Spot> placed(const RigDrawingBlock &block)
{
    std::vector<Spot> spots;
    for (const RigSpot &one : block.spots) {
        RigPlace place = one.place;
        if (!place.at && !place.named.empty())
            place = findNamedPlace(block.rig, place.named).value_or(one.place);
        if (place.face && place.at)
            spots.push_back({one, *place.face, *place.at});
    }
    return spots;
}

// One face on a sheet: where its paper begins, at what scale, and its findings.
class View {
public:
    View(const Rig &rig, FaceView view, double scale, const std::vector<Spot> &spots)
        : m_rig(rig), m_sheet(rig.measures, view), m_scale(scale)
    {
        for (const Spot &spot : spots) {
            if (spot.face == view.face)
                m_spots.push_back(spot);
        }
    }

    [[nodiscard]] double width() const { return m_sheet.across() * m_scale; }
    [[nodiscard]] double band(double room) const
    {
        return outline::balloonRows(m_spots.size(), room, side) * side;
    }
    [[nodiscard]] double height(double room) const
    {
        return band(room) + m_sheet.up() * m_scale + captionRoom;
    }

    /// The view with its upper left corner at (x, y), its balloons in the `room` from `from` on.
    [[nodiscard]] std::string draw(double x, double y, double from, double room, bool below,
                                   const std::string &caption) const
    {
        const double top = y + (below ? 0.0 : band(room));
        const double low = top + m_sheet.up() * m_scale;
        const double words = low + (below ? band(room) : 0.0) + 26;
        const PaperSpot offset{x, top};
        return outlineSvg(outline::outlineOf(m_rig, m_sheet.view()), m_scale, offset) + "<g fill='#555' " +
               "stroke='none'><text x='" + n(x + 4) + "' y='" + n(words) + "'>" + escape(caption) +
               "</text></g>" + findings(offset, {room, side, below ? low : top, below}, from);
    }

private:
    [[nodiscard]] std::string findings(PaperSpot offset, const outline::BalloonBand &band, double from) const
    {
        std::vector<PaperSpot> spots;
        for (const Spot &spot : m_spots) {
            const PaperSpot p = m_sheet.at(spot.at);
            spots.push_back({p.x * m_scale + offset.x - from, p.y * m_scale + offset.y});
        }
        std::vector<PaperSpot> centres = outline::balloonSpots(spots, band);
        std::vector<std::size_t> order(spots.size()); // in reading order, as a voice goes through them
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return centres[a].x < centres[b].x; });
        std::string leaders;
        std::string marks;
        for (const std::size_t i : order) {
            const PaperSpot spot{spots[i].x + from, spots[i].y};
            const PaperSpot centre{centres[i].x + from, centres[i].y};
            leaders += "<line x1='" + n(spot.x) + "' y1='" + n(spot.y) + "' x2='" + n(centre.x) + "' y2='" +
                       n(centre.y) + "'/>";
            marks += spotSvg(m_spots[i].of, spot, m_scale) + "<g fill='#fff'><circle cx='" + n(centre.x) +
                     "' cy='" + n(centre.y) + "' r='" + n(balloon) + "'/></g><text x='" + n(centre.x) +
                     "' y='" + n(centre.y + 9) + "' text-anchor='middle' stroke='none'>" +
                     std::to_string(m_spots[i].of.number) + "</text>";
        }
        return "<g stroke-width='1.4' fill='#1B1F23'>" + leaders + marks + "</g>";
    }

    const Rig &m_rig;
    FaceSheet m_sheet;
    double m_scale;
    std::vector<Spot> m_spots;
};

DrawingSheet sheetOf(const std::string &body, double height, const std::string &spoken)
{
    return {"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + n(sheetWidth) + " " + n(height) +
                "' role='img' aria-label='" + escape(spoken) +
                "' fill='none' stroke='#1B1F23' stroke-width='2.5' font-size='26' font-family='" + svgFonts +
                "'>" + body + "</svg>\n",
            sheetWidth / height};
}

Face kerbOf(const Rig &rig) { return kerbIsLeft(rig) ? Face::Left : Face::Right; }

double scaleOf(const Rig &rig)
{
    const FaceSheet sheet(rig.measures, {Face::Left, true});
    return std::min(mostScale, (sheetWidth - 2 * margin) / sheet.across());
}

DrawingSheet mainSheet(const RigDrawingBlock &block, const std::vector<Spot> &spots,
                       const DrawingWords &words)
{
    const Rig &rig = block.rig;
    const double room = sheetWidth - 2 * margin;
    const View kerb(rig, {kerbOf(rig), true}, scaleOf(rig), spots);
    // kerb side towards the reader, as one stands when looking at the side above
    const View plan(rig, {Face::Top, kerbIsLeft(rig)}, scaleOf(rig), spots);
    const double x = (sheetWidth - kerb.width()) / 2;
    const double second = 6 + kerb.height(room);
    return sheetOf(kerb.draw(x, 6, margin, room, false, words.face(kerbOf(rig))) +
                       plan.draw(x, second, margin, room, true, words.face(Face::Top)),
                   second + plan.height(room), words.whole);
}

// Small views beside each other, in as many rows as they need.
DrawingSheet smallSheet(const RigDrawingBlock &block, const std::vector<Spot> &spots,
                        const DrawingWords &words)
{
    std::string body;
    std::vector<std::string> names;
    double x = margin;
    double y = 6;
    double tallest = 0;
    for (const Face face : otherFaces(block)) {
        const View view(block.rig, {face, kerbIsLeft(block.rig)}, scaleOf(block.rig) / 2, spots);
        if (x > margin && x + view.width() > sheetWidth - margin) {
            x = margin;
            y += tallest;
            tallest = 0;
        }
        names.push_back(words.face(face));
        body += view.draw(x, y, x, view.width(), false, names.back());
        tallest = std::max(tallest, view.height(view.width()));
        x += view.width() + gap;
    }
    return sheetOf(body, y + tallest, join(names, ", "));
}

} // namespace

std::vector<Face> otherFaces(const RigDrawingBlock &block)
{
    const std::vector<Spot> spots = placed(block);
    const Face road = kerbOf(block.rig) == Face::Left ? Face::Right : Face::Left;
    std::vector<Face> faces;
    for (const Face face : {road, Face::Front, Face::Rear, Face::Underside}) {
        if (std::any_of(spots.begin(), spots.end(), [&](const Spot &spot) { return spot.face == face; }))
            faces.push_back(face);
    }
    return faces;
}

std::vector<DrawingSheet> drawingSheets(const RigDrawingBlock &block, const DrawingWords &words)
{
    const std::vector<Spot> spots = placed(block);
    std::vector<DrawingSheet> sheets{mainSheet(block, spots, words)};
    if (!otherFaces(block).empty())
        sheets.push_back(smallSheet(block, spots, words));
    return sheets;
}

} // namespace snugwalk::html
