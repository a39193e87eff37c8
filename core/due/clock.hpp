// SPDX-License-Identifier: Apache-2.0
// What a point ages by: since when, and how much of an earlier life it kept.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "due/rig_history.hpp"

namespace snugwalk {

/// The clock of one point as it stands. Replace, clean and lubricate start it anew; re-seal and
/// re-torque keep half the age; adjust and other leave it. A look starts it anew too.
struct PointClock {
    std::optional<LocalTime> lastLook;     ///< last pass or attention
    std::optional<LocalTime> lastWork;     ///< last look, or work that stands for one (replace, re-torque)
    std::optional<LocalTime> from;         ///< when the clock last started; nothing when nobody knows
    std::string startedBy;                 ///< look, replace, reseal …
    double keptDays = 0.0;                 ///< age at `from`
    Distance keptDistance;                 ///< driven before `from` that still counts
    std::optional<LocalTime> couldNotLook; ///< later than the last look
    bool notFitted = false;                ///< the last mark says so
};

/// One clock for each point that was marked or worked on by `now`; later records are left out.
[[nodiscard]] std::map<std::string, PointClock, std::less<>> clocksOf(const RigHistory &history,
                                                                      LocalTime now);

} // namespace snugwalk
