// SPDX-License-Identifier: Apache-2.0
// A plot as SVG: what pages and paper show, and a file of its own.
#pragma once

#include <string>

#include "report/plot/plot_sheet.hpp"

namespace snugwalk::html {

inline constexpr double plotWide = 640.0; ///< user units, as documents have it
inline constexpr double plotAspect = 640.0 / 330.0;

/// What it is drawn for.
struct PlotLook {
    SheetSize size{plotWide, plotWide / plotAspect, 15.0, 1.8};
    bool titled = false;   ///< title, sentence and notes around it, for a file that stands alone
    WordWidth wordWidth{}; ///< of the font it will be drawn in; none: rough ones of many fonts
};

/// SVG Tiny 1.2: lines, areas and words alone, so that every reader draws them. Words lie on white.
/// \returns "" for a plot without data, unless it is titled: then what brings data.
/// Tests: tests/unit/html/tst_plot_svg.cpp, tests/journey/plots.py (read by Python's XML, drawn by Chromium)
[[nodiscard]] std::string plotSvg(const Plot &plot, const PlotLook &look = {});

} // namespace snugwalk::html
