// SPDX-License-Identifier: Apache-2.0
// The question "why then?" in one sentence's parts: the date, the catalogue's own, and what moved it most.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/month.hpp"
#include "due/shift.hpp"

namespace snugwalk {

/// A cause as in `ShiftPart`, in months; negative is sooner.
struct WhyPart {
    std::string cause;
    double months = 0.0;
    friend bool operator==(const WhyPart &, const WhyPart &) = default;
};

/// What the cause `limit` stands for.
enum class WhyLimit {
    Interval, ///< it may not grow any further
    Event,    ///< something happened that calls for a look
    Reading   ///< its readings are heading for their limit
};

/// What the sentence says; every language and every face builds it from these.
struct WhySentence {
    CivilDate likely{};
    CivilDate nominal{};
    std::optional<WhyPart> first;  ///< the largest; nothing when nothing moved the date
    std::optional<WhyPart> second; ///< the next, nothing when it moved nothing
    WhyLimit limit = WhyLimit::Interval;
};

/// Every part in months, largest first; they sum to the days from `nominal` to `likely` over `daysPerMonth`.
[[nodiscard]] std::vector<WhyPart> partsInMonths(const DueShift &shift);

[[nodiscard]] WhyLimit whyLimit(const DueBand &band);
[[nodiscard]] WhySentence whySentence(const DueBand &band, const DueShift &shift);

/// True when both dates lie in one calendar month, so that the sentence has to name days.
[[nodiscard]] bool isWithinAMonth(const WhySentence &why);

/// True for a part that one digit would print as 0.0; it is told as under 0.1 months.
[[nodiscard]] bool isUnderATenth(const WhyPart &part);

} // namespace snugwalk
