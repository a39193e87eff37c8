// SPDX-License-Identifier: Apache-2.0
// The question "what changed since last time?": which two walks that means.
#pragma once

#include <string_view>

#include "compare/compare.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// How the earlier walk was found.
enum class PairedBy {
    Named,      ///< somebody named it
    SameKind,   ///< the last of the same kind
    SamePoints, ///< none of the kind: the last that looked at half of the points or more
    JustBefore  ///< none of those either: the one before
};
/// named, same_kind, same_points, just_before.
[[nodiscard]] std::string_view slug(PairedBy by);

struct WalkPair {
    Id then;
    Id now;
    PairedBy by = PairedBy::Named;
};

/// `now` and the walk to hold it against: the last one of the same kind that started before it and has a
/// look on it; without one, the last that looked at half of its points or more (a full round is not held
/// against a look at a fuel stop); else the one just before. `NotFound` when it is not of this rig or the
/// first of all.
[[nodiscard]] Result<WalkPair> lastOfKind(const RigHistory &history, const Id &now);

/// The last walk with a look on it, of `kind` when that is not empty, and the walk to hold it against as
/// `lastOfKind`. `NotFound` with fewer than two.
[[nodiscard]] Result<WalkPair> lastTwo(const RigHistory &history, std::string_view kind = {});

} // namespace snugwalk
