// SPDX-License-Identifier: Apache-2.0
// Areas under bars under lines under shapes.
#include "report/plot/sheet_pen.hpp"

#include <algorithm>
#include <utility>

namespace snugwalk {
namespace {

constexpr double widestBar = 6.0; ///< letters: few bars would look like walls
constexpr double barShare = 0.78; ///< of its span; the rest parts it from the next

} // namespace

SheetLine limitLine(double fromX, double toX, double y, const SheetSize &size)
{
    const double dash = size.letter * 0.6;
    return {{{fromX, y}, {toX, y}}, size.stroke * 1.25, SheetTone::Ink, {dash, dash * 0.5}};
}

SheetLine pathLine(std::vector<SheetSpot> spots, PlotStroke stroke, const SheetSize &size)
{
    const double thin = std::max(1.0, size.stroke * 0.6);
    SheetLine line{std::move(spots), stroke == PlotStroke::Solid ? size.stroke : thin, SheetTone::Ink, {}};
    if (stroke == PlotStroke::Thin)
        line.tone = SheetTone::Quiet;
    if (stroke == PlotStroke::Dashes)
        line.dash = {size.letter * 0.25, size.letter * 0.3};
    return line;
}

void drawBar(PlotSheet &sheet, SheetSpot topLeft, SheetSpot bottomRight, PlotFill fill, const SheetSize &size)
{
    const double left = topLeft.x;
    const double right = bottomRight.x;
    const double top = topLeft.y;
    const double foot = bottomRight.y;
    const std::vector<SheetSpot> corners = {{left, top}, {right, top}, {right, foot}, {left, foot}};
    sheet.inks.emplace_back(SheetArea{corners, fill == PlotFill::Solid ? SheetTone::Ink : SheetTone::Paper});
    const double thin = std::max(1.0, size.stroke * 0.6);
    if (fill == PlotFill::Hatch) {
        const double step = std::max(3.0, size.letter * 0.42);
        // lines x + y = s, cut off at the four sides
        for (double s = left + top + step / 2.0; s < right + foot; s += step) {
            const double x1 = std::max(left, s - foot);
            const double x2 = std::min(right, s - top);
            if (x2 > x1)
                sheet.inks.emplace_back(SheetLine{{{x1, s - x1}, {x2, s - x2}}, thin, SheetTone::Ink, {}});
        }
    }
    std::vector<SheetSpot> outline = corners;
    outline.push_back(corners.front());
    sheet.inks.emplace_back(SheetLine{std::move(outline), thin, SheetTone::Ink, {}});
}

void Pen::whisker(double atX, double low, double high)
{
    const double thin = std::max(1.0, m_size.stroke * 0.6);
    const double cap = m_size.letter * 0.2;
    const double at = crisp(atX);
    for (const auto &[from, to] : {std::pair(SheetSpot{at, y(low)}, SheetSpot{at, y(high)}),
                                   std::pair(SheetSpot{at - cap, y(low)}, SheetSpot{at + cap, y(low)}),
                                   std::pair(SheetSpot{at - cap, y(high)}, SheetSpot{at + cap, y(high)})})
        m_sheet.inks.emplace_back(SheetLine{{from, to}, thin, SheetTone::Ink, {}});
}

void Pen::band(const PlotBand &band)
{
    SheetArea area;
    for (const PlotBand::Edge &edge : band.edges)
        area.spots.push_back({x(edge.x), y(edge.high)});
    for (auto edge = band.edges.rbegin(); edge != band.edges.rend(); ++edge)
        area.spots.push_back({x(edge->x), y(edge->low)});
    if (!area.spots.empty())
        m_sheet.inks.emplace_back(std::move(area));
}

void Pen::bars(const PlotBars &bars, std::size_t which)
{
    const double foot = y(std::max(0.0, m_plot.up.from));
    const auto count = static_cast<double>(m_plot.bars.size());
    for (const PlotBar &bar : bars.bars) {
        const double span = x(bar.to) - x(bar.from);
        const double width = std::clamp(span * barShare / count, 1.0, m_size.letter * widestBar);
        const double left = x(bar.from) + (span - width * count) / 2.0 + width * static_cast<double>(which);
        if (bar.y > 0.0)
            drawBar(m_sheet, {left, y(bar.y)}, {left + width, foot}, bars.fill, m_size);
        if (bar.low && bar.high && *bar.high > *bar.low)
            whisker(left + width / 2.0, *bar.low, *bar.high);
    }
}

void Pen::line(const PlotLine &line)
{
    std::vector<SheetSpot> path;
    for (const PlotSpot &spot : line.spots) {
        if (spot.shape != PlotShape::Square) // left out of the line as it was left out of its making
            path.push_back({x(spot.x), y(spot.y)});
    }
    if (line.joined && path.size() > 1)
        m_sheet.inks.emplace_back(pathLine(std::move(path), line.stroke, m_size));
    for (const PlotSpot &spot : line.spots) {
        if (spot.low && spot.high)
            whisker(x(spot.x), *spot.low, *spot.high);
    }
    if (!line.marked)
        return;
    for (const PlotSpot &spot : line.spots) {
        const bool isCall =
            spot.shape == PlotShape::Half || spot.shape == PlotShape::Wedge || spot.shape == PlotShape::Block;
        m_sheet.inks.emplace_back(
            SheetShape{{x(spot.x), y(spot.y)}, m_size.letter * (isCall ? 0.95 : 0.62), spot.shape});
    }
}

void Pen::meeting(const PlotMeeting &m)
{
    m_sheet.inks.emplace_back(
        pathLine({{x(m.fromX), y(m.fromY)}, {x(m.likely), y(m.y)}}, PlotStroke::Dashes, m_size));
    const double half = m_size.letter * 0.55;
    const double at = y(m.y);
    for (const double day : {m.early, m.late})
        m_sheet.inks.emplace_back(SheetLine{
            {{crisp(x(day)), at - half}, {crisp(x(day)), at + half}}, m_size.stroke, SheetTone::Ink, {}});
    m_sheet.inks.emplace_back(SheetShape{{x(m.likely), at}, m_size.letter * 0.85, PlotShape::Ring});
}

void Pen::draw()
{
    for (const PlotBand &one : m_plot.bands)
        band(one);
    for (std::size_t i = 0; i < m_plot.bars.size(); ++i)
        bars(m_plot.bars[i], i);
    const double right = m_sheet.left + m_sheet.across;
    if (m_plot.upright) {
        const double at = crisp(x(m_plot.upright->at));
        m_sheet.inks.emplace_back(SheetLine{{{at, m_sheet.top}, {at, m_sheet.top + m_sheet.up}},
                                            std::max(1.0, m_size.stroke * 0.6),
                                            SheetTone::Quiet,
                                            {}});
    }
    for (const PlotLimit &limit : m_plot.limits)
        m_sheet.inks.emplace_back(limitLine(m_sheet.left, right, y(limit.y), m_size));
    for (const PlotLine &one : m_plot.lines)
        line(one);
    if (m_plot.meeting)
        meeting(*m_plot.meeting);
}

} // namespace snugwalk
