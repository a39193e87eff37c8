// SPDX-License-Identifier: Apache-2.0
// The history of a rig by point, made in one pass: what was seen and done at each, oldest first.
#pragma once

#include <string_view>
#include <unordered_map>
#include <vector>

#include "due/rig_history.hpp"

namespace snugwalk {

/// A mark and the walk that it belongs to.
struct MarkOnWalk {
    const Mark *mark = nullptr;
    const Walk *walk = nullptr;
};

struct PointHistory {
    std::vector<MarkOnWalk> marks; ///< pass, attention, not fitted, could not look
    std::vector<const Mend *> work;
    std::vector<const FindingHistory *> findings;

    [[nodiscard]] const MarkOnWalk *lastMark() const { return marks.empty() ? nullptr : &marks.back(); }
    /// The last pass or attention, or null.
    [[nodiscard]] const Mark *lastLook() const;
};

/// Points into the history, which must outlive it. What is written later than `now` is left out, and
/// the order in which the history came never matters.
class HistoryIndex {
public:
    HistoryIndex(const RigHistory &history, LocalTime now);

    [[nodiscard]] const PointHistory &of(std::string_view point) const;
    [[nodiscard]] const std::unordered_map<std::string_view, PointHistory> &all() const { return m_points; }

private:
    void addMends(const RigHistory &history, Instant now);
    std::unordered_map<std::string_view, PointHistory> m_points;
};

[[nodiscard]] constexpr bool isLook(MarkState state)
{
    return state == MarkState::Pass || state == MarkState::Attention;
}

} // namespace snugwalk
