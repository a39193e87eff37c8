// SPDX-License-Identifier: Apache-2.0
// The question "I have ten minutes, what do I look at?": lines chosen by the harm expected of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "round/state.hpp"

namespace snugwalk {

/// What skipping a point today may cost.
struct PointHarm {
    double consequence = 0.0; ///< C of the concern scale
    double chance = 0.0;      ///< that it has an undetected defect or fails before its next look
    double harm = 0.0;        ///< C times chance
};

/// Chance from the prior: a Weibull life of shape 1.5 with F(nominal interval) = p* of the severity
/// (.01, .03, .10, .25), taken at the age since the last look plus one trip: what is left out today is
/// looked at on the next walk at the earliest. Never looked at counts as one interval, an unanswered
/// event as two (common practice). Points of every move have at least p*: what hands set each time is
/// not a matter of age. Open findings add the chance of their concern, as independent causes.
/// Formula: decisions of the project, due prior   Tests: tests/unit/round, tests/property/round
[[nodiscard]] PointHarm harmOf(const Catalogue &catalogue, const Standing &standing, const Point &point);

struct LeftOut {
    std::string point;
    double harm = 0.0;
    double minutes = 0.0;
    bool ownHoldList =
        false; ///< on the hold list and in the sets walked before a move, or in this walk's own
};

struct BudgetedTape {
    std::vector<TapeLine> tape; ///< in walking order
    double minutes = 0.0;
    double harm = 0.0;            ///< of the lines kept
    std::vector<LeftOut> leftOut; ///< `ownHoldList` first, then by harm
};

/// The lines of `tape` with the most expected harm that fit into `minutes`: the best set, not the
/// best line first, so that more minutes never give less. Times count in tenths of a minute, rounded up.
/// A budget that holds all leaves nothing out; none of zero or less holds anything.
[[nodiscard]] BudgetedTape fitBudget(const Catalogue &catalogue, const Standing &standing,
                                     std::string_view kind, const std::vector<TapeLine> &tape,
                                     double minutes);

} // namespace snugwalk
