// SPDX-License-Identifier: Apache-2.0
// The state of a rig: what was looked at, what is open, and what it forbids. Never one number.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "concern/outlook.hpp"

namespace snugwalk {

struct OpenFinding {
    Id id;
    std::string point;
    std::string defect;
    FindingStatus status = FindingStatus::Open; ///< open, or mended and waiting for a pass
    int grade = 0;
    Concern concern;
    std::optional<CivilDate> due; ///< likely date of the point
    bool tiedWithFirst = false;   ///< its range overlaps that of the first of the same call
};

/// One ground for a hold; `finding` is null when it comes from a number, an event or a look that failed.
struct StateHold {
    HoldHit hit;
    Id finding;
    bool acceptable = false;            ///< could not look: one point, one journey; a found hold never
    std::optional<Acceptance> accepted; ///< in force now; the hold stays in the list all the same
};

struct CouldNotLook {
    std::string point;
    std::string reason;
    bool holds = false;
};

/// A point of the road, of fire or of the hold list that the owner hid: told wherever the state is.
struct HiddenInSight {
    std::string point;
    HiddenBy by;
};

/// The item with the most concern: a finding, or a point without one.
struct WorstItem {
    Id finding; ///< null for a point
    std::string point;
    double number = 0.0;
    double low = 0.0;
    double high = 0.0;
    Call call = Call::None;
    int tied = 0; ///< further items whose range overlaps
};

struct RigState {
    std::vector<OpenFinding> open;    ///< hold first, then risk, then due date, then id
    std::vector<PointConcern> points; ///< every point, highest risk first
    std::optional<WorstItem> worst;
    Outlook outlook;
    std::vector<StateHold> holds;
    int hold = 0;     ///< findings on hold, and holds without a finding; accepted ones too
    int accepted = 0; ///< of those
    int mendSoon = 0;
    int watch = 0;
    std::set<std::string> forbids;
    // The last walk with a mark
    Id walk;
    int lookedAt = 0; ///< points passed or with attention
    std::optional<LocalTime> lookedSince;
    std::string by;
    std::vector<CouldNotLook> couldNotLook;
    int pastDue = 0;
    int dueNow = 0; ///< past due included
    int neverLooked = 0;
    std::vector<HiddenInSight> hidden; ///< catalogue order
};

/// `bands` from `dueBands` for the same history and moment. Order of the history never matters.
///
/// A point that could not be looked at holds when it is on the hold list, belonged to the sets that
/// are walked before a move (or to the walk's own sets), and has not been looked at since. Rule 15:
/// after an event that it names, the event's points hold until looked at.
[[nodiscard]] RigState stateOf(const Catalogue &catalogue, const RigHistory &history,
                               const std::vector<DueBand> &bands, LocalTime now);

} // namespace snugwalk
