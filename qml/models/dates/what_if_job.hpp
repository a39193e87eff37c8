// SPDX-License-Identifier: Apache-2.0
// Which dates a plan moves, as values: nothing is written.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "round/plan.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct MovedDate {
    std::string point;
    CivilDate before{}; ///< likely, as all goes on as usual
    CivilDate after{};  ///< likely, as planned
    std::string cause;  ///< what differs most between the two decompositions; empty when nothing does
    [[nodiscard]] double days() const { return static_cast<double>(daysBetween(before, after)); }
};

/// The dates that move by a day or more, sooner before later, the furthest first.
[[nodiscard]] std::vector<MovedDate> whatMoves(const Snapshot &snapshot, const std::vector<PlanLeg> &plan);

} // namespace snugwalk
