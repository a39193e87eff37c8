// SPDX-License-Identifier: Apache-2.0
// Parts of answers that several commands give.
#pragma once

#include "base/estimate.hpp"
#include "base/geo.hpp"
#include "base/value.hpp"
#include "cli/session.hpp"
#include "round/state.hpp"
#include "walk/progress.hpp"

namespace snugwalk::cli {

/// The rig of the options with everything that follows from its history now.
[[nodiscard]] Result<Standing> standing(Session &session);

/// The members that every single figure has: value, unit, low, high, level, basis, source, warnings,
/// inputs_defaulted.
[[nodiscard]] Value estimateValue(const Estimate &estimate);

/// Where a place is, told roughly: geohash, open_location_code, and the geohash's height and width in
/// degrees.
[[nodiscard]] Value cellValue(const GeoPoint &place);

[[nodiscard]] Value countsValue(const Counts &counts);
/// The walk with its counts, marks and the line to go on at.
[[nodiscard]] Value walkJson(const Walk &walk, const std::vector<Mark> &marks);
[[nodiscard]] Value reasonJson(const Reason &reason);
[[nodiscard]] Value findingJson(const FindingHistory &history);
/// "3f2a90bc  open      Belly pan sheet: loose, …".
[[nodiscard]] std::string findingLine(Session &session, const Rig &rig, const FindingHistory &history);

} // namespace snugwalk::cli
