// SPDX-License-Identifier: Apache-2.0
// Defects against the hold list.
#include "concern/holds.hpp"

#include "due/severity.hpp"

namespace snugwalk {

HoldHit hitOf(const HoldRule &rule, const Point &point)
{
    return {rule.number(), rule.key, point.slug, {}, rule.forbids, std::nullopt, Dimension::Count};
}

std::string forbiddenBy(const Point &point) { return point.forbids.empty() ? "move" : point.forbids; }

std::vector<HoldHit> holdsByDefect(const HoldRules &rules, const Point &point, std::string_view defect,
                                   int grade)
{
    std::vector<HoldHit> hits;
    for (const auto &[rule, hold] : rules.defectsOf(point.slug)) {
        if (grade >= hold->leastGrade && hold->defect == defect)
            hits.push_back(hitOf(*rule, point));
    }
    if (hits.empty() && grade >= 5 && isOnHoldList(point))
        hits.push_back({point.hold.value_or(0),
                        "grade_5",
                        point.slug,
                        {},
                        forbiddenBy(point),
                        std::nullopt,
                        Dimension::Count});
    return hits;
}

} // namespace snugwalk
