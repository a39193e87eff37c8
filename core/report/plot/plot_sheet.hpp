// SPDX-License-Identifier: Apache-2.0
// A plot laid out: lines, areas, shapes and words at their spots, for whoever has a pen. Page, paper and
// screen draw the same.
#pragma once

#include <functional>
#include <string>
#include <variant>
#include <vector>

#include "report/plot/plot.hpp"

namespace snugwalk {

struct SheetSpot {
    double x = 0.0, y = 0.0; ///< right and down, in the unit of `SheetSize`
};
/// What a pen is dipped in; each medium and theme has its own colours.
enum class SheetTone { Ink, Quiet, Faint, Shade, Paper, Watch, Mend, Hold };

struct SheetLine {
    std::vector<SheetSpot> spots;
    double width = 1.0;
    SheetTone tone = SheetTone::Ink;
    std::vector<double> dash = {}; ///< drawn and left out in turns; empty: solid
};
struct SheetArea {
    std::vector<SheetSpot> spots;
    SheetTone tone = SheetTone::Shade;
};
struct SheetShape {
    SheetSpot at; ///< its middle
    double size = 0.0;
    PlotShape shape = PlotShape::Dot;
};
enum class SheetSide { Start, Middle, End };
struct SheetWords {
    SheetSpot at; ///< top of the line; left, middle or right end by `side`
    std::string text;
    double width = 0.0; ///< as measured
    SheetSide side = SheetSide::Start;
    SheetTone tone = SheetTone::Ink;
    bool bold = false;
};
using SheetInk = std::variant<SheetArea, SheetLine, SheetShape>;

struct PlotSheet {
    double width = 0.0, height = 0.0;
    double letter = 0.0, lineHeight = 0.0;
    double left = 0.0, top = 0.0, across = 0.0, up = 0.0; ///< the field within the axes
    double fromX = 0.0, toX = 1.0;                        ///< what `left` and its far side stand for
    std::vector<SheetInk> inks;                           ///< in the order they are drawn
    std::vector<SheetWords> words;                        ///< over them, each on paper

    [[nodiscard]] double xOf(double value) const { return left + (value - fromX) / (toX - fromX) * across; }
};

/// Where a value lies on an axis, 0 at its beginning and 1 at its end. What a log axis cannot show lies at 0.
[[nodiscard]] double shareOf(const PlotAxis &axis, double value);

struct SheetSize {
    double width = 640.0;
    double height = 400.0; ///< wanted; the sheet is higher where its key leaves too little of it
    double letter = 14.0;  ///< size of all words
    double stroke = 2.0;   ///< of what matters; the rest is thinner
};
/// Width of words at the size of `SheetSize::letter`.
using WordWidth = std::function<double(const std::string &text, bool bold)>;

/// Labels stand at their lines where there is room, else in the key above; none lies over another.
/// Of tick labels the finest level is taken that leaves each some room. Tests: tests/property/report
[[nodiscard]] PlotSheet layPlot(const Plot &plot, const SheetSize &size, const WordWidth &wordWidth);

/// Where no font is at hand: advance widths of Helvetica by kind of letter, a little too wide rather than too
/// narrow. Source: [AFM-HELVETICA], from memory
[[nodiscard]] WordWidth roughWordWidth(double letter);

} // namespace snugwalk
