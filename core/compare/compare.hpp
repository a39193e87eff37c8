// SPDX-License-Identifier: Apache-2.0
// Then and now: what two walks of one rig say about each point, finding and reading.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "compare/change.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

struct FindingChange {
    Id finding;
    Change change = Change::Same;
    std::string reason;           ///< came_back, confirm_pending, point_passed, or empty
    std::optional<int> thenGrade; ///< empty when the finding was not open then
    std::optional<int> nowGrade;  ///< of the last look by now, empty when there was none since
    std::optional<Extent> thenExtent;
    std::optional<Extent> nowExtent;
    std::vector<Id> thenPhotos; ///< in the order they were added
    std::vector<Id> nowPhotos;
    friend bool operator==(const FindingChange &, const FindingChange &) = default;
};

struct ReadingChange {
    std::string slug;
    std::string place;
    Dimension dimension = Dimension::Count;
    std::string unit; ///< as read now
    double thenSi = 0.0;
    double nowSi = 0.0;
    double uncertainty = 0.0;     ///< standard uncertainty of the difference, SI
    double z = 0.0;               ///< difference over that
    bool changed = false;         ///< |z| over 1.96
    Change change = Change::Same; ///< worse or better only where a limit says which way is worse
    friend bool operator==(const ReadingChange &, const ReadingChange &) = default;
};

struct PointChange {
    std::string point;
    MarkState then = MarkState::NotLooked;
    MarkState now = MarkState::NotLooked;
    Change change = Change::Same;
    /// `then` comes from an earlier walk, because the first of the two did not look at the point.
    bool carried = false;
    std::optional<LocalTime> thenAt;     ///< of the mark behind `then`
    std::vector<FindingChange> findings; ///< by time opened
    std::vector<ReadingChange> readings; ///< by slug and place
    friend bool operator==(const PointChange &, const PointChange &) = default;
};

struct Comparison {
    Id thenWalk; ///< always the one that started first
    Id nowWalk;
    std::vector<PointChange> points; ///< what the later walk asked for, in catalogue order
    ChangeCounts pointCounts;
    ChangeCounts findingCounts;
    std::vector<std::string> onlyThen; ///< points that the later walk did not ask for
    std::vector<std::string> onlyNow;  ///< points that the earlier walk did not ask for
    friend bool operator==(const Comparison &, const Comparison &) = default;
};

/// Compares two walks, whichever order they are named in. An unknown walk counts as one with no
/// marks. The order of the history never matters.
///
/// Points: a point not looked at now is *not looked at*, whatever it was. One looked at now is
/// compared with the last look by the end of the earlier walk (`carried` when that walk did not
/// look), and is a *first look* without one. Pass to attention is *new*; attention to pass is
/// *mended* when mends account for every open finding, else *gone*. Attention to attention takes
/// its worst finding. Pass to pass is *same*: see its readings.
/// Findings: grade first, then extent when the grade is equal: a length by more than 1 mm or 10 %,
/// whichever is larger. Mended in between is *mended* (`confirm_pending` until a pass); looked at
/// and not there, without a mend, is *gone*; seen again after a mend is *new* with `came_back`. A
/// finding that nobody looked at is *not looked at* and stays open, even if its point passed
/// (`point_passed`): a pass alone never closes a finding.
/// Readings: z = (now - then) / sqrt(u1^2 + u2^2), twice the uncertainty when the unit changed.
/// Source: methods of paired comparison; the uncertainties are common practice, in readings.cpp.
[[nodiscard]] Comparison compareWalks(const Catalogue &catalogue, const RigHistory &history, Id thenWalk,
                                      Id nowWalk);

} // namespace snugwalk
