// SPDX-License-Identifier: Apache-2.0
// How far a trip shook the rig, as a distance of smooth road, and how fast it used up intervals of distance.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>

#include "trip/trip.hpp"

namespace snugwalk {

/// The roughness to which shake is related: a smooth road, m/km.
inline constexpr double smoothRoughness = 2.0;
/// Exponents carried in parallel: nobody knows the right one, so the range over them is told.
inline constexpr std::array<double, 3> shakeExponents = {2.0, 4.0, 6.0};

/// Where a road is no longer smooth, and where it is rough: 95 and 170 inches a mile as m/km, common
/// practice.
inline constexpr double fairRoughness = 95.0 * 0.0254 / 1.609344;
inline constexpr double poorRoughness = 170.0 * 0.0254 / 1.609344;

/// By how much a kilometre of this roughness uses up an interval of distance: 1 on a smooth road, 1.25 up
/// to a rough one, 2 above. Common practice, no source.
[[nodiscard]] double consumptionOf(double roughness);

/// What the rig's own measured trips say about its roads.
struct RoadHabit {
    std::optional<double> medianRoughness; ///< m/km; nothing before a trip was measured
};
[[nodiscard]] RoadHabit roadHabitOf(std::span<const Trip> trips);

struct TripShake {
    Distance driven;
    Distance equivalent; ///< kilometres of smooth road with the same fourth-power dose
    Distance low, high;  ///< over the exponents, and over what was not analysed
    double consumption = 1.0;
    double consumptionLow = 1.0, consumptionHigh = 1.0;
    std::string basis; ///< `measured`, `common_practice` (class told by hand), `fitted` (habit), `default`
};

/// The shake of one trip: dose of (roughness / 2 m/km)^m over the way. What was measured counts as
/// measured; the rest of a trip counts as the measured part where that is half of it or more, else by the
/// class told by hand, the rig's own median, or 2.5 m/km, and ranges from all smooth to all as rough as
/// the roughest tenth measured.
///
/// Source:   linear damage [MINER-1945]; roughness of road classes [SAYERS-1986], from memory, its
///           ranges for paved, damaged and unpaved roads; exponent 4, consumption: common practice
/// Accuracy: order of magnitude; an index not calibrated adds a factor exp(1.28 * 0.5 * m) either way
/// Tests:    tests/unit/road/tst_shake.cpp, tests/property/road/tst_road_laws.cpp
[[nodiscard]] TripShake shakeOf(const Trip &trip, const RoadHabit &habit);

} // namespace snugwalk
