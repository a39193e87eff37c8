// SPDX-License-Identifier: Apache-2.0
// What became of one finding between two moments.
#pragma once

#include <optional>

#include "compare/compare.hpp"

namespace snugwalk {

/// One end of a comparison at one point.
struct Moment {
    Id walk;
    Instant at{};                          ///< up to when records count
    MarkState mark = MarkState::NotLooked; ///< of the point
    Instant started{};                     ///< of the walk
    Instant ended{};
};

/// Larger by more than can be read: 1 mm or 10 % of a length, one of a count, 10 % of the rest.
/// Positive: now is larger; 0 when equal, unknown, or of two different dimensions.
[[nodiscard]] int compareExtent(const std::optional<Extent> &then, const std::optional<Extent> &now);

/// Nothing when the finding was not open at either end nor seen in between.
/// \param history in order, see due/ordered.hpp.
[[nodiscard]] std::optional<FindingChange> compareFinding(const FindingHistory &history, const Moment &then,
                                                          const Moment &now);

/// The worst change among findings that were looked at: new, worse, same, better; nothing when none
/// was.
[[nodiscard]] std::optional<Change> worstOf(const std::vector<FindingChange> &changes);

} // namespace snugwalk
