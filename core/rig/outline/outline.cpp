// SPDX-License-Identifier: Apache-2.0
// What a face has, in the order in which one thing covers another.
#include "rig/outline/outline.hpp"

#include <algorithm>

#include "rig/outline/face_lines.hpp"

namespace snugwalk::outline {
namespace {

// A line where the rig stands, hatched as ground is.
void addGround(const FaceSheet &sheet, Strokes &to)
{
    const double low = sheet.at(0, 0, 0).y;
    Stroke stroke = polyline(Pen::Quiet, {{0.02, low}, {sheet.across() - 0.02, low}});
    for (double x = 0.16; x < sheet.across() - 0.04; x += 0.3) {
        stroke.steps.push_back({Step::Kind::Move, {}, {}, {x, low}});
        stroke.steps.push_back({Step::Kind::Line, {}, {}, {x - 0.08, low + 0.08}});
    }
    to.push_back(std::move(stroke));
}

} // namespace

double couplingHeight(const Rig &rig) { return std::max(0.42, rig.measures.floorHeight.si() * 0.8); }

double wheelRadius(const Rig &rig) { return std::clamp(rig.measures.floorHeight.si() * 0.62, 0.26, 0.36); }

Outline outlineOf(const Rig &rig, FaceView view, const std::optional<StandPlace> &stand)
{
    const FaceSheet sheet(rig.measures, view);
    Outline outline{sheet.across(), sheet.up(), {}, {}};
    if (!(rig.measures.length.si() > 0.0))
        return outline;
    if (sheet.isSide() || sheet.isEnd())
        addGround(sheet, outline.strokes);
    if (sheet.isSide())
        addSideLines(rig, sheet, outline.strokes);
    else if (sheet.isEnd())
        addEndLines(rig, sheet, outline.strokes);
    else
        addFlatLines(rig, sheet, outline);
    addOpenings(rig, sheet, outline.strokes);
    if (stand && stand->face == view.face)
        addStand(rig, sheet, *stand, outline.strokes);
    return outline;
}

} // namespace snugwalk::outline
