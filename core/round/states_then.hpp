// SPDX-License-Identifier: Apache-2.0
// The question "how did it stand then?": the state worked out again for the end of each walk.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "concern/state.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// What is written of the time up to `when`: walks begun, marks, looks, mends and passes by then, trips that
/// were over, stays, happenings and acceptances begun, the rig as it was described then.
///
/// It is what happened by then as it is known now, not what a device showed on that day: what was written
/// later of that time, or came later from another device, is in it. The owner's choices, the catalogue's
/// points and the usual weather ahead are those of now.
[[nodiscard]] RigHistory historyAsOf(const RigHistory &history, Instant when);

struct StateThen {
    LocalTime at;     ///< the end of a walk, its last mark where it was not finished; or now
    Id walk;          ///< null: now
    std::string kind; ///< of the walk
    RigState state;
};

/// The last `most` walks with a mark, oldest first, then now. Each is `stateOf` over `historyAsOf`.
[[nodiscard]] std::vector<StateThen> statesThen(const Catalogue &catalogue, const RigHistory &history,
                                                LocalTime now, std::size_t most);

/// Whose concern: a finding's, a point's, or with both empty the worst of the rig.
struct ConcernOf {
    std::string point;
    Id finding;
};
struct ConcernThen {
    LocalTime at;
    std::string kind; ///< of the walk; empty: now
    std::string point;
    double number = 0.0, low = 0.0, high = 0.0;
    Call call = Call::None; ///< None for a point without a finding, and for a finding that is closed
    bool closed = false;    ///< a finding gone or confirmed by then
};
/// Of the states in which there was one; nothing before a finding was opened.
[[nodiscard]] std::vector<ConcernThen> concernsThen(const std::vector<StateThen> &states,
                                                    const ConcernOf &whose);

} // namespace snugwalk
