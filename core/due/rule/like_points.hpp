// SPDX-License-Identifier: Apache-2.0
// What the points of one rig that last alike tell of each other.
#pragma once

#include <map>
#include <string_view>

#include "due/aging/due_lines.hpp"
#include "due/history_index.hpp"
#include "due/rule/rule_age.hpp"

namespace snugwalk {

/// What was seen of every other point of a class (`Catalogue::likes`) counts by half: a power prior. Ages
/// count in each point's own intervals, so that a class may hold points with different ones. A class is told
/// once for each rig. Not for use by two threads at once.
/// Formula: power prior [IBRAHIM-CHEN-2000]; its weight of 0.5 is common practice
/// Tests:   tests/unit/due/tst_like_points.cpp, tests/property/due
class LikePoints {
public:
    /// All must outlive it.
    LikePoints(const Catalogue &catalogue, const HistoryIndex &index, DueLines &lines)
        : m_catalogue(catalogue), m_index(index), m_lines(lines)
    {}

    /// Of all points like this one, itself left out; empty where there are none or none was seen.
    [[nodiscard]] LikeLives of(const Point &point);

private:
    [[nodiscard]] const LikeLives &seenOf(const Point &point);

    const Catalogue &m_catalogue;
    const HistoryIndex &m_index;
    DueLines &m_lines;
    std::map<std::string_view, LikeLives> m_seen; ///< by point
};

} // namespace snugwalk
