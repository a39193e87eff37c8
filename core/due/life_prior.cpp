// SPDX-License-Identifier: Apache-2.0
// From an interval to a grid of lives.
#include "due/life_prior.hpp"

#include <algorithm>
#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double logScaleSd = 0.6;       // a factor of 1.8 either way; common practice
constexpr double eventOnlyMonths = 12.0; // what only events call for; common practice
constexpr double leastMonths = 0.01;

} // namespace

const std::array<NormalNode, 7> &sevenNodes()
{
    static constexpr std::array nodes = {
        NormalNode{-3.750439717725742, 0.00054826885597221844}, NormalNode{-2.366759410734541, 0.030757123967586505},
        NormalNode{-1.1544053947399682, 0.24012317860501265},   NormalNode{0.0, 0.45714285714285718},
        NormalNode{1.1544053947399682, 0.24012317860501265},    NormalNode{2.366759410734541, 0.030757123967586505},
        NormalNode{3.750439717725742, 0.00054826885597221844}};
    return nodes;
}

const std::array<NormalNode, 3> &threeNodes()
{
    static constexpr std::array nodes = {NormalNode{-1.7320508075688772, 1.0 / 6.0}, NormalNode{0.0, 2.0 / 3.0},
                                         NormalNode{1.7320508075688772, 1.0 / 6.0}};
    return nodes;
}

double failedAtInterval(Severity severity)
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

ShapeClass shapeClassOf(const Point &point)
{
    if (!point.interval.months && !point.interval.distance)
        return {0.0, 0.25};
    if (!point.drivers.empty() && point.drivers.front() == "vibration")
        return {std::log(2.5), 0.3};
    return {std::log(1.5), 0.35};
}

double nominalMonths(const Point &point, const UsageForecast &usage, double tripMonths)
{
    std::optional<double> months;
    if (point.interval.months && *point.interval.months > 0)
        months = *point.interval.months;
    if (point.interval.distance && *point.interval.distance > Distance() && usage.yearly > Distance()) {
        const double byDistance = 12.0 * (*point.interval.distance / usage.yearly);
        months = std::min(months.value_or(byDistance), byDistance);
    }
    if (!months) {
        const auto &uses = point.interval.uses;
        const bool eachMove = std::any_of(uses.begin(), uses.end(), [](const std::string &use) {
            return use == "every_move" || use == "first_of_day" || use == "first_of_trip" || use == "at_stop";
        });
        months = eachMove ? tripMonths : eventOnlyMonths;
    }
    return std::max(*months, leastMonths);
}

LifeGrid priorGrid(double nominal, double failed, ShapeClass shape)
{
    SNUG_ASSERT(nominal > 0.0 && failed > 0.0 && failed < 1.0);
    LifeGrid grid;
    std::size_t i = 0;
    const double hazard = -std::log1p(-failed);
    for (const NormalNode &s : threeNodes()) {
        const double beta = std::exp(shape.logMean + shape.logSd * s.z);
        const double middle = nominal / std::pow(hazard, 1.0 / beta); // F(nominal) = failed
        for (const NormalNode &z : sevenNodes())
            grid[i++] = {{middle * std::exp(logScaleSd * z.z), beta}, s.weight * z.weight};
    }
    return grid;
}

} // namespace snugwalk
