// SPDX-License-Identifier: Apache-2.0
// Months, distance, happenings, the wheel ladder, and never having been looked at.
#include "due/rules.hpp"

#include <algorithm>
#include <cmath>

#include "due/aging/exposure.hpp"
#include "due/events.hpp"
#include "due/rule/pass_guard.hpp"
#include "due/trend/trend.hpp"

namespace snugwalk {
namespace {

constexpr double hundredYears = 36'525.0;

std::string basisOf(const Point &point) { return point.sourceTag == "P" ? "published" : "common_practice"; }

std::string basisOf(const UsageForecast &usage)
{
    const bool own = usage.level == UsageLevel::Season || usage.level == UsageLevel::Trips;
    return own ? "fitted" : "prior";
}

Firing on(CivilDate date, std::string rule, std::string basis)
{
    return {date, date, date, std::move(rule), std::move(basis)};
}

CivilDate after(CivilDate today, const std::optional<double> &wait)
{
    return addDays(today,
                   static_cast<long long>(std::floor(std::min(wait.value_or(hundredYears), hundredYears))));
}

// The interval by the calendar, times what data may make of it.
std::optional<Firing> months(const Point &point, const PointClock &clock, double most, DueBand &band)
{
    if (!point.interval.months)
        return std::nullopt;
    const int count = *point.interval.months;
    if (count <= 0) {
        band.reasons.push_back({"limit_left_out", "months", std::nullopt, Dimension::Count});
        return std::nullopt;
    }
    if (!clock.from)
        return std::nullopt;
    const CivilDate start = civilDate(*clock.from);
    const auto kept = static_cast<long long>(std::floor(clock.keptDays));
    band.reasons.push_back({"months", formatDate(start), static_cast<double>(count), Dimension::Count});
    const auto longer = static_cast<long long>(
        std::floor((most - 1.0) * static_cast<double>(daysBetween(start, addMonths(start, count)))));
    return on(addDays(addMonths(start, count), longer - kept), "months", basisOf(point));
}

// Dates at which `left` more will have been driven by `early`/`likely`, and `leftLate` by `late`.
std::optional<Firing> ahead(const DueContext &c, Distance left, Distance leftLate, std::string rule)
{
    const CivilDate today = civilDate(c.now);
    const auto early = daysToDrive(c.usage, left, today, 0.1);
    if (!early)
        return std::nullopt;
    const auto likely = daysToDrive(c.usage, left, today, 0.5);
    const auto late = daysToDrive(c.usage, leftLate, today, 0.9);
    return Firing{after(today, early), after(today, likely), after(today, late), std::move(rule),
                  basisOf(c.usage)};
}

std::optional<Firing> distance(const DueContext &c, const Point &point, const PointClock &clock, double most,
                               DueBand &band)
{
    if (!point.interval.distance)
        return std::nullopt;
    const Distance limit = *point.interval.distance * most;
    if (limit <= Distance()) {
        band.reasons.push_back({"limit_left_out", "distance", std::nullopt, Dimension::Count});
        return std::nullopt;
    }
    if (!clock.from)
        return std::nullopt;
    const Instant from = clock.from->instant;
    const Distance used = clock.keptDistance + distanceBetween(c.history, from, c.now.instant);
    band.atDistance = *point.interval.distance - used;
    band.reasons.push_back(reasonWith("distance_used", used));
    band.reasons.push_back(reasonWith("usage", c.usage.yearly, std::string(slug(c.usage.level))));
    if (used < limit)
        return ahead(c, limit - used, limit - used, "distance");
    const auto reached = reachedAt(c.history, from, limit - clock.keptDistance, c.now);
    return on(civilDate(reached.value_or(*clock.from)), "distance", basisOf(point));
}

std::optional<Firing> ladder(const DueContext &c, const Point &point, const PointClock &clock, DueBand &band)
{
    const auto rung = openRung(c.catalogue, c.history, point, clock, c.now);
    if (!rung)
        return std::nullopt;
    const Instant fitted = rung->fitted.instant;
    const Distance driven = distanceBetween(c.history, fitted, c.now.instant);
    const Distance left = rung->from - driven;
    band.atDistance = band.atDistance ? std::min(*band.atDistance, left) : left;
    band.reasons.push_back(reasonWith("wheel_fitted", rung->from, formatDate(civilDate(rung->fitted))));
    const std::string rule = "event:wheel_fitted";
    if (left > Distance()) {
        // What is driven makes it due, whatever the forecast makes of so short a way: not yet, so not today.
        auto firing = ahead(c, left, rung->to - driven, rule);
        const CivilDate tomorrow = addDays(civilDate(c.now), 1);
        if (firing)
            *firing = {std::max(firing->early, tomorrow), std::max(firing->likely, tomorrow),
                       std::max(firing->late, tomorrow), rule, firing->basis};
        return firing;
    }
    const auto reached = reachedAt(c.history, fitted, rung->from, c.now);
    Firing firing = on(civilDate(reached.value_or(rung->fitted)), rule, basisOf(point));
    if (const auto past = reachedAt(c.history, fitted, rung->to, c.now))
        firing.late = civilDate(*past);
    else
        firing.late = after(civilDate(c.now), daysToDrive(c.usage, rung->to - driven, civilDate(c.now), 0.9));
    return firing;
}

std::optional<Firing> happening(const DueContext &c, const Point &point, const PointClock &clock,
                                DueBand &band)
{
    const Happening *open = unanswered(c.catalogue, c.history, point, clock, c.now);
    if (open == nullptr)
        return std::nullopt;
    const CivilDate date = civilDate(open->at);
    band.reasons.push_back({"event", open->kind, std::nullopt, Dimension::Count});
    return on(date, "event:" + open->kind, basisOf(point));
}

CivilDate dateOf(double day)
{
    return std::chrono::sys_days(std::chrono::days(static_cast<long long>(std::floor(day + 1e-6))));
}

// Where the line through a reading's dates meets the limit.
std::optional<Firing> wornByDate(const Trend &trend)
{
    if (!trend.early || !trend.likely)
        return std::nullopt;
    return Firing{*trend.early, *trend.likely, trend.late.value_or(addDays(*trend.likely, 36'525)),
                  "reading:" + trend.reading, "measured"};
}

// The same along the distance: as far as is driven by the forecast, or by the plan while there is one.
std::optional<Firing> wornByDistance(DueContext &c, const Trend &trend)
{
    if (!trend.byDistance || !trend.byDistance->early || !trend.byDistance->likely)
        return std::nullopt;
    Causes smooth; // distance is distance: readings were laid on the line by what was driven
    smooth.drivers[static_cast<std::size_t>(AgeDriver::Shake)] = false;
    const DueLines::UseCases &cases = c.lines.use(smooth);
    const auto day = [&](UseCase which, const std::optional<Distance> &left) {
        return left ? cases[static_cast<std::size_t>(which)].dayWhen(momentOf(c.now), left->si())
                    : std::nullopt;
    };
    const auto likely = day(UseCase::Likely, trend.byDistance->likely);
    if (!likely)
        return std::nullopt;
    const double early = day(UseCase::Much, trend.byDistance->early).value_or(*likely);
    const double late = day(UseCase::Little, trend.byDistance->late).value_or(*likely + hundredYears);
    return Firing{dateOf(std::min(early, *likely)), dateOf(*likely), dateOf(std::max(late, *likely)),
                  "reading:" + trend.reading, "measured"};
}

std::optional<Firing> sooner(std::optional<Firing> a, const std::optional<Firing> &b)
{
    if (!a || !b)
        return a ? a : b;
    a->early = std::min(a->early, b->early);
    a->likely = std::min(a->likely, b->likely);
    a->late = std::min(a->late, b->late);
    return a;
}

// Where readings are heading: the first of them to meet its limit. What wears by distance goes by dates
// and by distance, whichever meets it first.
std::optional<Firing> worn(DueContext &c, const Point &point, DueBand &band)
{
    std::optional<Firing> first;
    const auto &marks = c.index.of(point.slug).marks;
    const auto read = std::count_if(marks.begin(), marks.end(),
                                    [](const MarkOnWalk &m) { return !m.mark->readings.empty(); });
    if (read < 3) // no line under three readings
        return first;
    const bool driven =
        std::find(point.drivers.begin(), point.drivers.end(), "distance") != point.drivers.end();
    for (const Trend &trend : trendsOf(c.catalogue, c.history, point.slug, c.now)) {
        auto firing = wornByDate(trend);
        if (driven)
            firing = sooner(std::move(firing), wornByDistance(c, trend));
        if (!firing || (first && first->likely <= firing->likely))
            continue;
        band.reasons.push_back({"reading", trend.reading, std::nullopt, Dimension::Count});
        first = std::move(firing);
    }
    return first;
}

std::optional<Firing> life(DueContext &c, const Point &point)
{
    const PointHistory &history = c.index.of(point.slug);
    const LikeLives like = c.like.of(point);
    const auto rule = LifeRule::make(c.lines, point, history, {}, like);
    auto likely = rule ? rule->dayBy(0.5) : std::nullopt;
    if (!likely)
        return std::nullopt;
    const double never = *likely + hundredYears;
    const double late = rule->dayBy(0.9).value_or(never);
    const double most = latestAfterPass(c.lines, point, history, like, *rule, *likely).value_or(*likely);
    likely = std::min(*likely, most);
    const std::string slug = rule->ruleAt(*likely);
    const bool driven = slug == "distance" && basisOf(c.usage) == "fitted";
    return Firing{dateOf(std::min(rule->dayBy(0.1).value_or(*likely), *likely)), dateOf(*likely),
                  dateOf(late), slug, rule->isFitted() || driven ? "fitted" : "prior"};
}

} // namespace

double mostLengthening(const RigHistory &history, const Point &point)
{
    const auto &own = history.own.every;
    const bool set = point.own || std::any_of(own.begin(), own.end(), [&](const OwnInterval &every) {
                         return every.point == point.slug;
                     });
    return set || point.isRoadOrFire() || point.isPublished() ? 1.0 : 1.5;
}

std::vector<Firing> firings(DueContext &context, const Point &point, const PointClock &clock, DueBand &band)
{
    std::vector<Firing> all;
    const auto add = [&](std::optional<Firing> firing) {
        if (firing)
            all.push_back(std::move(*firing));
    };
    add(happening(context, point, clock, band));
    const auto climbed = ladder(context, point, clock, band);
    add(climbed);
    const double most = mostLengthening(context.history, point);
    add(months(point, clock, most, band));
    add(distance(context, point, clock, most, band));
    add(life(context, point));
    add(worn(context, point, band));
    // What is looked at each move needs no date for its first look.
    const bool onlyEachMove = band.everyMove && !point.interval.months && !point.interval.distance;
    if (!clock.from && !onlyEachMove) {
        band.reasons.push_back({"never_looked", {}, std::nullopt, Dimension::Count});
        if (!climbed) // the nuts of a fitted wheel were tightened then
            add(on(civilDate(context.now), "never_looked", basisOf(point)));
    }
    return all;
}

std::optional<CivilDate> likelyAfterLook(const DueContext &context, const Point &point, LocalTime looked)
{
    PointClock clock;
    clock.from = looked;
    DueBand unused;
    const auto byMonths = months(point, clock, 1.0, unused);
    const auto byDistance = distance(context, point, clock, 1.0, unused);
    if (byMonths && byDistance)
        return std::min(byMonths->likely, byDistance->likely);
    if (byMonths)
        return byMonths->likely;
    return byDistance ? std::optional(byDistance->likely) : std::nullopt;
}

} // namespace snugwalk
