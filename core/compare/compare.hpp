// SPDX-License-Identifier: Apache-2.0
// Then and now: what two walks of one rig say about each point, finding and reading.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "compare/change.hpp"
#include "compare/rig_changes.hpp"
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
    double uncertainty = 0.0;              ///< standard uncertainty of the difference, SI
    double z = 0.0;                        ///< difference over that
    bool changed = false;                  ///< |z| over 1.96
    Change change = Change::Same;          ///< worse or better only where a limit says which way is worse
    std::vector<std::string> doubled = {}; ///< why the uncertainty was doubled: unit, observer, tool
    bool replaced = false;                 ///< something new was put in between
    bool ask = false;    ///< wear grew back beyond doubt, and no replacement is written: ask
    bool stands = false; ///< changed, and still so when all readings of the comparison count together
    /// The change that was to be expected by now, SI; nothing when nobody can tell.
    std::optional<double> expected = std::nullopt;
    double expectedUncertainty = 0.0;
    std::string expectedFrom = {}; ///< slope_days, slope_distance, interval_days, interval_distance
    double expectedZ = 0.0;        ///< difference less expected change, over the uncertainty of both
    bool faster = false;           ///< that is over 1.645 for the worse
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

/// The rig as a whole: how many points that both walks looked at went one way and the other. For a
/// detail view; the counts come first.
struct PairedRates {
    int worse = 0;           ///< pass to attention
    int better = 0;          ///< attention to pass
    double mcnemarP = 1.0;   ///< of a split at least as uneven by chance
    double chanceUp = 0.5;   ///< that attentions became more frequent
    int readings = 0;        ///< pairs of readings
    int readingsChanged = 0; ///< each looked at alone: 1 in 20 is chance
    int readingsStand = 0;   ///< looked at together: of these 1 in 10 at most is chance
    friend bool operator==(const PairedRates &, const PairedRates &) = default;
};

struct Comparison {
    Id thenWalk; ///< always the one that started first
    Id nowWalk;
    std::vector<PointChange> points; ///< what the later walk asked for, in catalogue order
    ChangeCounts pointCounts;
    ChangeCounts findingCounts;
    std::vector<std::string> onlyThen;       ///< points that the later walk did not ask for, though fitted
    std::vector<std::string> onlyNow;        ///< points that the earlier walk did not ask for, though fitted
    std::vector<std::string> noLongerFitted; ///< points of then that the rig of now does not have
    std::vector<std::string> fittedSince;    ///< points of now that the rig of then did not have
    std::vector<RigChange> rigChanges;       ///< what was added to, taken from or changed on the rig
    PairedRates rates;
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
/// Readings: z = (now - then) / sqrt(u1^2 + u2^2), twice the uncertainty when unit, observer or tool
/// changed. Against expected wear: see expected.hpp. From ten readings on, those that stand are told by
/// [BENJAMINI-HOCHBERG-1995] at 10 %. The uncertainties are common practice, in readings.cpp.
/// The rig as it was at either end comes from `history.rigs`.
[[nodiscard]] Comparison compareWalks(const Catalogue &catalogue, const RigHistory &history, Id thenWalk,
                                      Id nowWalk);

} // namespace snugwalk
