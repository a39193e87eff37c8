// SPDX-License-Identifier: Apache-2.0
// The question "where does this rig keep failing?": every place where something was ever found, with how
// often.
#pragma once

#include <optional>
#include <vector>

#include "due/rig_history.hpp"

namespace snugwalk {

/// What is taken for one spot when it is found again. Common practice, no source.
inline constexpr double handsBreadth = 0.15; ///< metres

struct RecurringPlace {
    RigPlace place;                ///< of the first finding there
    std::optional<RigPosition> at; ///< on this rig; nothing for a face alone or a name it no longer has
    std::optional<Face> face;
    int times = 0;            ///< found, or come back after it was mended or gone
    bool isOpen = false;      ///< whether one of them is open or waits for a look after its mend
    std::vector<Id> findings; ///< oldest first
    LocalTime first;          ///< when something was first found there
    LocalTime last;           ///< and when last
    std::optional<LocalTime> lastMend;
    std::vector<std::string> points; ///< each once, as found
};

struct RecurringPlaces {
    std::vector<RecurringPlace> places; ///< most times first, then those found last, then by first finding
    int withoutPlace = 0;               ///< findings that say no place
};

/// Findings of one place: of the same name, or on the same face within a hand's breadth of where the first
/// of them was, the nearest such place counting; a face alone gathers what says no more than that. Taken
/// oldest first, so that what is found later never changes the places before it.
/// Tests:   tests/unit/round/tst_recurring_places.cpp
[[nodiscard]] RecurringPlaces recurringPlaces(const Rig &rig, const std::vector<FindingHistory> &findings);

/// Each time a finding was found: when it was opened, then every look that saw it again after a mend or after
/// it was gone. Oldest first.
[[nodiscard]] std::vector<LocalTime> timesFound(const FindingHistory &finding);

} // namespace snugwalk
