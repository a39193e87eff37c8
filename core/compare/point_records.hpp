// SPDX-License-Identifier: Apache-2.0
// The records of a history by point, so that a comparison reads twenty years once.
#pragma once

#include <deque>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "due/rig_history.hpp"

namespace snugwalk {

[[nodiscard]] const WalkRecord *findWalk(const RigHistory &history, const Id &id);
/// A pass or an attention.
[[nodiscard]] bool isLook(const Mark *mark);

/// One of the two walks, ready for questions about its points. Views into the history.
struct WalkSide {
    Id id;
    Instant start{};
    Instant end{};
    std::vector<std::string_view> asked; ///< by its tape, or marked all the same; sorted, each once
    std::unordered_map<std::string_view, const Mark *> marks;
    [[nodiscard]] const Mark *mark(std::string_view point) const;
};
/// One without anything for an unknown walk.
[[nodiscard]] WalkSide sideOf(const RigHistory &history, const Id &walk);

struct PointRecords {
    std::vector<const Mark *> looks;              ///< passes and attentions, oldest first
    std::vector<const FindingHistory *> findings; ///< in order, by time opened
    std::vector<Instant> mends;                   ///< that name the point itself
};

/// Looks, findings and mends of some points. Views into the history, which has to stay.
class PointIndex {
public:
    PointIndex(const RigHistory &history, const std::vector<std::string_view> &points);
    [[nodiscard]] const PointRecords &of(std::string_view point) const;

private:
    void addLooks(const RigHistory &history);
    PointRecords *slot(std::string_view point);
    void addFinding(const FindingHistory &finding);

    std::unordered_map<std::string_view, PointRecords> m_records;
    std::deque<FindingHistory> m_sorted; ///< copies of findings that came out of order
};

} // namespace snugwalk
