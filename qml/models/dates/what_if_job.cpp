// SPDX-License-Identifier: Apache-2.0
// Bands as usual against bands as planned.
#include "what_if_job.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "due/rules.hpp"
#include "due/shift.hpp"

namespace snugwalk {
namespace {

std::string mainCause(const std::optional<DueShift> &usual, const std::optional<DueShift> &planned)
{
    std::map<std::string, double> difference;
    const auto add = [&](const std::optional<DueShift> &shift, double sign) {
        if (!shift)
            return;
        for (const ShiftPart &part : shift->parts)
            difference[part.cause] += sign * part.days;
    };
    add(planned, 1.0);
    add(usual, -1.0);
    const auto most =
        std::max_element(difference.begin(), difference.end(), [](const auto &a, const auto &b) {
            return std::abs(a.second) < std::abs(b.second);
        });
    return most == difference.end() || std::abs(most->second) < 1.0 ? std::string() : most->first;
}

} // namespace

std::vector<MovedDate> whatMoves(const Snapshot &snapshot, const std::vector<PlanLeg> &plan)
{
    const Ahead ahead = aheadOf(plan, *snapshot.history, snapshot.world.get(), snapshot.now);
    DueContext usual(*snapshot.catalogue, *snapshot.history, snapshot.now);
    DueContext planned(*snapshot.catalogue, *snapshot.history, snapshot.now, ahead);
    std::vector<MovedDate> moved;
    for (const DueBand &after : dueBands(*snapshot.catalogue, *snapshot.history, snapshot.now, ahead)) {
        const DueBand *before = findBand(snapshot.bands, after.point);
        if (before == nullptr || !before->likely || !after.likely || *before->likely == *after.likely)
            continue;
        moved.push_back({after.point, *before->likely, *after.likely,
                         mainCause(shiftOf(usual, *before), shiftOf(planned, after))});
    }
    std::stable_sort(moved.begin(), moved.end(),
                     [](const MovedDate &a, const MovedDate &b) { return a.days() < b.days(); });
    const auto later =
        std::stable_partition(moved.begin(), moved.end(), [](const MovedDate &m) { return m.days() < 0; });
    std::reverse(later, moved.end());
    return moved;
}

} // namespace snugwalk
