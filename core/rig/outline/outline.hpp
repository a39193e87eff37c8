// SPDX-License-Identifier: Apache-2.0
// The drawing of one face of the rig from its own measures: the one that screen and paper both draw.
#pragma once

#include <optional>
#include <vector>

#include "rig/outline/face_sheet.hpp"
#include "rig/outline/stand_place.hpp"
#include "rig/outline/stroke.hpp"
#include "rig/outline/usual_tanks.hpp"

namespace snugwalk::outline {

/// A letter in the middle of a tank, told in words under the drawing.
struct TankLetter {
    TankKind kind = TankKind::FreshWater;
    char letter = 'A';
    PaperSpot at;
    friend bool operator==(const TankLetter &, const TankLetter &) = default;
};

/// `strokes` in the order in which they are drawn. Metres of paper, see `FaceSheet`.
struct Outline {
    double across = 0.0;
    double up = 0.0;
    std::vector<Stroke> strokes;
    std::vector<TankLetter> tanks; ///< on the underside only, at their usual places
};

/// Body, axles and wheels, hitch, openings where the owner placed them, ground; tanks on the underside. No
/// picture of a make or model. Empty for a rig without length.
/// \param stand drawn where it is on this face: a heavy line for feet, dashed for inside
[[nodiscard]] Outline outlineOf(const Rig &rig, FaceView view,
                                const std::optional<StandPlace> &stand = std::nullopt);

} // namespace snugwalk::outline
