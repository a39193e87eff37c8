// SPDX-License-Identifier: Apache-2.0
// How far one pass may move a date.
#pragma once

#include <optional>

#include "due/rule/life_rule.hpp"

namespace snugwalk {

/// The last day that the likely one may be when the life under way began with a pass: that of the rule
/// without this pass, and the time since the look before and one interval. Mild weather would otherwise let
/// a single pass lift a doubt and lengthen at once. Nothing where the day lies within one interval anyway or
/// something else began the life.
/// Formula: common practice, no source; the day before needs no guard of its own: it binds only where that
///          lies within half an interval of its look
/// Tests:   tests/property/due/tst_catalogue_laws.cpp
[[nodiscard]] std::optional<double> latestAfterPass(DueLines &lines, const Point &point,
                                                    const PointHistory &history, const LikeLives &like,
                                                    const LifeRule &rule, double likely);

} // namespace snugwalk
