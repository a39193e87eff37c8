// SPDX-License-Identifier: Apache-2.0
// The question "what does this walk ask for today?": the tape with what waits since something happened.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/pick.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// Points of the kind's while-open list that a happening made due and nobody has looked at since:
/// wheel nuts until the ladder after a wheel was fitted is closed, U-bolts after axle work.
[[nodiscard]] std::vector<std::string> openPoints(const Catalogue &catalogue, const RigHistory &history,
                                                  std::string_view kind, LocalTime now);

/// `tapeFor` with the open points: each on a line of its own behind the wheels, or, where the tape of a
/// move would grow over 16 lines, with the wheels. Errors as `tapeFor`.
[[nodiscard]] Result<std::vector<TapeLine>> tapeForWalk(const Catalogue &catalogue, const RigHistory &history,
                                                        std::string_view kind,
                                                        const std::vector<std::string> &extraSets,
                                                        const std::vector<std::string> &extraPoints,
                                                        LocalTime now);

} // namespace snugwalk
