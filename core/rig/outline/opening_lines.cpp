// SPDX-License-Identifier: Apache-2.0
// Openings where the owner placed them, and the line where one stands.
#include <algorithm>

#include "rig/outline/face_lines.hpp"
#include "rig/outline/profile.hpp"

namespace snugwalk::outline {
namespace {

// Whatever was typed, nothing is drawn off the paper.
Stroke within(const FaceSheet &sheet, Stroke stroke)
{
    for (Step &step : stroke.steps) {
        for (PaperSpot *spot : {&step.first, &step.second, &step.to}) {
            spot->x = std::clamp(spot->x, 0.0, sheet.across());
            spot->y = std::clamp(spot->y, 0.0, sheet.up());
        }
    }
    return stroke;
}

void addOpening(const Opening &opening, const FaceSheet &sheet, Strokes &to)
{
    const PaperSpot at = sheet.at(opening.at);
    const double width = opening.width.si();
    const double height = opening.height.si();
    to.push_back(within(sheet, box(Pen::Thin, at, width, height, true)));
    switch (opening.kind) {
    case OpeningKind::Window:
    case OpeningKind::Rooflight:
        if (width > 0.2 && height > 0.2) {
            Stroke pane = box(Pen::Quiet, at, width - 0.12, height - 0.12);
            to.push_back(within(sheet, std::move(pane)));
        }
        break;
    case OpeningKind::Door: {
        // the latch is ahead of the middle on doors hung at their front, which nobody types: drawn once
        const double ahead = sheet.isNoseLeft() ? -1.0 : 1.0;
        to.push_back(
            within(sheet, ring(Pen::Thin, {at.x + ahead * width * 0.36, at.y + height * 0.06}, 0.04)));
        break;
    }
    case OpeningKind::Vent:
        to.push_back(within(sheet, polyline(Pen::Thin, {{at.x - width / 2, at.y + height / 2},
                                                        {at.x + width / 2, at.y - height / 2}})));
        break;
    case OpeningKind::Hatch:
        break;
    }
}

// What stands out of the roof, seen from the side.
void addRoofline(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    for (const Opening &opening : rig.openings) {
        if (opening.face != Face::Top)
            continue;
        const double roof = bodySpan(rig, opening.at.aft.si()).high;
        to.push_back(within(sheet, box(Pen::Thin, sheet.at(opening.at.aft.si(), 0, roof + 0.05),
                                       opening.width.si(), 0.1, true)));
    }
}

// The room inside along the stretch: under the roof's own curve, on its own floor.
Stroke room(const Rig &rig, const FaceSheet &sheet, double from, double to)
{
    constexpr int parts = 24;
    std::vector<PaperSpot> spots;
    std::vector<PaperSpot> back;
    for (int i = 0; i <= parts; ++i) {
        const double aft = from + (to - from) * i / parts;
        const BodySpan span = bodySpan(rig, aft);
        if (span.high - span.low < 0.3)
            continue;
        spots.push_back(sheet.at(aft, 0, span.low + 0.12));
        back.push_back(sheet.at(aft, 0, span.high - 0.15));
    }
    spots.insert(spots.end(), back.rbegin(), back.rend());
    Stroke stroke = polyline(Pen::Heavy, spots, true);
    stroke.dash = Dash::Dashed;
    return stroke;
}

} // namespace

void addOpenings(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    for (const Opening &opening : rig.openings) {
        if (opening.face == sheet.view().face)
            addOpening(opening, sheet, to);
    }
    if (sheet.isSide())
        addRoofline(rig, sheet, to);
}

void addStand(const Rig &rig, const FaceSheet &sheet, const StandPlace &stand, Strokes &to)
{
    const double from = stand.from.si();
    const double until = stand.to.si();
    const double beside = rig.measures.width.si() / 2 + 0.14;
    switch (stand.level) {
    case StandLevel::Inside:
        to.push_back(room(rig, sheet, from, until));
        break;
    case StandLevel::Ground:
        to.push_back(sheet.isEnd()
                         ? polyline(Pen::Bold, {sheet.at(0, from, -0.12), sheet.at(0, until, -0.12)})
                         : polyline(Pen::Bold, {sheet.at(from, 0, -0.12), sheet.at(until, 0, -0.12)}));
        break;
    case StandLevel::Roof:
    case StandLevel::Under:
        for (const double side : {-beside, beside})
            to.push_back(polyline(Pen::Bold, {sheet.at(from, side, 0), sheet.at(until, side, 0)}));
        break;
    case StandLevel::None:
        break;
    }
}

} // namespace snugwalk::outline
