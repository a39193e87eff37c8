// SPDX-License-Identifier: Apache-2.0
// Concern: how much harm is expected of a finding before the next look if nothing is done.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "concern/context.hpp"
#include "concern/holds.hpp"
#include "due/band.hpp"
#include "due/reason.hpp"

namespace snugwalk {

enum class Call { None, Watch, MendSoon, Hold };
[[nodiscard]] std::string_view slug(Call call);

struct Concern {
    double number = 0.0; ///< 0 to 100
    double low = 0.0;    ///< with the time to failure twice as long
    double high = 0.0;   ///< with it half as long
    Call call = Call::None;
    int grade = 0;                ///< of the last look; 0 without a concern
    std::string forbids;          ///< with a hold: move, sleep, plug, light
    double risk = 0.0;            ///< R = C p, the ratio scale behind the number
    double chance = 0.0;          ///< p, of failing before the next look
    double chanceLow = 0.0;       ///< with the time to failure twice as long
    double chanceHigh = 0.0;      ///< with it half as long
    double monthsAhead = 0.0;     ///< from the last look to the next
    bool waitsForConfirm = false; ///< mended, and no pass yet
    std::vector<HoldHit> holds;
    std::vector<Reason> why;
};

/// 25 (log10 R + 2), kept within 0 to 100. R of 0.01 gives 0, 1 gives 50, 100 gives 100.
[[nodiscard]] double concernNumber(double risk);
/// The scale tau of a grade in months.
[[nodiscard]] double monthsToFailure(int grade);
/// 1 - exp(-months / tau): tau 24, 12, 6, 0.5, 0.02 months for grades 1 to 5 (common practice).
[[nodiscard]] double chanceOfFailing(int grade, double months);
/// From a look to the next one: to the point's own likely due date counted from that look, or to the
/// end of the next trip once that has passed; 12 months at most, one trip for points of each move.
[[nodiscard]] double monthsAhead(const DueBand *band, LocalTime lookedAt, const ConcernContext &context);

/// Concern of one finding as things stand at the context's moment.
///
/// C is the point's consequence. The span runs from the last look at the finding to the point's own
/// likely due date (from its last look: work done since does not put it off), or to the end of the
/// next trip once that has passed, and at most 12 months; one trip for points looked at each move.
/// Nothing is known of the time since the last look, so the span never shrinks by waiting. Without a
/// band or a date it is 12 months. A finding whose look has not arrived yet counts as grade 1.
/// *Hold* only by a hold rule or by grade 5 on a hold-list point; *mend soon* from 50 or by the
/// matrix floor (severity I with p of 0.01 or more); *watch* below. A mended finding waits for a
/// confirming pass at grade 1 over one trip, which is never above the finding mended, and is
/// watched. Gone and confirmed findings have no concern.
///
/// Where a reading of the point has a trend, its projected crossing will take the place of the grade's
/// scale (methods 4.6); nothing here reads trends yet.
[[nodiscard]] Concern concernOf(const ConcernContext &context, const Point &point,
                                const FindingHistory &finding, const DueBand *band);

} // namespace snugwalk
