// SPDX-License-Identifier: Apache-2.0
// Concern of every point that the rig has, passed ones too: a number, never a call.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "concern/concern.hpp"
#include "due/point_life.hpp"

namespace snugwalk {

struct PointConcern {
    std::string point;
    Severity severity = Severity::III;
    double consequence = 1.0; ///< C
    ChanceRange chance;       ///< of a defect at the next look, 10 and 90 % of the prior's lives
    double unlooked = 0.0; ///< the same if nobody had ever looked; not below `chance` where every look passed
    double missed = 0.0;   ///< share of `chance` that is there already, missed by every look
    double risk = 0.0;     ///< R = C p
    double number = 0.0;   ///< 0 to 100
    double low = 0.0;
    double high = 0.0;
    double monthsAhead = 0.0; ///< from now to the next look
    double nominal = 0.0;     ///< the catalogue's interval: months, or moves
    bool byMoves = false;     ///< ages by moves, not by months
    int passes = 0;           ///< of this life
    bool looked = false;
    bool current = false;    ///< the last look still counts: within its band, or a trip for each move
    bool ofFindings = false; ///< the chance is that of its open findings
    bool tiedWithFirst = false;
    std::string basis; ///< prior, fitted; common_practice for findings
    /// C times the share that fails within the interval.
    [[nodiscard]] double weight() const { return consequence * failedAtInterval(severity); }
};

/// The concerns that stand at each point; not those of findings gone or confirmed.
using ConcernsByPoint = std::unordered_multimap<std::string_view, const Concern *>;

/// One entry for each point that applies, is not marked not fitted, and has been looked at or is due
/// some day; highest risk first, then by slug.
///
/// A passed point: p = 1 - E[S(t + ahead) / L], which is what the looks may have missed and what may
/// come, over the lives of the prior that the looks leave likely. A point never looked at has its
/// prior: one interval, the time since the log began, and the time ahead. Work since the last look never
/// raises p. A point with an open or a mended finding has the chance of its findings: 1 - product of (1 - p).
[[nodiscard]] std::vector<PointConcern> pointConcerns(const ConcernContext &context,
                                                      const std::vector<DueBand> &bands,
                                                      const ConcernsByPoint &concerns);

} // namespace snugwalk
