// SPDX-License-Identifier: Apache-2.0
// Shake by what is known of a trip's road: measured, told by hand, the rig's habit, or nothing.
#include "road/shake.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace snugwalk {
namespace {

constexpr double defaultRoughness = 2.5;  // m/km, a road of which nothing is known
constexpr double enoughCoverage = 0.5;    // the rest is taken to be like the measured part
constexpr double scaleSpread = 0.5;       // log spread between vehicles: a factor of about 2
constexpr double tenth = 1.2815515655446; // normal quantile of 0.9
constexpr std::size_t middle = 1;         // index of exponent 4

// A part of a road: mean dose by exponent with a range, and consumption with a range.
struct Part {
    double dose = 1.0, low = 1.0, high = 1.0;
    double consumption = 1.0, consumptionLow = 1.0, consumptionHigh = 1.0;
};

struct Tagged {
    RoadClass road;
    double roughness, low, high; // m/km
    double consumption, consumptionLow, consumptionHigh;
};
constexpr std::array tagged = {
    Tagged{RoadClass::Smooth, 2.0, 1.5, 2.7, 1.0, 1.0, 1.25},
    Tagged{RoadClass::Broken, 5.0, 4.0, 8.0, 2.0, 1.25, 2.5},
    Tagged{RoadClass::Gravel, 6.0, 3.5, 10.0, 2.5, 2.0, 2.5},
    Tagged{RoadClass::Washboard, 9.0, 6.0, 14.0, 2.5, 2.0, 2.5},
    Tagged{RoadClass::Track, 12.0, 8.0, 20.0, 2.5, 2.0, 2.5},
};

double doseOf(double roughness, double exponent) { return std::pow(roughness / smoothRoughness, exponent); }

// The range covers both doubts: of the exponent at the middle roughness, and of the roughness at m = 4.
Part partOf(double roughness, double low, double high)
{
    Part part;
    part.dose = doseOf(roughness, shakeExponents[middle]);
    part.low = std::min(part.dose, doseOf(low, shakeExponents[middle]));
    part.high = std::max(part.dose, doseOf(high, shakeExponents[middle]));
    for (const double exponent : shakeExponents) {
        part.low = std::min(part.low, doseOf(roughness, exponent));
        part.high = std::max(part.high, doseOf(roughness, exponent));
    }
    part.consumption = consumptionOf(roughness);
    part.consumptionLow = std::min(part.consumption, consumptionOf(low));
    part.consumptionHigh = std::max(part.consumption, consumptionOf(high));
    return part;
}

// What is taken of a road that nothing was measured on, and on what basis.
std::pair<Part, std::string> unmeasured(RoadClass road, const RoadHabit &habit)
{
    for (const Tagged &row : tagged) {
        if (row.road != road)
            continue;
        Part part = partOf(row.roughness, row.low, row.high);
        part.consumption = row.consumption;
        part.consumptionLow = row.consumptionLow;
        part.consumptionHigh = row.consumptionHigh;
        return {part, "common_practice"};
    }
    if (habit.medianRoughness)
        return {partOf(*habit.medianRoughness, *habit.medianRoughness / 1.5, *habit.medianRoughness * 1.5),
                "fitted"};
    return {partOf(defaultRoughness, 1.4, 3.5), "default"};
}

Part measuredPart(const RoadMeasure &measure)
{
    Part part;
    part.dose = measure.dose[middle];
    const auto [low, high] = std::minmax_element(measure.dose.begin(), measure.dose.end());
    part.low = *low;
    part.high = *high;
    // the tow vehicle's own springs stand between its sensor and what the rig felt
    if (!measure.calibrated || measure.sensorLocation != "rig") {
        const double factor = std::exp(tenth * scaleSpread * shakeExponents[middle]);
        part.low = std::min(part.low, part.dose / factor);
        part.high = std::max(part.high, part.dose * factor);
    }
    part.consumption = part.consumptionLow = part.consumptionHigh = measure.consumption;
    return part;
}

// What a trip's rest may be when too little of it was measured: all smooth, or all as its roughest tenth.
Part widened(Part rest, double p90)
{
    rest.low = std::min(rest.low, 1.0);
    rest.high = std::max(rest.high, doseOf(p90, shakeExponents[middle]));
    rest.consumptionLow = 1.0;
    rest.consumptionHigh = std::max(rest.consumptionHigh, consumptionOf(p90));
    return rest;
}

Part mixed(const Part &a, const Part &b, double shareOfA)
{
    const auto mix = [&](double x, double y) { return x * shareOfA + y * (1.0 - shareOfA); };
    return {mix(a.dose, b.dose),
            mix(a.low, b.low),
            mix(a.high, b.high),
            mix(a.consumption, b.consumption),
            mix(a.consumptionLow, b.consumptionLow),
            mix(a.consumptionHigh, b.consumptionHigh)};
}

} // namespace

double consumptionOf(double roughness)
{
    return roughness < fairRoughness ? 1.0 : roughness <= poorRoughness ? 1.25 : 2.0;
}

RoadHabit roadHabitOf(std::span<const Trip> trips)
{
    std::vector<std::pair<double, double>> ways; // median roughness, analysed metres
    double whole = 0.0;
    for (const Trip &trip : trips) {
        if (!trip.measured)
            continue;
        ways.emplace_back(trip.measured->medianRoughness, trip.measured->analysed.si());
        whole += trip.measured->analysed.si();
    }
    if (ways.empty())
        return {};
    std::sort(ways.begin(), ways.end());
    double passed = 0.0;
    for (const auto &[roughness, way] : ways) {
        passed += way;
        if (passed >= whole / 2)
            return {roughness};
    }
    return {ways.back().first};
}

TripShake shakeOf(const Trip &trip, const RoadHabit &habit)
{
    const Distance driven = trip.summary.length;
    auto [part, basis] = unmeasured(trip.road, habit);
    if (trip.measured) {
        basis = "measured";
        const Part known = measuredPart(*trip.measured);
        const double coverage = driven.si() > 0.0 ? std::min(1.0, trip.measured->analysed / driven) : 1.0;
        part = coverage >= enoughCoverage ? known : mixed(known, widened(part, trip.measured->p90), coverage);
    }
    return {driven,           driven * part.dose,  driven * part.low,    driven * part.high,
            part.consumption, part.consumptionLow, part.consumptionHigh, basis};
}

} // namespace snugwalk
