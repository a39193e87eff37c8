// SPDX-License-Identifier: Apache-2.0
// Hold rules that fire on a defect, and what a fired rule says.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"

namespace snugwalk {

/// A rule that fired. `number` is that of the hold list, 0 for sleep, plug and light.
struct HoldHit {
    int number = 0;
    std::string rule; ///< key of the rule; grade_5, could_not_look for the two general ones
    std::string point;
    std::string place; ///< named place of the reading, or the event; may be empty
    std::string forbids;
    std::optional<double> si; ///< the reading that fired it
    Dimension dimension = Dimension::Count;
    friend bool operator==(const HoldHit &, const HoldHit &) = default;
};

/// A hit of `rule` on `point`.
[[nodiscard]] HoldHit hitOf(const HoldRule &rule, const Point &point);

/// The defect rules of the catalogue that fire, else grade 5 on a point of the hold list.
[[nodiscard]] std::vector<HoldHit> holdsByDefect(const HoldRules &rules, const Point &point,
                                                 std::string_view defect, int grade);

/// What a hold of no numbered rule forbids at `point`: its own word, else moving.
[[nodiscard]] std::string forbiddenBy(const Point &point);

} // namespace snugwalk
