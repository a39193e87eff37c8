// SPDX-License-Identifier: Apache-2.0
// How much harm a point does when it fails, on a ratio scale.
#pragma once

#include "catalogue/catalogue.hpp"

namespace snugwalk {

/// I: on the hold list. II: water, road, fire, health, injury. III: comfort. IV: looks.
enum class Severity { I, II, III, IV };

/// By the hold list, else by the first letter of the consequence. A point without one counts as III.
[[nodiscard]] Severity severityOf(const Point &point);
/// 100, 10, 1, 0.1: common practice, one decade a class.
[[nodiscard]] double consequenceOf(const Point &point);
[[nodiscard]] bool isOnHoldList(const Point &point);

} // namespace snugwalk
