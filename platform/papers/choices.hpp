// SPDX-License-Identifier: Apache-2.0
// What a kind of report may be told to be about: which walk, against which, which findings.
#pragma once

#include <vector>

#include "concern/state.hpp"
#include "due/rig_history.hpp"
#include "papers/papers.hpp"

namespace snugwalk::papers {

struct PaperChoices {
    std::vector<Id> walks;    ///< newest first; empty for a kind that tells of no walk
    std::vector<Id> earlier;  ///< of a kind that tells of two: what may be the other one
    std::vector<Id> findings; ///< in the order of reports: open ones first; empty for a kind that takes none
    bool access = false;      ///< it says how to get at the rig: `PaperOptions::site`
    friend bool operator==(const PaperChoices &, const PaperChoices &) = default;
};

/// Everything in it is taken by `compose` of that kind. Order of the history's lists never matters.
[[nodiscard]] PaperChoices choicesFor(PaperKind kind, const RigHistory &history, const RigState &state);

} // namespace snugwalk::papers
