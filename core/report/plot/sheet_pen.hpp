// SPDX-License-Identifier: Apache-2.0
// Drawing a plot's bands, bars, lines and limits on its sheet.
#pragma once

#include <cmath>

#include "report/plot/plot_sheet.hpp"

namespace snugwalk {

/// The middle of a pixel, so that a thin upright or level line is one pixel wide and not two grey ones.
[[nodiscard]] inline double crisp(double v) { return std::floor(v) + 0.5; }

[[nodiscard]] SheetLine limitLine(double fromX, double toX, double y, const SheetSize &size);
[[nodiscard]] SheetLine pathLine(std::vector<SheetSpot> spots, PlotStroke stroke, const SheetSize &size);
/// Between two corners; hatching is drawn as lines, since not every reader of SVG knows patterns.
void drawBar(PlotSheet &sheet, SheetSpot topLeft, SheetSpot bottomRight, PlotFill fill,
             const SheetSize &size);

/// Needs the sheet's field.
class Pen {
public:
    Pen(PlotSheet &sheet, const SheetSize &size, const Plot &plot)
        : m_sheet(sheet), m_size(size), m_plot(plot)
    {}
    void draw();

private:
    [[nodiscard]] double x(double v) const { return m_sheet.xOf(v); }
    [[nodiscard]] double y(double v) const
    {
        return m_sheet.top + (1.0 - shareOf(m_plot.up, v)) * m_sheet.up;
    }
    void band(const PlotBand &band);
    void bars(const PlotBars &bars, std::size_t which);
    void line(const PlotLine &line);
    void meeting(const PlotMeeting &meeting);
    void whisker(double atX, double low, double high);

    PlotSheet &m_sheet;
    const SheetSize &m_size;
    const Plot &m_plot;
};

} // namespace snugwalk
