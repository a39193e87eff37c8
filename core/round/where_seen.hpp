// SPDX-License-Identifier: Apache-2.0
// Where on earth a finding was first seen.
#pragma once

#include <optional>

#include "due/rig_history.hpp"

namespace snugwalk {

/// The place of its first look that has one, of the look itself or of its walk; nothing where nobody let a
/// place be kept.
[[nodiscard]] std::optional<GeoPoint> whereSeen(const RigHistory &history, const FindingHistory &finding);

} // namespace snugwalk
