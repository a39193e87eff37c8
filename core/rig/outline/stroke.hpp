// SPDX-License-Identifier: Apache-2.0
// Lines on paper as plain values: who draws them knows pens and colours, these know shapes.
#pragma once

#include <string>
#include <vector>

#include "rig/outline/face_sheet.hpp"

namespace snugwalk::outline {

/// Widths as technical drawings have them: wide lines for what is seen, narrow ones for the rest, wide to
/// narrow 2 to 1 (ISO 128, from memory). Bold is where feet stand.
enum class Pen { Bold, Heavy, Thin, Quiet };
/// Dashed is what lies hidden or is only usual, chain a centre line (ISO 128, from memory).
enum class Dash { None, Dashed, Chain };

struct Step {
    enum class Kind { Move, Line, Cubic, Close };
    Kind kind = Kind::Move;
    PaperSpot first = {}; ///< control spots, of a cubic only
    PaperSpot second = {};
    PaperSpot to = {}; ///< where it ends; nothing with close
    friend bool operator==(const Step &, const Step &) = default;
};

/// One path with its pen. `filled` with paper, so that what lies behind is covered.
struct Stroke {
    Pen pen = Pen::Heavy;
    Dash dash = Dash::None;
    bool filled = false;
    std::vector<Step> steps;
    friend bool operator==(const Stroke &, const Stroke &) = default;
};

/// A corner of a body, rounded by a radius in metres.
struct Corner {
    PaperSpot at;
    double radius = 0.0;
};

[[nodiscard]] Stroke polyline(Pen pen, const std::vector<PaperSpot> &spots, bool closed = false);
/// Four cubics; off a circle by 0.03 % of its radius at most (the usual 4/3 tan(angle/4) handles).
[[nodiscard]] Stroke ring(Pen pen, PaperSpot centre, double radius, bool filled = false);
/// A closed shape whose corners are arcs, each at most up to the middles of the lines beside it.
[[nodiscard]] Stroke rounded(Pen pen, const std::vector<Corner> &corners, bool filled = false);
[[nodiscard]] Stroke box(Pen pen, PaperSpot centre, double width, double height, bool filled = false);

/// The path as short straight lines, `perCubic` to each cubic.
[[nodiscard]] std::vector<PaperSpot> flattened(const Stroke &stroke, int perCubic = 8);

/// As in an SVG `d`: spots times `scale`, then moved by `offset`, with one decimal.
[[nodiscard]] std::string pathData(const Stroke &stroke, double scale, PaperSpot offset);

} // namespace snugwalk::outline
