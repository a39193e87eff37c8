// SPDX-License-Identifier: Apache-2.0
// The body seen from the side, by kind of rig.
#pragma once

#include <vector>

#include "rig/outline/stroke.hpp"

namespace snugwalk::outline {

/// The body's outline on the sheet of its left or right side. Shapes are of kinds, never of a make or model.
[[nodiscard]] Stroke bodySide(const Rig &rig, const FaceSheet &sheet);

/// Metres above the ground where the body begins and ends, at a place along it; both on the floor's height
/// where there is no body.
struct BodySpan {
    double low = 0.0;
    double high = 0.0;
};
[[nodiscard]] BodySpan bodySpan(const Rig &rig, double aft);

} // namespace snugwalk::outline
