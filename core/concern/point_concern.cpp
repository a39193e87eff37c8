// SPDX-License-Identifier: Apache-2.0
// From lives and findings to a number a point.
#include "concern/point_concern.hpp"

#include <algorithm>
#include <set>
#include <unordered_map>

#include "base/month.hpp"
#include "catalogue/pick.hpp"

namespace snugwalk {
namespace {

constexpr double mostMonths = 12.0;

double monthsSince(LocalTime then, LocalTime now)
{
    using Days = std::chrono::duration<double, std::chrono::days::period>;
    return std::max(Days(now.instant - then.instant).count() / daysPerMonth, 0.0);
}

// From now: what is left to the next look, and never less than a trip.
double aheadOf(const ConcernContext &context, const DueBand *band, const Mark *look, const PointConcern &c)
{
    if (c.byMoves)
        return context.tripMonths;
    if (look == nullptr)
        return std::max(std::min(c.nominal, mostMonths), context.tripMonths);
    const double left = monthsAhead(band, look->at, context) - monthsSince(look->at, context.now);
    return std::max(left, context.tripMonths);
}

bool stillCounts(const ConcernContext &context, const DueBand *band, const Mark *look)
{
    if (look == nullptr)
        return false;
    if (band != nullptr && band->late)
        return !band->pastDue;
    const bool eachMove = band != nullptr && band->everyMove;
    return monthsSince(look->at, context.now) <= (eachMove ? context.tripMonths : mostMonths);
}

struct Told {
    PointChance chance;
    PointLives lives;
};

void setChance(PointConcern &c, const ConcernContext &context, const Point &point,
               const PointHistory &history)
{
    const LifeGrid unknownAge = priorGrid(c.nominal, c.severity, Failing::Chance);
    const LifeFrame frame{context.clock, c.nominal, c.byMoves, context.now};
    const double ahead = c.byMoves ? 1.0 : c.monthsAhead;
    const auto tell = [&](bool leaveOutLastWork) {
        Told told{{}, livesOf(history, frame, leaveOutLastWork)};
        told.chance = told.lives.birthKnown
                          ? chanceOf(priorGrid(c.nominal, c.severity, failingOf(point)), told.lives, ahead)
                          : chanceOf(unknownAge, told.lives, ahead);
        return told;
    };
    Told told = tell(true);
    if (told.lives.workSinceLook) { // work never counts against a point: the lower of before and after
        Told worked = tell(false);
        if (worked.chance.ahead.value < told.chance.ahead.value)
            told = std::move(worked);
    }
    c.chance = told.chance.ahead;
    c.missed = told.chance.missed;
    c.passes = told.lives.passes;
    c.unlooked = chanceUnlooked(unknownAge, livesOf(PointHistory(), frame, true).age + ahead).value;
    c.basis = c.looked ? "fitted" : "prior";
}

void finish(PointConcern &c)
{
    c.risk = c.consequence * c.chance.value;
    c.number = concernNumber(c.risk);
    c.low = concernNumber(c.consequence * c.chance.low);
    c.high = concernNumber(c.consequence * c.chance.high);
}

// Findings in place of lives: nothing of the point passed.
void takeFindings(PointConcern &c, const ConcernsByPoint &concerns)
{
    const auto [begin, end] = concerns.equal_range(c.point);
    if (begin == end)
        return;
    ChanceRange none{1.0, 1.0, 1.0};
    c.monthsAhead = 0.0;
    for (auto at = begin; at != end; ++at) {
        const Concern &concern = *at->second;
        none.value *= 1.0 - concern.chance;
        none.low *= 1.0 - concern.chanceLow;
        none.high *= 1.0 - concern.chanceHigh;
        c.monthsAhead = std::max(c.monthsAhead, concern.monthsAhead);
    }
    c.chance = {1.0 - none.value, 1.0 - none.low, 1.0 - none.high};
    c.missed = 0.0;
    c.ofFindings = true;
    c.basis = "common_practice";
}

PointConcern concernOfPoint(const ConcernContext &context, const Point &point, const PointHistory &history,
                            const DueBand *band, const ConcernsByPoint &concerns)
{
    PointConcern c;
    const Mark *look = history.lastLook();
    c.point = point.slug;
    c.severity = severityOf(point);
    c.consequence = consequenceOf(point);
    c.looked = look != nullptr;
    const std::optional<double> months = nominalMonths(point, context.usage);
    c.byMoves = !months;
    c.nominal = months.value_or(1.0);
    c.current = stillCounts(context, band, look);
    c.monthsAhead = aheadOf(context, band, look, c);
    setChance(c, context, point, history);
    takeFindings(c, concerns);
    finish(c);
    return c;
}

bool isLeftOut(const PointHistory &history, const DueBand *band)
{
    // neither a look that failed nor work brings back what was not fitted: a look does
    const auto last = std::find_if(history.marks.rbegin(), history.marks.rend(), [](const MarkOnWalk &m) {
        return m.mark->state != MarkState::CouldNotLook;
    });
    if (last != history.marks.rend() && last->mark->state == MarkState::NotFitted)
        return true;
    return band == nullptr && history.lastLook() == nullptr;
}

// Of a newer catalogue, or a point of the owner's: severity III, and says so by its slug.
Point unknownPoint(std::string_view slug)
{
    Point point;
    point.slug = std::string(slug);
    return point;
}

} // namespace

std::vector<PointConcern> pointConcerns(const ConcernContext &context, const std::vector<DueBand> &bands,
                                        const ConcernsByPoint &concerns)
{
    std::unordered_map<std::string_view, const DueBand *> bandOf;
    for (const DueBand &band : bands)
        bandOf[band.point] = &band;
    std::vector<PointConcern> all;
    const auto add = [&](const Point &point) {
        const auto found = bandOf.find(point.slug);
        const DueBand *band = found == bandOf.end() ? nullptr : found->second;
        const PointHistory &history = context.index.of(point.slug);
        const bool open = concerns.count(point.slug) > 0;
        if (open || (isOnRig(point, context.history.rig) && !isLeftOut(history, band)))
            all.push_back(concernOfPoint(context, point, history, band, concerns));
    };
    for (const Point &point : context.catalogue.points())
        add(point);
    std::set<std::string_view> unknown;
    for (const auto &[slug, concern] : concerns) {
        if (context.catalogue.find(slug) == nullptr && unknown.insert(slug).second)
            add(unknownPoint(slug));
    }
    std::sort(all.begin(), all.end(), [](const PointConcern &a, const PointConcern &b) {
        return a.risk != b.risk ? a.risk > b.risk : a.point < b.point;
    });
    for (PointConcern &c : all)
        c.tiedWithFirst = c.high >= all.front().low;
    return all;
}

} // namespace snugwalk
