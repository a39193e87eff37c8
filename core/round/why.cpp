// SPDX-License-Identifier: Apache-2.0
// From a decomposition to what one sentence says of it.
#include "round/why.hpp"

#include <cmath>

namespace snugwalk {
namespace {

// What arithmetic leaves of a cause that did nothing; days.
constexpr double nothing = 1e-6;

} // namespace

std::vector<WhyPart> partsInMonths(const DueShift &shift)
{
    std::vector<WhyPart> parts;
    for (const ShiftPart &part : shift.parts)
        parts.push_back({part.cause, part.days / daysPerMonth});
    return parts;
}

WhyLimit whyLimit(const DueBand &band)
{
    if (band.rule.starts_with("event:"))
        return WhyLimit::Event;
    return band.rule.starts_with("reading:") ? WhyLimit::Reading : WhyLimit::Interval;
}

WhySentence whySentence(const DueBand &band, const DueShift &shift)
{
    WhySentence why{shift.likely, shift.nominal, std::nullopt, std::nullopt, whyLimit(band)};
    for (const ShiftPart &part : shift.parts) {
        if (std::abs(part.days) < nothing)
            continue;
        const WhyPart told{part.cause, part.days / daysPerMonth};
        if (!why.first) {
            why.first = told;
        } else {
            why.second = told;
            break;
        }
    }
    return why;
}

bool isWithinAMonth(const WhySentence &why)
{
    return why.likely.year() == why.nominal.year() && why.likely.month() == why.nominal.month();
}

bool isUnderATenth(const WhyPart &part) { return std::abs(part.months) < 0.05; }

} // namespace snugwalk
