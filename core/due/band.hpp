// SPDX-License-Identifier: Apache-2.0
// When each point is due: earliest, likely and latest, with the rule that fires first and why.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "due/aging/ahead.hpp"
#include "due/reason.hpp"
#include "due/rig_history.hpp"
#include "due/severity.hpp"

namespace snugwalk {

struct DueBand {
    std::string point;
    Severity severity = Severity::III;
    std::optional<CivilDate> early;     ///< a rule has fired by then in 1 case of 10; none: no date
    std::optional<CivilDate> likely;    ///< in 5 of 10
    std::optional<CivilDate> late;      ///< in 9 of 10
    std::optional<CivilDate> alert;     ///< when to speak up: early for I and II, likely for III, late for IV
    std::optional<Distance> atDistance; ///< left to drive at `now`, negative when overrun
    std::string rule;                   ///< months, distance, event:<slug>, never_looked, every_move
    std::string basis; ///< maker, published, common_practice; prior or fitted when driving decides
    std::vector<Reason> reasons;
    bool everyMove = false; ///< part of a set that is walked each move, day or trip
    bool dueNow = false;    ///< early is today or past
    bool pastDue = false;   ///< late has passed
    bool everLooked = false;
    std::optional<CivilDate> lastLook;
    std::optional<CivilDate> afterLook; ///< likely date counted from the last look alone, mends left out
};

/// Bands of the points the rig has: whichever fires first of months and distance since the last
/// look or clock-restarting mend, happenings since then, and the ladder after a wheel was fitted.
///
/// Past due first, by severity and early date; then by early date; points without a date (looked at
/// each move) last. Points that were found not fitted, and points that only a happening makes due
/// while none is open, are left out. The order of the history never matters.
/// Limits of zero or less are left out and reported (`limit_left_out`).
/// Formula: `LifeRule`, cut off by the calendar and the distance driven where data may not lengthen
///          (`mostLengthening`); 10, 50 and 90 % of the first time that any rule fires
/// Tests:   tests/unit/due, tests/published/due, tests/property/due
/// \param ahead  places and drives planned; empty: all goes on as usual.
[[nodiscard]] std::vector<DueBand> dueBands(const Catalogue &catalogue, const RigHistory &history,
                                            LocalTime now, const Ahead &ahead = {});

/// The band of one point, or null.
[[nodiscard]] const DueBand *findBand(const std::vector<DueBand> &bands, std::string_view point);

} // namespace snugwalk
