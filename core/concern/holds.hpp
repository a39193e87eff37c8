// SPDX-License-Identifier: Apache-2.0
// The hold rules that can be checked from what was written, as tables with their sources.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// A rule of the hold list. `key` is its number, or sleep, plug, light for the lists without numbers;
/// texts give the sentence in other languages by the same key.
struct HoldRule {
    std::string_view key;
    std::string_view sentence;
    std::string_view forbids; ///< move, sleep, plug, light
    std::string_view source;
};
[[nodiscard]] std::span<const HoldRule> holdRules();
[[nodiscard]] const HoldRule *findHoldRule(std::string_view key);

/// A defect that holds from `leastGrade` on.
struct DefectHold {
    std::string_view rule;
    std::string_view point; ///< slug, or "hold:11" for every point with that number
    std::string_view defect;
    int leastGrade = 1;
};
[[nodiscard]] std::span<const DefectHold> defectHolds();

/// A rule that fired. `number` is that of the hold list, 0 for sleep, plug and light.
struct HoldHit {
    int number = 0;
    std::string rule; ///< key of the rule; grade_5, could_not_look for the two general ones
    std::string point;
    std::string place; ///< named place of the reading, may be empty
    std::string forbids;
    std::optional<double> si; ///< the reading that fired it
    Dimension dimension = Dimension::Count;
    friend bool operator==(const HoldHit &, const HoldHit &) = default;
};

/// Grade 5 on a point of the hold list, or a defect rule.
[[nodiscard]] std::vector<HoldHit> holdsByDefect(const Point &point, std::string_view defect, int grade);

} // namespace snugwalk
