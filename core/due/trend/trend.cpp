// SPDX-License-Identifier: Apache-2.0
// Readings gathered, cut at replacements, and laid on a line.
#include "due/trend/trend.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "due/driven_log.hpp"
#include "due/ordered.hpp"
#include "due/trend/condition.hpp"
#include "due/trend/series.hpp"
#include "due/trend/uncertainty.hpp"
#include "walk/draft.hpp"

namespace snugwalk {
namespace {

constexpr double level = 0.8; // 1 in 10 before, 1 in 10 after, as in due bands
constexpr double daysPerYear = 365.25;
constexpr double horizonYears = 30.0; // nothing on a rig is known further ahead; common practice
constexpr Distance horizonDistance = kilometres(1e6);

std::vector<const Mark *> marksOfPoint(const RigHistory &history, const std::string &point, Instant now)
{
    std::vector<const Mark *> marks;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            if (mark.point == point && mark.at.instant <= now && !mark.readings.empty())
                marks.push_back(&mark);
        }
    }
    std::sort(marks.begin(), marks.end(), [](const Mark *a, const Mark *b) { return isBefore(*a, *b); });
    return marks;
}

// Series by reading and place; a reading of another dimension than the catalogue's is none of it.
std::vector<Trend> gathered(const Point *point, const RigHistory &history, const std::string &slug,
                            Instant now)
{
    std::map<std::pair<std::string, std::string>, Trend> series;
    for (const Mark *mark : marksOfPoint(history, slug, now)) {
        for (const Reading &r : mark->readings) {
            const ReadingSpec *spec = point != nullptr ? point->reading(r.slug) : nullptr;
            Trend &trend = series[{r.slug, r.place}];
            if (trend.points.empty()) {
                trend.point = slug;
                trend.reading = r.slug;
                trend.place = r.place;
                trend.dimension = spec != nullptr ? spec->dimension : r.dimension;
            }
            if (r.dimension == trend.dimension && std::isfinite(r.si))
                trend.points.push_back({mark->at, r.si, r.unit, mark->walk});
        }
    }
    std::vector<Trend> out;
    for (auto &[name, trend] : series) {
        if (!trend.points.empty())
            out.push_back(std::move(trend));
    }
    return out;
}

void cutAt(Trend &trend, std::vector<TrendPoint>::iterator first)
{
    trend.before.insert(trend.before.end(), trend.points.begin(), first);
    trend.points.erase(trend.points.begin(), first);
}

void cutAtReplacement(Trend &trend, const std::vector<Replacement> &replacements, Instant now)
{
    const Replacement *last = lastReplacement(replacements, trend.point, trend.place, now);
    if (last == nullptr)
        return;
    cutAt(trend, std::find_if(trend.points.begin(), trend.points.end(),
                              [&](const TrendPoint &p) { return p.at.instant > last->at; }));
}

// A rise that a tire change explains starts a new series; one that nothing explains is a question.
void judgeRises(Trend &trend, const ReadingSpec &spec, const RigHistory &history)
{
    std::size_t then = 0;
    for (std::size_t i = 1; i < trend.points.size(); ++i) {
        const TrendPoint &before = trend.points[then];
        const TrendPoint &read = trend.points[i];
        if (read.leftOut)
            continue;
        const bool rises = isRise(spec, before.si, read.si);
        if (rises && tireChangedBetween(history, trend.point, before.at.instant, read.at.instant)) {
            cutAt(trend, trend.points.begin() + static_cast<std::ptrdiff_t>(i));
            i = 0;
        } else if (rises) {
            trend.note = "ask";
        }
        then = i;
    }
}

// The limit that a slope leads to, or nothing.
std::optional<double> limitAhead(const Trend &trend, double slope)
{
    return slope < 0.0 ? trend.lowSi : slope > 0.0 ? trend.highSi : std::nullopt;
}

bool isPast(const Trend &trend, double si)
{
    return (trend.lowSi && si < *trend.lowSi) || (trend.highSi && si > *trend.highSi);
}

// Slope and crossing along one axis, in that axis' unit from the first reading.
struct Line {
    std::optional<double> slope;
    Crossing crossing;
    std::string note;
};

Line lineThrough(const Trend &trend, const std::vector<XY> &kept, double uncertainty)
{
    Line line;
    auto fit = fitLine(kept);
    if (!fit) {
        line.note = "too_few";
        return line;
    }
    line.slope = fit->slope;
    const auto limit = limitAhead(trend, fit->slope);
    if (!limit) {
        line.note = trend.lowSi || trend.highSi ? "not_toward_limit" : "no_limit";
        return line;
    }
    fit->s = std::max(fit->s, uncertainty);
    line.crossing = crossingOf(*fit, *limit, level);
    if (!line.crossing.early)
        line.note = "not_determined";
    return line;
}

std::vector<XY> along(const Trend &trend, bool distance)
{
    std::vector<XY> xy;
    for (const TrendPoint &p : trend.points) {
        if (p.leftOut)
            continue;
        const auto days = std::chrono::duration<double, std::chrono::days::period>(
            p.at.instant - trend.points.front().at.instant);
        const Distance metres =
            p.driven.value_or(Distance()) - trend.points.front().driven.value_or(Distance());
        xy.push_back({distance ? metres.si() : days.count(), p.si});
    }
    return xy;
}

void addDates(Trend &trend, double uncertainty, LocalTime now)
{
    const Line line = lineThrough(trend, along(trend, false), uncertainty);
    if (line.slope)
        trend.perYearSi = *line.slope * daysPerYear;
    if (!trend.note.empty())
        return;
    trend.note = line.note;
    if (!line.note.empty())
        return;
    const CivilDate first = civilDate(trend.points.front().at);
    const double horizon =
        static_cast<double>(daysBetween(first, civilDate(now))) + horizonYears * daysPerYear;
    const auto date = [&](const std::optional<double> &day) -> std::optional<CivilDate> {
        if (!day || !(*day < horizon) || *day < -horizon)
            return std::nullopt;
        return addDays(first, std::lround(*day));
    };
    trend.early = date(line.crossing.early);
    trend.likely = date(line.crossing.likely);
    trend.late = date(line.crossing.late);
    if (!trend.likely)
        trend.note = "far_off";
}

void addDistances(Trend &trend, double uncertainty, Distance drivenByNow)
{
    const Distance first = trend.points.front().driven.value_or(Distance());
    if (!(trend.points.back().driven.value_or(Distance()) > first))
        return;
    const Line line = lineThrough(trend, along(trend, true), uncertainty);
    if (!line.slope)
        return;
    DistanceTrend by;
    by.perMetreSi = *line.slope;
    by.note = trend.note == "ask" || trend.note == "past_limit" ? trend.note : line.note;
    if (by.note.empty()) {
        const auto left = [&](const std::optional<double> &metres) -> std::optional<Distance> {
            if (!metres || !(*metres < horizonDistance.si()))
                return std::nullopt;
            return first + Distance::fromSi(*metres) - drivenByNow;
        };
        by.early = left(line.crossing.early);
        by.likely = left(line.crossing.likely);
        by.late = left(line.crossing.late);
        if (!by.likely)
            by.note = "far_off";
    }
    trend.byDistance = std::move(by);
}

void addDriven(Trend &trend, const DrivenLog &driven)
{
    for (std::vector<TrendPoint> *part : {&trend.points, &trend.before}) {
        for (TrendPoint &p : *part)
            p.driven = driven.at(p.at.instant);
    }
}

void addLimits(Trend &trend, const ReadingSpec &spec, const Point &point, const Rig &rig)
{
    const Limits limits = limitsFor(spec, point, rig);
    trend.lowSi = limits.lowSi;
    trend.highSi = limits.highSi;
    trend.basis = limits.basis;
}

void layLine(Trend &trend, const ReadingSpec *spec, const RigHistory &history, const DrivenLog &driven,
             LocalTime now)
{
    const double uncertainty = readingUncertainty(trend.dimension, trend.points.back().si);
    if (const auto lonely = lonelyOutlier(along(trend, false), 3.0 * uncertainty))
        trend.points[*lonely].leftOut = true;
    if (spec != nullptr)
        judgeRises(trend, *spec, history);
    if (!driven.isEmpty())
        addDriven(trend, driven);
    if (trend.note.empty() && isPast(trend, trend.points.back().si))
        trend.note = "past_limit";
    addDates(trend, uncertainty, now);
    addDistances(trend, uncertainty, driven.at(now.instant));
}

} // namespace

std::vector<Trend> trendsOf(const Catalogue &catalogue, const RigHistory &history, const std::string &point,
                            LocalTime now)
{
    const Point *known = catalogue.find(point);
    const auto replacements = replacementsOf(history);
    const DrivenLog driven(history);
    std::vector<Trend> trends = gathered(known, history, point, now.instant);
    for (Trend &trend : trends) {
        const ReadingSpec *spec = known != nullptr ? known->reading(trend.reading) : nullptr;
        if (spec != nullptr)
            addLimits(trend, *spec, *known, history.rig);
        cutAtReplacement(trend, replacements, now.instant);
        if (trend.points.empty())
            trend.note = "too_few"; // replaced, and not read since
        else
            layLine(trend, spec, history, driven, now);
    }
    return trends;
}

} // namespace snugwalk
