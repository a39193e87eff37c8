// SPDX-License-Identifier: Apache-2.0
// How tight a wood screw is turned, what it holds, and what follows a stripped one.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Shank of a numbered screw: 0.060 in + 0.013 in a number. Numbers 0 to 24.
/// Source: [ASME-B18.6.1], from memory
[[nodiscard]] Result<Length> screwDiameter(int number);

/// The next number up that shops keep: 4, 6, 8, 10, 12, 14.
/// \returns `NotFound` above 12.
[[nodiscard]] Result<int> nextScrew(int number);

struct Screw {
    int number = 8;
    Length thread;                     ///< in the wood
    double gravity = 0.42;             ///< of the wood, oven dry: 0.3 to 0.7
    double moisture = 0.12;            ///< of the wood, 0 to 1
    std::optional<Torque> makerTorque; ///< goes before ours
};

struct ScrewHold {
    Estimate snug;     ///< N·m
    Estimate pull;     ///< N, at which it comes out
    Estimate design;   ///< N, what to count on: a fifth to a quarter of the pull
    Length nextThread; ///< 1/2 in longer
};

/// Snug 17.5 lb·in (15 to 20) for a number 8 in soft framing or 1 mm aluminum, by the cube of the shank
/// for others; pull out of side grain 15,700 G² D L (lb, in), a quarter less in wood above 20 % damp.
///
/// \returns `OutOfRange` naming screw (4 to 14), thread (1 to 150 mm), wood, moisture or torque.
/// Warns:    `wet_wood` above 20 %.
/// Source:   pull [WOOD-HANDBOOK] as a page restates it; snug and the share to count on are common practice
/// Accuracy: 25 %
/// Tests:    tests/published/bench/joints/tst_screw.cpp
[[nodiscard]] Result<ScrewHold> screwHold(const Screw &screw);

} // namespace snugwalk
