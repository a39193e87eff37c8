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

// Lives for an interval of 1, of which `middle` have failed by then in the middle of each shape.
LifeGrid gridOf(double middle, ShapeBelief shapes)
{
    LifeGrid grid;
    std::size_t i = 0;
    for (const NormalNode &s : threeNodes()) {
        const double shape = std::exp(shapes.mean + shapes.sd * s.z);
        const double scale = 1.0 / std::pow(-std::log1p(-middle), 1.0 / shape);
        for (const NormalNode &z : sevenNodes())
            grid[i++] = {{scale * std::exp(logScaleSd * z.z), shape}, s.weight * z.weight};
    }
    return grid;
}

double failedByOne(const LifeGrid &grid)
{
    double failed = 0.0;
    for (const LifeCell &cell : grid)
        failed += cell.weight * -std::expm1(-cell.life.hazard(1.0));
    return failed;
}

// Halving on the logarithm: more failed in the middle is more failed over all.
LifeGrid unitGrid(double failed, ShapeBelief shapes)
{
    double low = 1e-12;
    double high = 0.9;
    for (int i = 0; i < 200 && low < high; ++i) {
        const double middle = std::sqrt(low * high);
        if (middle <= low || middle >= high)
            break;
        (failedByOne(gridOf(middle, shapes)) < failed ? low : high) = middle;
    }
    return gridOf(low, shapes);
}

constexpr std::array severities = {Severity::I, Severity::II, Severity::III, Severity::IV};
constexpr std::array failings = {Failing::Wear, Failing::Chance, Failing::Fatigue};
using UnitGrids = std::array<std::array<LifeGrid, failings.size()>, severities.size()>;

UnitGrids makeUnitGrids()
{
    UnitGrids grids;
    for (const Severity severity : severities) {
        for (const Failing failing : failings)
            grids[static_cast<std::size_t>(severity)][static_cast<std::size_t>(failing)] =
                unitGrid(failedAtInterval(severity), shapeBelief(failing));
    }
    return grids;
}

} // namespace

const std::array<NormalNode, 7> &sevenNodes()
{
    static constexpr std::array nodes = {NormalNode{-3.750439717725742, 0.00054826885597221844},
                                         NormalNode{-2.366759410734541, 0.030757123967586505},
                                         NormalNode{-1.1544053947399682, 0.24012317860501265},
                                         NormalNode{0.0, 0.45714285714285718},
                                         NormalNode{1.1544053947399682, 0.24012317860501265},
                                         NormalNode{2.366759410734541, 0.030757123967586505},
                                         NormalNode{3.750439717725742, 0.00054826885597221844}};
    return nodes;
}

const std::array<NormalNode, 3> &threeNodes()
{
    static constexpr std::array nodes = {NormalNode{-1.7320508075688772, 1.0 / 6.0},
                                         NormalNode{0.0, 2.0 / 3.0},
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

Failing failingOf(const Point &point)
{
    if (!point.interval.months && !point.interval.distance)
        return Failing::Chance;
    const bool shaken = !point.drivers.empty() && point.drivers.front() == "vibration";
    const bool cracks = !point.defects.empty() && point.defects.front() == "crack";
    return shaken && cracks ? Failing::Fatigue : Failing::Wear;
}

ShapeBelief shapeBelief(Failing failing)
{
    switch (failing) {
    case Failing::Chance:
        return {0.0, 0.25};
    case Failing::Fatigue:
        return {std::log(2.5), 0.3};
    case Failing::Wear:
        break;
    }
    return {std::log(1.5), 0.35};
}

std::optional<double> nominalMonths(const Point &point, const UsageForecast &usage)
{
    std::optional<double> months;
    if (point.interval.months && *point.interval.months > 0)
        months = *point.interval.months;
    if (point.interval.distance && *point.interval.distance > Distance() && usage.yearly > Distance()) {
        const double byDistance = 12.0 * (*point.interval.distance / usage.yearly);
        months = std::min(months.value_or(byDistance), byDistance);
    }
    if (months)
        return std::max(*months, leastMonths);
    const auto &uses = point.interval.uses;
    const bool eachMove = std::any_of(uses.begin(), uses.end(), [](const std::string &use) {
        return use == "every_move" || use == "first_of_day" || use == "first_of_trip" || use == "at_stop";
    });
    return eachMove ? std::nullopt : std::optional(eventOnlyMonths);
}

LifeGrid priorGrid(double nominal, Severity severity, Failing failing)
{
    SNUG_ASSERT(nominal > 0.0);
    static const UnitGrids grids = makeUnitGrids();
    LifeGrid grid = grids[static_cast<std::size_t>(severity)][static_cast<std::size_t>(failing)];
    for (LifeCell &cell : grid)
        cell.life.scale *= nominal;
    return grid;
}

} // namespace snugwalk
