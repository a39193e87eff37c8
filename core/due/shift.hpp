// SPDX-License-Identifier: Apache-2.0
// Why a date is where it is: how many days each cause moved it from the catalogue's interval.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "due/band.hpp"

namespace snugwalk {

/// One cause: sun, heat, wetness, frost, salt, shake, use, history, or limit (where data may not lengthen
/// the interval any further, or a happening calls at once). Negative is sooner.
struct ShiftPart {
    std::string cause;
    double days = 0.0;
    friend bool operator==(const ShiftPart &, const ShiftPart &) = default;
};

/// How the likely date comes about.
struct DueShift {
    CivilDate since{};   ///< the last look or mend
    CivilDate nominal{}; ///< by the catalogue: reference exposure, 10,000 smooth km a year
    CivilDate likely{};
    std::vector<ShiftPart> parts; ///< largest first; together they are the days from `nominal` to `likely`
    double agedDays = 0.0;        ///< what the days since then did, in reference days
    double days = 0.0;            ///< the days since then
};

/// Each cause's share is its mean over every order in which the causes can be let in (Shapley), so that
/// the parts add up to the whole whatever acts together. Nothing for a point without a date from months
/// or distance.
/// Formula: [SHAPLEY-1953]; 2^n medians for n causes, 5 at most
/// Accuracy: the sum is exact to 1e-9 days
/// Tests:   tests/property/due/tst_due_laws.cpp
[[nodiscard]] std::optional<DueShift> shiftOf(const Catalogue &catalogue, const RigHistory &history,
                                              LocalTime now, const DueBand &band, const Ahead &ahead = {});

struct DueContext;
/// The same for many points of one rig.
[[nodiscard]] std::optional<DueShift> shiftOf(DueContext &context, const DueBand &band);

} // namespace snugwalk
