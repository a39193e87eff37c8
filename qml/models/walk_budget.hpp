// SPDX-License-Identifier: Apache-2.0
// What fits into the time there is, kind by kind, and what that leaves out.
#pragma once

#include <QVariantList>

#include "round/budget.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct FittedKind {
    std::string kind;
    int points = 0; ///< of the whole tape
    BudgetedTape fitted;
};

/// For the worker: it copies the history. \param snapshot with a rig.
[[nodiscard]] std::vector<FittedKind> fitKinds(const Snapshot &snapshot, double minutes);

/// The tape of one kind within `minutes`, and what is left out; all of it for 0 minutes.
/// \returns errors of `tapeForWalk`, `OutOfRange` when not even one line fits.
[[nodiscard]] Result<BudgetedTape> tapeWithin(const Snapshot &snapshot, const std::string &kind,
                                              double minutes, LocalTime now);

/// `kinds` as `walkKinds` gives them, with lines and minutes of what fits, `leftOut` and `holdsLeftOut`.
[[nodiscard]] QVariantList fittedKinds(const Voice &voice, QVariantList kinds,
                                       const std::vector<FittedKind> &fitted);

} // namespace snugwalk
