// SPDX-License-Identifier: Apache-2.0
// The lines of each kind of face, and what all of them share.
#pragma once

#include "rig/outline/outline.hpp"

namespace snugwalk::outline {

using Strokes = std::vector<Stroke>;

void addSideLines(const Rig &rig, const FaceSheet &sheet, Strokes &to);
void addFlatLines(const Rig &rig, const FaceSheet &sheet, Outline &to);
void addEndLines(const Rig &rig, const FaceSheet &sheet, Strokes &to);
void addOpenings(const Rig &rig, const FaceSheet &sheet, Strokes &to);
void addStand(const Rig &rig, const FaceSheet &sheet, const StandPlace &stand, Strokes &to);

/// Metres above the ground of the coupling on the drawbar. Common practice, no source.
[[nodiscard]] double couplingHeight(const Rig &rig);
/// Metres. Common practice, no source.
[[nodiscard]] double wheelRadius(const Rig &rig);

} // namespace snugwalk::outline
