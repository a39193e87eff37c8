// SPDX-License-Identifier: Apache-2.0
// The question "how does the rig stand?": what was looked at, what is open, what it forbids.
#pragma once

#include <string>

#include "concern/state.hpp"
#include "due/band.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// A history with what follows from it at one moment.
struct Standing {
    RigHistory history;
    std::vector<DueBand> bands;
    RigState state;
    LocalTime now;
};

[[nodiscard]] Standing standingOf(const Catalogue &catalogue, RigHistory history, LocalTime now);

[[nodiscard]] const FindingHistory *findHistory(const RigHistory &history, const Id &finding);

} // namespace snugwalk
