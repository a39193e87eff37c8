// SPDX-License-Identifier: Apache-2.0
// One line of arithmetic a face, each with its inverse beside it.
#include "rig/outline/face_sheet.hpp"

namespace snugwalk::outline {
namespace {

constexpr double edge = 0.14; ///< round the rig: a coupling's ring, a vent on the roof
constexpr double foot = 0.2;  ///< under the ground: hatching, and the line where the feet are
constexpr double walk = 0.22; ///< beside the body from above: where the edges are walked along

} // namespace

FaceSheet::FaceSheet(const Measures &measures, FaceView view) : m_measures(measures), m_view(view)
{
    const double high = measures.floorHeight.si() + measures.height.si();
    const double width = measures.width.si();
    m_ahead = measures.hitchLength.si() + edge;
    m_across = isEnd() ? width + 2 * edge : m_ahead + measures.length.si() + edge;
    m_up = isSide() || isEnd() ? edge + high + foot : width + 2 * walk;
}

bool FaceSheet::isNoseLeft() const
{
    return m_view.face == Face::Left || (m_view.face != Face::Right && m_view.noseLeft);
}

PaperSpot FaceSheet::at(const RigPosition &position) const
{
    return at(position.aft.si(), position.right.si(), position.up.si());
}

PaperSpot FaceSheet::at(double aft, double right, double up) const
{
    const double along = isNoseLeft() ? m_ahead + aft : m_across - m_ahead - aft;
    const double sideways = m_view.noseLeft ? right : -right;
    const double low = m_up - foot;
    switch (m_view.face) {
    case Face::Left:
    case Face::Right:
        return {along, low - up};
    case Face::Front:
        return {m_across / 2 - right, low - up};
    case Face::Rear:
        return {m_across / 2 + right, low - up};
    case Face::Underside:
        return {along, m_up / 2 + sideways};
    case Face::Top:
        break;
    }
    return {along, m_up / 2 - sideways};
}

RigPosition FaceSheet::position(PaperSpot spot) const
{
    const double aft = (isNoseLeft() ? spot.x : m_across - spot.x) - m_ahead;
    const double sideways = (spot.y - m_up / 2) * (m_view.noseLeft ? 1.0 : -1.0);
    const Length up = Length::fromSi(m_up - foot - spot.y);
    const Length half = m_measures.width / 2.0;
    const auto metre = [](double v) { return Length::fromSi(v); };
    switch (m_view.face) {
    case Face::Left:
        return {metre(aft), half * -1.0, up};
    case Face::Right:
        return {metre(aft), half, up};
    case Face::Front:
        return {{}, metre(m_across / 2 - spot.x), up};
    case Face::Rear:
        return {m_measures.length, metre(spot.x - m_across / 2), up};
    case Face::Underside:
        return {metre(aft), metre(sideways), m_measures.floorHeight};
    case Face::Top:
        break;
    }
    return {metre(aft), metre(-sideways), m_measures.floorHeight + m_measures.height};
}

} // namespace snugwalk::outline
