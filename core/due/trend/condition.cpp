// SPDX-License-Identifier: Apache-2.0
// Least squares, Fieller's set, robust slope, gamma wear.
#include "due/trend/condition.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "base/contract.hpp"
#include "due/special_functions.hpp"

namespace snugwalk {
namespace {

// The middle one, or the mean of the two middle ones.
double median(std::vector<double> values)
{
    SNUG_ASSERT(!values.empty());
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1)
        return *middle;
    return (*middle + *std::max_element(values.begin(), middle)) / 2.0;
}

bool allFinite(std::span<const XY> points)
{
    return std::all_of(points.begin(), points.end(),
                       [](const XY &p) { return std::isfinite(p.x) && std::isfinite(p.y); });
}

} // namespace

std::optional<LineFit> fitLine(std::span<const XY> points)
{
    if (points.size() < 3 || !allFinite(points))
        return std::nullopt;
    LineFit fit;
    fit.n = static_cast<int>(points.size());
    const double n = static_cast<double>(points.size());
    double meanY = 0.0;
    for (const XY &p : points) {
        fit.meanX += p.x / n;
        meanY += p.y / n;
    }
    double sxy = 0.0;
    for (const XY &p : points) {
        fit.sxx += (p.x - fit.meanX) * (p.x - fit.meanX);
        sxy += (p.x - fit.meanX) * (p.y - meanY);
    }
    if (!(fit.sxx > 0.0))
        return std::nullopt;
    fit.slope = sxy / fit.sxx;
    fit.intercept = meanY - fit.slope * fit.meanX;
    double rest = 0.0;
    for (const XY &p : points) {
        const double off = p.y - meanY - fit.slope * (p.x - fit.meanX);
        rest += off * off;
    }
    fit.s = std::sqrt(rest / (n - 2.0));
    fit.slopeSe = fit.s / std::sqrt(fit.sxx);
    return fit;
}

Crossing crossingOf(const LineFit &fit, double limit, double level, CrossingOf what)
{
    SNUG_ASSERT(level > 0.0 && level < 1.0 && fit.n >= 3 && fit.sxx > 0.0);
    Crossing crossing;
    if (fit.slope == 0.0) {
        crossing.g = HUGE_VAL;
        return crossing;
    }
    const double t = studentQuantile(0.5 + level / 2.0, fit.n - 2.0);
    const double room = t * t * fit.s * fit.s;
    crossing.g = room / (fit.slope * fit.slope * fit.sxx);
    crossing.likely = (limit - fit.intercept) / fit.slope;
    if (!(crossing.g < 1.0))
        return crossing;
    // (d + b h)^2 = room (spread + h^2 / sxx), h = x - mean, d = the line at the mean less the limit
    const double d = fit.intercept + fit.slope * fit.meanX - limit;
    const double spread = 1.0 / fit.n + (what == CrossingOf::Reading ? 1.0 : 0.0);
    const double a = fit.slope * fit.slope - room / fit.sxx;
    const double half = d * fit.slope;
    const double root = std::sqrt(std::max(0.0, half * half - a * (d * d - room * spread)));
    crossing.early = fit.meanX + (-half - root) / a;
    crossing.late = fit.meanX + (-half + root) / a;
    return crossing;
}

std::optional<double> medianSlope(std::span<const XY> points)
{
    std::vector<double> slopes;
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (std::size_t j = i + 1; j < points.size(); ++j) {
            if (points[i].x != points[j].x)
                slopes.push_back((points[j].y - points[i].y) / (points[j].x - points[i].x));
        }
    }
    if (slopes.empty())
        return std::nullopt;
    return median(std::move(slopes));
}

std::optional<std::size_t> lonelyOutlier(std::span<const XY> points, double floor)
{
    constexpr double normalDeviation = 1.4826; // of a normal distribution in median deviations
    const auto slope = points.size() < 5 ? std::nullopt : medianSlope(points);
    if (!slope)
        return std::nullopt;
    std::vector<double> off;
    for (const XY &p : points)
        off.push_back(p.y - *slope * p.x);
    const double middle = median(off);
    for (double &o : off)
        o = std::abs(o - middle);
    const double least = std::max(3.0 * normalDeviation * median(off), floor);
    const auto isOut = [&](double o) { return o > least; };
    const auto first = std::find_if(off.begin(), off.end(), isOut);
    if (first == off.end() || std::count_if(off.begin(), off.end(), isOut) > 1)
        return std::nullopt;
    const auto index = static_cast<std::size_t>(first - off.begin());
    return index + 1 == points.size() ? std::nullopt : std::optional(index);
}

double chanceWithin(const GammaWear &wear, double limit, double time)
{
    SNUG_ASSERT(wear.shapeRate > 0.0 && wear.rate > 0.0);
    if (limit <= 0.0)
        return 1.0;
    return time <= 0.0 ? 0.0 : gammaUpper(wear.shapeRate * time, wear.rate * limit);
}

double timeUntil(const GammaWear &wear, double limit, double p)
{
    SNUG_ASSERT(p > 0.0 && p < 1.0);
    if (limit <= 0.0)
        return 0.0;
    double low = 0.0;
    double high = limit * wear.rate / wear.shapeRate;
    while (chanceWithin(wear, limit, high) < p && high < 1e12)
        high *= 2.0;
    for (int i = 0; i < 200; ++i) {
        const double middle = low + (high - low) / 2.0;
        if (middle <= low || middle >= high)
            break;
        (chanceWithin(wear, limit, middle) < p ? low : high) = middle;
    }
    return high;
}

} // namespace snugwalk
