// SPDX-License-Identifier: Apache-2.0
// The lives that one point has had, and the chance that it fails before a moment to come.
#pragma once

#include <optional>
#include <vector>

#include "due/history_index.hpp"
#include "due/life_prior.hpp"

namespace snugwalk {

/// How a rig's points grow older: by months, or by moves for what is looked at each move, which does
/// not age while the rig stands.
class AgeClock {
public:
    /// Moves are the trips, or the walks before the road when no trip was ever written. The log begins
    /// with the first walk or mark by `now`.
    AgeClock(const RigHistory &history, LocalTime now);
    [[nodiscard]] double months(Instant from, Instant to) const;
    [[nodiscard]] double moves(Instant from, Instant to) const;
    [[nodiscard]] Instant begin() const { return m_begin; }

private:
    std::vector<Instant> m_moves;
    Instant m_begin;
};

/// What the lives of one point are told in.
struct LifeFrame {
    const AgeClock &clock;
    double nominal = 1.0; ///< the catalogue's interval: months, or moves
    bool byMoves = false;
    LocalTime now;
};

/// From new, or from a mend that did not make it new, to the next mend.
struct Life {
    double born = 0.0;             ///< age at which it was known to work
    std::vector<LookAtAge> passes; ///< that still matter
    std::optional<LookAtAge> found;
};

struct PointLives {
    std::vector<Life> earlier; ///< with a look
    Life now;
    double age = 0.0; ///< at the moment asked for
    int passes = 0;   ///< of this life, before old ones were left out
    bool workSinceLook = false;
    bool birthKnown = false; ///< made new on record
};

/// Replace, clean and lubricate make it new (age 0); re-seal and re-torque halve its age; other work
/// leaves the age. What came before the log is unknown: every point is taken to have been one interval
/// old when the log began, and to fail by chance until it is made new on record: of a part of unknown age
/// the age tells nothing (common practice). An attention ends a life when work follows; one that was
/// gone at the next look is left out. With `leaveOutLastWork`, work since the last look is not counted.
[[nodiscard]] PointLives livesOf(const PointHistory &history, const LifeFrame &frame, bool leaveOutLastWork);

/// A mean and the 10 and 90 % of the weight on either side.
struct ChanceRange {
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
};

/// What the looks leave of a point's prior.
struct PointChance {
    ChanceRange ahead;   ///< of a defect that is there now, or comes within `ahead` of its age
    double missed = 0.0; ///< of one that is there and that the looks so far missed
};
[[nodiscard]] PointChance chanceOf(const LifeGrid &prior, const PointLives &lives, double ahead);
/// Chance of a defect by `age` when nobody ever looked.
[[nodiscard]] ChanceRange chanceUnlooked(const LifeGrid &prior, double age);

} // namespace snugwalk
