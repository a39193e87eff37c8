// SPDX-License-Identifier: Apache-2.0
// From above and from below: drawbar, body, centre line; under it frame, axles, wheels and tanks.
#include "rig/outline/face_lines.hpp"

namespace snugwalk::outline {
namespace {

void addDrawbar(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const double wide = rig.measures.width.si() / 2;
    const PaperSpot eye = sheet.at(-rig.measures.hitchLength.si(), 0, 0);
    to.push_back(polyline(Pen::Heavy, {sheet.at(0.1, -wide * 0.66, 0), eye, sheet.at(0.1, wide * 0.66, 0)}));
    to.push_back(ring(Pen::Heavy, eye, 0.07, true));
}

void addBody(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const double wide = rig.measures.width.si() / 2;
    const double length = rig.measures.length.si();
    const bool isRound = rig.kind == RigKind::TravelTrailer || rig.kind == RigKind::Teardrop;
    const double nose = isRound ? 0.22 : 0.06;
    to.push_back(rounded(Pen::Heavy,
                         {{sheet.at(nose, -wide, 0), 0.5},
                          {sheet.at(-0.02, -wide * 0.4, 0), 0.6},
                          {sheet.at(-0.02, wide * 0.4, 0), 0.6},
                          {sheet.at(nose, wide, 0), 0.5},
                          {sheet.at(length, wide, 0), 0.14},
                          {sheet.at(length, -wide, 0), 0.14}},
                         true));
}

void addFrame(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const double wide = rig.measures.width.si() / 2;
    const double length = rig.measures.length.si();
    for (const double side : {-0.62, 0.62})
        to.push_back(
            polyline(Pen::Quiet, {sheet.at(0.15, wide * side, 0), sheet.at(length - 0.1, wide * side, 0)}));
    if (rig.hitch == HitchType::FifthWheel)
        to.push_back(ring(Pen::Thin, sheet.at(length * 0.125, 0, 0), 0.08));
    for (const Length axle : rig.measures.axles) {
        to.push_back(
            polyline(Pen::Thin, {sheet.at(axle.si(), -wide * 0.9, 0), sheet.at(axle.si(), wide * 0.9, 0)}));
        for (const double side : {-0.88, 0.88})
            to.push_back(box(Pen::Thin, sheet.at(axle.si(), wide * side, 0), 0.62, 0.2, true));
    }
}

void addTanks(const Rig &rig, const FaceSheet &sheet, Outline &to)
{
    for (const UsualTank &tank : usualTanks(rig)) {
        const PaperSpot at = sheet.at(tank.at);
        const double along = tank.along.si();
        const double across = tank.across.si();
        Stroke stroke = tank.round ? ring(Pen::Thin, at, along / 2) : box(Pen::Thin, at, along, across);
        stroke.dash = Dash::Dashed;
        to.strokes.push_back(std::move(stroke));
        to.tanks.push_back({tank.kind, tank.letter, at});
    }
}

} // namespace

void addFlatLines(const Rig &rig, const FaceSheet &sheet, Outline &to)
{
    if (rig.measures.hitchLength.si() > 0)
        addDrawbar(rig, sheet, to.strokes);
    addBody(rig, sheet, to.strokes);
    Stroke centre =
        polyline(Pen::Quiet, {sheet.at(-0.1, 0, 0), sheet.at(rig.measures.length.si() + 0.1, 0, 0)});
    centre.dash = Dash::Chain;
    to.strokes.push_back(std::move(centre));
    if (sheet.view().face != Face::Underside)
        return;
    addFrame(rig, sheet, to.strokes);
    addTanks(rig, sheet, to);
}

} // namespace snugwalk::outline
