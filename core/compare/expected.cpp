// SPDX-License-Identifier: Apache-2.0
// By the reading's own slope, else by the point's interval.
#include "compare/expected.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "base/month.hpp"
#include "due/trend/condition.hpp"

namespace snugwalk {
namespace {

constexpr double intervalsToRipen = 2.0;

double daysFrom(Instant a, Instant b)
{
    return std::chrono::duration<double, std::chrono::days::period>(b - a).count();
}

bool wearsByDistance(const Point &point)
{
    return point.interval.distance.has_value() ||
           std::find(point.drivers.begin(), point.drivers.end(), "distance") != point.drivers.end();
}

std::optional<Expectation> bySlope(const Point &point, const DrivenLog &driven, const WearQuestion &q)
{
    if (q.earlier.size() < 3)
        return std::nullopt;
    const Instant first = q.earlier.front().at;
    const bool byDistance = wearsByDistance(point) && driven.between(first, q.earlier.back().at) > Distance();
    std::vector<XY> points;
    points.reserve(q.earlier.size());
    for (const ReadAt &r : q.earlier)
        points.push_back({byDistance ? driven.between(first, r.at).si() : daysFrom(first, r.at), r.si});
    const auto fit = fitLine(points);
    if (!fit)
        return std::nullopt;
    const double passed = byDistance ? driven.between(q.then.at, q.now).si() : daysFrom(q.then.at, q.now);
    const double change = fit->slope * passed;
    const bool backwards = change * (q.limitSi - q.then.si) < 0.0;
    const double slopeDoubt = std::max(fit->slopeSe, q.uncertainty / std::sqrt(fit->sxx));
    return Expectation{backwards ? 0.0 : change, slopeDoubt * passed,
                       byDistance ? "slope_distance" : "slope_days"};
}

std::optional<Expectation> byInterval(const Point &point, const DrivenLog &driven, const WearQuestion &q)
{
    std::optional<double> byDays;
    if (point.interval.months && *point.interval.months > 0)
        byDays = daysFrom(q.then.at, q.now) / (*point.interval.months * daysPerMonth);
    std::optional<double> byDistance;
    if (point.interval.distance && *point.interval.distance > Distance() && !driven.isEmpty())
        byDistance = driven.between(q.then.at, q.now) / *point.interval.distance;
    if (!byDays && !byDistance)
        return std::nullopt;
    const double intervals = std::max(byDays.value_or(0.0), byDistance.value_or(0.0));
    const double share = std::clamp(intervals / intervalsToRipen, 0.0, 1.0);
    const bool driving = byDistance && byDistance.value_or(0.0) > byDays.value_or(0.0);
    return Expectation{(q.limitSi - q.then.si) * share, 0.0, driving ? "interval_distance" : "interval_days"};
}

} // namespace

std::optional<Expectation> expectedChange(const Point &point, const DrivenLog &driven, const WearQuestion &q)
{
    auto expectation = bySlope(point, driven, q);
    return expectation ? expectation : byInterval(point, driven, q);
}

} // namespace snugwalk
