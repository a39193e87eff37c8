// SPDX-License-Identifier: Apache-2.0
// A 0/1 knapsack over tape lines: weight is time, worth is expected harm.
#include "round/budget.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "base/month.hpp"
#include "due/usage.hpp"

namespace snugwalk {
namespace {

constexpr double shape = 1.5;            // prior shape of the due bands
constexpr double longestInterval = 60.0; // months, of points that only an event makes due
constexpr double ageNeverLooked = 1.0;   // intervals, common practice
constexpr double ageAfterEvent = 2.0;    // intervals, common practice
constexpr double stepsPerMinute = 10.0;

double priorAtInterval(Severity severity)
{
    switch (severity) {
    case Severity::I:
        return 0.01;
    case Severity::II:
        return 0.03;
    case Severity::III:
        return 0.10;
    case Severity::IV:
        return 0.25;
    }
    return 0.10;
}

// F(age) with F(1) = p, age in nominal intervals.
double failedBy(double p, double age)
{
    return -std::expm1(std::log1p(-p) * std::pow(std::max(age, 0.0), shape));
}

// The nominal interval in days: months or distance, whichever comes first at the rig's usage.
double intervalDays(const Point &point, Distance yearly)
{
    double days = longestInterval * daysPerMonth;
    if (point.interval.months)
        days = std::min(days, *point.interval.months * daysPerMonth);
    if (point.interval.distance && yearly > Distance())
        days = std::min(days, *point.interval.distance / yearly * 365.25);
    return std::max(days, 1.0);
}

double ageOf(const Standing &standing, const DueBand *band, const Point &point)
{
    const double interval = intervalDays(point, forecastUsage(standing.history, standing.now).yearly);
    const double trip = tripDays(standing.history, standing.now) / interval;
    if (band == nullptr)
        return trip; // nothing makes it due now
    if (band->rule.starts_with("event:") && band->dueNow)
        return ageAfterEvent + trip;
    if (!band->lastLook)
        return ageNeverLooked + trip;
    const auto days = static_cast<double>(daysBetween(*band->lastLook, civilDate(standing.now)));
    return std::max(days, 0.0) / interval + trip;
}

std::set<std::string, std::less<>> ownPoints(const Catalogue &catalogue, std::string_view kindSlug)
{
    std::vector<std::string> sets = {"every_move", "first_of_day", "first_of_trip"};
    if (const WalkKind *kind = catalogue.kind(kindSlug))
        sets.insert(sets.end(), kind->sets.begin(), kind->sets.end());
    std::set<std::string, std::less<>> points;
    for (const std::string &set : sets) {
        for (const TapeLine &line : catalogue.set(set))
            points.insert(line.points.begin(), line.points.end());
    }
    return points;
}

struct Weighed {
    std::size_t steps = 0;
    double minutes = 0.0;
    double harm = 0.0;
};

Weighed weigh(const Catalogue &catalogue, const Standing &standing, const TapeLine &line)
{
    Weighed w;
    for (const std::string &slug : line.points) {
        if (const Point *point = catalogue.find(slug)) {
            w.minutes += point->minutes;
            w.harm += harmOf(catalogue, standing, *point).harm;
        }
    }
    // a hair under a step is rounding of the sum, not time
    w.steps = static_cast<std::size_t>(std::max(std::ceil(w.minutes * stepsPerMinute - 1e-6), 1.0));
    return w;
}

// Which lines to keep: best[s] is the most harm that fits into s steps.
std::vector<bool> bestSet(const std::vector<Weighed> &lines, std::size_t room)
{
    std::vector<double> best(room + 1, 0.0);
    std::vector<std::vector<bool>> taken(lines.size(), std::vector<bool>(room + 1, false));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        for (std::size_t s = room; s >= lines[i].steps && s > 0; --s) {
            const double with = best[s - lines[i].steps] + lines[i].harm;
            if (with > best[s]) {
                best[s] = with;
                taken[i][s] = true;
            }
        }
    }
    std::vector<bool> kept(lines.size(), false);
    std::size_t s = room;
    for (std::size_t i = lines.size(); i > 0; --i) {
        kept[i - 1] = taken[i - 1][s];
        if (kept[i - 1])
            s -= lines[i - 1].steps;
    }
    return kept;
}

} // namespace

PointHarm harmOf(const Catalogue &catalogue, const Standing &standing, const Point &point)
{
    const double p = priorAtInterval(severityOf(point));
    const DueBand *band = findBand(standing.bands, point.slug);
    double sound = 1.0 - failedBy(p, ageOf(standing, band, point));
    if (band != nullptr && band->everyMove)
        sound = std::min(sound, 1.0 - p);
    for (const OpenFinding &open : standing.state.open) {
        if (open.point == point.slug && catalogue.find(open.point) != nullptr)
            sound *= 1.0 - open.concern.chance;
    }
    const double consequence = consequenceOf(point);
    return {consequence, 1.0 - sound, consequence * (1.0 - sound)};
}

BudgetedTape fitBudget(const Catalogue &catalogue, const Standing &standing, std::string_view kind,
                       const std::vector<TapeLine> &tape, double minutes)
{
    std::vector<Weighed> lines;
    std::size_t all = 0;
    for (const TapeLine &line : tape) {
        lines.push_back(weigh(catalogue, standing, line));
        all += lines.back().steps;
    }
    const double steps = std::floor(std::max(minutes, 0.0) * stepsPerMinute + 1e-6);
    const bool holdsAll = steps >= static_cast<double>(all);
    const std::vector<bool> kept =
        holdsAll ? std::vector<bool>(tape.size(), true) : bestSet(lines, static_cast<std::size_t>(steps));
    const auto own = ownPoints(catalogue, kind);
    BudgetedTape fitted;
    for (std::size_t i = 0; i < tape.size(); ++i) {
        if (kept[i]) {
            fitted.tape.push_back(tape[i]);
            fitted.minutes += lines[i].minutes;
            fitted.harm += lines[i].harm;
            continue;
        }
        for (const std::string &slug : tape[i].points) {
            const Point *point = catalogue.find(slug);
            if (point != nullptr)
                fitted.leftOut.push_back({slug, harmOf(catalogue, standing, *point).harm, point->minutes,
                                          isOnHoldList(*point) && own.count(slug) > 0});
        }
    }
    std::stable_sort(fitted.leftOut.begin(), fitted.leftOut.end(), [](const LeftOut &a, const LeftOut &b) {
        return a.ownHoldList != b.ownHoldList ? a.ownHoldList : a.harm > b.harm;
    });
    return fitted;
}

} // namespace snugwalk
