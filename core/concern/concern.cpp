// SPDX-License-Identifier: Apache-2.0
// Consequence times chance, on the number scale, with holds before everything else.
#include "concern/concern.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/month.hpp"
#include "concern/matrix.hpp"
#include "concern/reading_holds.hpp"
#include "due/ordered.hpp"

namespace snugwalk {
namespace {

constexpr double mostMonths = 12.0;
constexpr double mendSoonFrom = 50.0;
constexpr double failureDoubt = 2.0; // time to failure known within a factor of 2, common practice
constexpr std::array timeScales = {24.0, 12.0, 6.0, 0.5, 0.02};

double chance(int grade, double months, double slower)
{
    return -std::expm1(-std::max(months, 0.0) / (monthsToFailure(grade) * slower));
}

std::vector<HoldHit> holdsOf(const ConcernContext &context, const Point &point, const Finding &finding,
                             int grade)
{
    std::vector<HoldHit> hits = holdsByDefect(context.catalogue.holds(), point, finding.defect, grade);
    for (HoldHit &hit : holdsByReading(context, point)) {
        const std::string &named = finding.place.named;
        if (named.empty() || hit.place.empty() || named == hit.place)
            hits.push_back(std::move(hit));
    }
    return hits;
}

void setNumbers(Concern &c, const Point &point, int grade)
{
    const double consequence = consequenceOf(point);
    c.grade = grade;
    c.chance = chance(grade, c.monthsAhead, 1.0);
    c.risk = consequence * c.chance;
    c.number = concernNumber(c.risk);
    c.chanceLow = chance(grade, c.monthsAhead, failureDoubt);
    c.chanceHigh = chance(grade, c.monthsAhead, 1.0 / failureDoubt);
    c.low = concernNumber(consequence * c.chanceLow);
    c.high = concernNumber(consequence * c.chanceHigh);
}

void setCall(Concern &c, const Point &point)
{
    if (!c.holds.empty()) {
        c.call = Call::Hold;
        c.forbids = c.holds.front().forbids;
        return;
    }
    const bool floor = isAtLeastMendSoon(severityOf(point), c.chance);
    c.call = c.number >= mendSoonFrom || floor ? Call::MendSoon : Call::Watch;
}

void tellWhy(Concern &c, const Point &point)
{
    c.why.push_back({"consequence", point.consequence.empty() ? "C" : point.consequence.front(),
                     consequenceOf(point), Dimension::Count});
    c.why.push_back({"grade", {}, static_cast<double>(c.grade), Dimension::Count});
    c.why.push_back({"months_ahead", {}, c.monthsAhead, Dimension::Count});
    c.why.push_back({"chance", {}, c.chance, Dimension::Fraction});
    for (const HoldHit &hold : c.holds)
        c.why.push_back({"hold", hold.rule, hold.si, hold.dimension});
    if (c.waitsForConfirm)
        c.why.push_back({"confirm_pending", {}, std::nullopt, Dimension::Count});
}

Concern mendedConcern(const ConcernContext &context, const Point &point)
{
    Concern c;
    c.waitsForConfirm = true;
    c.monthsAhead = context.tripMonths;
    setNumbers(c, point, 1);
    c.call = Call::Watch;
    tellWhy(c, point);
    return c;
}

} // namespace

std::string_view slug(Call call)
{
    switch (call) {
    case Call::None:
        return "none";
    case Call::Watch:
        return "watch";
    case Call::MendSoon:
        return "mend_soon";
    case Call::Hold:
        return "hold";
    }
    return "none";
}

double concernNumber(double risk)
{
    return risk > 0.0 ? std::clamp(25.0 * (std::log10(risk) + 2.0), 0.0, 100.0) : 0.0;
}

double monthsToFailure(int grade)
{
    return timeScales[static_cast<std::size_t>(std::clamp(grade, 1, 5) - 1)];
}

double chanceOfFailing(int grade, double months) { return chance(grade, months, 1.0); }

double monthsAhead(const DueBand *band, LocalTime lookedAt, const ConcernContext &context)
{
    if (band == nullptr)
        return mostMonths;
    if (band->everyMove)
        return context.tripMonths;
    const std::optional<CivilDate> due = band->afterLook ? band->afterLook : band->likely;
    if (!due)
        return mostMonths;
    const CivilDate looked = civilDate(lookedAt);
    const double toDue = static_cast<double>(daysBetween(looked, *due)) / daysPerMonth;
    const double toTrip =
        static_cast<double>(daysBetween(looked, civilDate(context.now))) / daysPerMonth + context.tripMonths;
    return std::clamp(std::max(toDue, toTrip), 0.0, mostMonths);
}

Concern concernOf(const ConcernContext &context, const Point &point, const FindingHistory &finding,
                  const DueBand *band)
{
    const FindingHistory f = ordered(finding);
    const Instant now = context.now.instant;
    const Look *look = lastLook(f, now);
    const FindingStatus status = statusAt(f, now);
    if (f.finding.opened.instant > now || status == FindingStatus::Gone || status == FindingStatus::Confirmed)
        return {};
    if (status == FindingStatus::Mended)
        return mendedConcern(context, point);
    Concern c;
    const int grade = look != nullptr ? look->grade : 1;
    c.monthsAhead = monthsAhead(band, look != nullptr ? look->at : f.finding.opened, context);
    c.holds = holdsOf(context, point, f.finding, grade);
    setNumbers(c, point, grade);
    setCall(c, point);
    tellWhy(c, point);
    return c;
}

} // namespace snugwalk
