// SPDX-License-Identifier: Apache-2.0
// Which findings a new attention on a point may be: the person picks, nothing is merged by itself.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "rig/rig.hpp"
#include "walk/finding_state.hpp"

namespace snugwalk {

struct OfferedFinding {
    Id finding;
    FindingStatus status = FindingStatus::Open;
    std::optional<Length> away; ///< from the place given; nothing when either has no coordinate
    bool near = false;          ///< within a hand's breadth or two: 0.3 m, common practice
};

/// Findings of a point that a later attention could be: open, or mended and waiting for a pass. Those
/// within 0.3 m of `place` come first, nearest first; then the others, nearest first; then those without
/// a coordinate; among equals the one looked at last. The order of `histories` never matters.
/// Distance only orders: two findings in one spot stay two until a person says otherwise.
/// Tests: tests/unit/walk/tst_offer.cpp
[[nodiscard]] std::vector<OfferedFinding> offerFor(const std::vector<FindingHistory> &histories,
                                                   std::string_view point, const Rig &rig,
                                                   const RigPlace &place);

} // namespace snugwalk
