// SPDX-License-Identifier: Apache-2.0
// What opening a finding, or looking at one again, sets in an act; shared by marks and looks between walks.
#pragma once

#include "logbook/acts.hpp"

namespace snugwalk {

struct FindingSpot {
    Id rig;
    std::string point;
    Id walk; ///< null between walks
    LocalTime at;
    Doer doer;
};

/// Adds the finding, if it is new, and the look. A finding named by `same` must be one of this point on
/// this rig: an id typed wrongly must not grow another. Call within the act.
[[nodiscard]] Status addFindingChanges(Logbook &book, const FindingSpot &spot, const FindingDraft &draft,
                                       const std::optional<Extent> &extent,
                                       const std::vector<Reading> &readings, Act &act, MarkReceipt &receipt);

[[nodiscard]] bool isOnTape(const Walk &walk, const std::string &point);
[[nodiscard]] EntityChange markChange(const Mark &mark);

} // namespace snugwalk
