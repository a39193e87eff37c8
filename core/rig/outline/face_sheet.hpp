// SPDX-License-Identifier: Apache-2.0
// Where a spot of the rig lies on the drawing of one face, and back.
#pragma once

#include "rig/rig.hpp"

namespace snugwalk::outline {

/// A spot on paper: metres of the rig, to the right and down from the upper left corner of a face's sheet.
struct PaperSpot {
    double x = 0.0;
    double y = 0.0;
    friend bool operator==(const PaperSpot &, const PaperSpot &) = default;
};

/// A face as it is looked at. Left, right, front and rear are seen from outside, whatever `noseLeft` says;
/// from above and from below the front may be at either end of the paper.
struct FaceView {
    Face face = Face::Left;
    bool noseLeft = true;
    friend bool operator==(const FaceView &, const FaceView &) = default;
};

/// The sheet of one face: the rig, its drawbar, and the edge that roof vents, ground and feet need.
class FaceSheet {
public:
    FaceSheet(const Measures &measures, FaceView view);

    [[nodiscard]] const FaceView &view() const { return m_view; }
    /// Width and height in metres; everything that `outlineOf` draws lies within.
    [[nodiscard]] double across() const { return m_across; }
    [[nodiscard]] double up() const { return m_up; }
    [[nodiscard]] bool isSide() const { return m_view.face == Face::Left || m_view.face == Face::Right; }
    [[nodiscard]] bool isEnd() const { return m_view.face == Face::Front || m_view.face == Face::Rear; }
    /// Whether the front is at the left of the paper.
    [[nodiscard]] bool isNoseLeft() const;

    [[nodiscard]] PaperSpot at(const RigPosition &position) const;
    /// The same in metres aft of the front, right of the centre line, above the ground.
    [[nodiscard]] PaperSpot at(double aft, double right, double up) const;
    /// The spot touched on paper: the two metres the face can tell, and the third from the face itself.
    [[nodiscard]] RigPosition position(PaperSpot spot) const;

private:
    Measures m_measures;
    FaceView m_view;
    double m_across = 0.0;
    double m_up = 0.0;
    double m_ahead = 0.0; ///< from the edge of the paper to the front face
};

} // namespace snugwalk::outline
