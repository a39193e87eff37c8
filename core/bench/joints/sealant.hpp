// SPDX-License-Identifier: Apache-2.0
// How much sealant a joint takes, and how many cartridges that is.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// The cross-section of a bead: a flat lap or filled joint, a round rod, half of one lying on a face, a
/// triangle in a corner, half an ellipse over a joint.
enum class BeadShape { Rectangle, Round, HalfRound, Fillet, HalfEllipse };
[[nodiscard]] std::string_view slug(BeadShape shape);
[[nodiscard]] std::optional<BeadShape> parseBeadShape(std::string_view slug);

struct Bead {
    BeadShape shape = BeadShape::Fillet;
    Length width;        ///< of a round or half-round bead its diameter; of a fillet one leg
    Length height;       ///< not read for round and half-round; of a fillet the other leg
    Length length;       ///< of the joint
    double waste = 0.10; ///< share left in the nozzle and wiped off
};

/// Cross-section of a bead: w·h, π d²/4, π d²/8, w·h/2, π w·h/4 in the order of the shapes.
///
/// \returns the area; `OutOfRange` for a width or height outside 0.5 mm to 100 mm, naming it.
/// Source:  plane geometry
/// Tests:   tests/published/bench/joints/tst_sealant.cpp
[[nodiscard]] Result<Area> beadArea(BeadShape shape, Length width, Length height);

/// What a joint takes: V = A·L·(1 + waste).
///
/// \returns value in m³, with the range of 5 to 15 % waste around it, widened to the waste given;
///          `OutOfRange` for a length outside 0 to 1,000 m, a waste outside 0 to 1, or as `beadArea`.
/// Basis:   computed; the waste is common practice: two public estimators use 5 and 10 %, the trade 10 to 15
/// % Tests:   tests/published/bench/joints/tst_sealant.cpp
[[nodiscard]] Result<Estimate> beadVolume(const Bead &bead);

/// Whole cartridges for a volume: ⌈V / (cartridge · fill)⌉.
///
/// \param fill the share of a cartridge that comes out, above 0 and at most 1: 0.97, common practice
/// \returns 0 for no volume; `OutOfRange` for a negative volume, a cartridge of nothing or above 100 L, such
/// a fill, or
///          more than 100,000 cartridges.
[[nodiscard]] Result<int> cartridgesFor(Volume volume, Volume cartridge, double fill = 0.97);

} // namespace snugwalk
