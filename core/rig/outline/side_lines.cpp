// SPDX-License-Identifier: Apache-2.0
// Left and right: drawbar or pin, body, axles; front and rear: body, wheels, lamps.
#include <algorithm>

#include "rig/outline/face_lines.hpp"
#include "rig/outline/profile.hpp"

namespace snugwalk::outline {
namespace {

void addDrawbar(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const double floor = rig.measures.floorHeight.si();
    const double level = couplingHeight(rig);
    const double hitch = rig.measures.hitchLength.si();
    const double jockey = -hitch * 0.72;
    const PaperSpot eye = sheet.at(-hitch, 0, level);
    to.push_back(polyline(Pen::Heavy, {sheet.at(0.15, 0, floor - 0.02), sheet.at(-0.1, 0, level), eye}));
    to.push_back(ring(Pen::Heavy, eye, 0.07, true));
    to.push_back(polyline(Pen::Heavy, {sheet.at(jockey, 0, level + 0.3), sheet.at(jockey, 0, 0.22)}));
    to.push_back(ring(Pen::Heavy, sheet.at(jockey, 0, 0.11), 0.11, true));
}

// The pin under the front of what is coupled over the axle that tows it.
void addPin(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const double middle = rig.measures.length.si() * 0.125;
    const double top = bodySpan(rig, middle).low + 0.05;
    const double low = std::max(0.5, top - 0.4);
    to.push_back(polyline(Pen::Heavy, {sheet.at(middle - 0.5, 0, top), sheet.at(middle - 0.22, 0, low),
                                       sheet.at(middle + 0.22, 0, low), sheet.at(middle + 0.5, 0, top)}));
    to.push_back(box(Pen::Heavy, sheet.at(middle, 0, low - 0.05), 0.1, 0.1, true));
}

} // namespace

void addSideLines(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const Measures &m = rig.measures;
    const double rail = m.floorHeight.si() - 0.07;
    const double begin = rig.kind == RigKind::FifthWheel || rig.kind == RigKind::TruckCamper
                             ? m.length.si() * 0.3
                             : 0.1; // the frame ends where the body steps up
    to.push_back(polyline(Pen::Quiet, {sheet.at(begin, 0, rail), sheet.at(m.length.si() - 0.1, 0, rail)}));
    if (m.hitchLength.si() > 0)
        addDrawbar(rig, sheet, to);
    if (rig.hitch == HitchType::FifthWheel)
        addPin(rig, sheet, to);
    to.push_back(bodySide(rig, sheet));
    const double wheel = wheelRadius(rig);
    for (const Length axle : m.axles) {
        const PaperSpot hub = sheet.at(axle.si(), 0, wheel);
        to.push_back(ring(Pen::Heavy, hub, wheel, true));
        to.push_back(ring(Pen::Thin, hub, wheel * 0.58));
        to.push_back(ring(Pen::Thin, hub, wheel * 0.14));
    }
}

void addEndLines(const Rig &rig, const FaceSheet &sheet, Strokes &to)
{
    const Measures &m = rig.measures;
    const double wide = m.width.si() / 2;
    const double floor = m.floorHeight.si();
    const double top = floor + m.height.si();
    const double wheel = wheelRadius(rig);
    if (!m.axles.empty()) {
        for (const double side : {-0.84, 0.84})
            to.push_back(box(Pen::Heavy, sheet.at(0, wide * side, wheel), 0.2, 2 * wheel));
    }
    to.push_back(rounded(Pen::Heavy,
                         {{sheet.at(0, -wide, floor), 0.1},
                          {sheet.at(0, -wide, top), 0.24},
                          {sheet.at(0, wide, top), 0.24},
                          {sheet.at(0, wide, floor), 0.1}},
                         true));
    if (sheet.view().face == Face::Front && m.hitchLength.si() > 0)
        to.push_back(ring(Pen::Thin, sheet.at(0, 0, couplingHeight(rig)), 0.08));
    if (sheet.view().face == Face::Rear) {
        for (const double side : {-0.84, 0.84})
            to.push_back(box(Pen::Thin, sheet.at(0, wide * side, floor + 0.3), 0.14, 0.24));
    }
}

} // namespace snugwalk::outline
