// SPDX-License-Identifier: Apache-2.0
// What was added to a rig, taken from it, or changed on it, between two moments.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/value.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

enum class RigChangeKind { Added, Removed, Changed };
/// added, removed, changed.
[[nodiscard]] std::string_view slug(RigChangeKind kind);

/// `what` is "fitting", "opening", or the member of the rig that changed, such as "tires.size" or
/// "measures.axles"; `name` the fitting's slug or the opening's name. `then` and `now` as in the rig's
/// own JSON, null where there was none.
struct RigChange {
    RigChangeKind kind = RigChangeKind::Changed;
    std::string what;
    std::string name;
    Value then;
    Value now;
    friend bool operator==(const RigChange &, const RigChange &) = default;
};

/// Fittings first, then openings, then members, each by name. The rig's own name and the distance
/// expected a year are no part of it.
[[nodiscard]] std::vector<RigChange> rigChanges(const Rig &then, const Rig &now);

/// The rig as it stood at `when`, from `history.rigs` in any order; before the first of them as the
/// first; as it is now without any.
[[nodiscard]] const Rig &rigAsOf(const RigHistory &history, Instant when);

} // namespace snugwalk
