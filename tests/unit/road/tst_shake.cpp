// SPDX-License-Identifier: Apache-2.0
// Shake of trips that were measured, told by hand, or neither. [MINER-1945], [SAYERS-1986]; the factors of
// consumption are common practice, no source: 1, 0.8, 0.5, gravel 0.4.
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/shake.hpp"

using namespace snugwalk;

namespace {

Trip tripOf(double km, RoadClass road = RoadClass::Unknown)
{
    Trip trip;
    trip.summary.length = kilometres(km);
    trip.road = road;
    return trip;
}

Trip measuredTrip(double km, double analysedKm, double roughness)
{
    Trip trip = tripOf(km);
    const double ratio = roughness / 2.0;
    trip.measured = RoadMeasure{kilometres(analysedKm),
                                roughness,
                                roughness * 2,
                                {std::pow(ratio, 2), std::pow(ratio, 4), std::pow(ratio, 6)},
                                consumptionOf(roughness),
                                "rig",
                                true,
                                false,
                                {},
                                {}};
    return trip;
}

} // namespace

TEST_CASE("of a road nothing is known of, 2.5 m/km is taken and said")
{
    const TripShake shake = shakeOf(tripOf(100), {});
    CHECK(shake.basis == "default");
    CHECK(shake.driven == kilometres(100));
    CHECK(std::abs(shake.equivalent.si() - 100e3 * std::pow(1.25, 4)) < 1e-6);
    CHECK(shake.low <= shake.equivalent);
    CHECK(shake.high.si() >= 100e3 * std::pow(1.25, 6));
    CHECK(shake.consumption == 1.25);
    CHECK(shake.consumptionLow == 1.0);
    CHECK(shake.consumptionHigh == 2.0);
}

TEST_CASE("the rig's own median, by distance, stands in for what was not measured")
{
    const std::vector<Trip> trips = {measuredTrip(10, 10, 6.0), measuredTrip(100, 90, 3.0), tripOf(500)};
    const RoadHabit habit = roadHabitOf(trips);
    REQUIRE(habit.medianRoughness);
    CHECK(*habit.medianRoughness == 3.0);
    CHECK(!roadHabitOf({}).medianRoughness);
    const TripShake shake = shakeOf(trips[2], habit);
    CHECK(shake.basis == "fitted");
    CHECK(std::abs(shake.equivalent / kilometres(500) - std::pow(1.5, 4)) < 1e-9);
}

TEST_CASE("a class told by hand comes before the habit")
{
    const RoadHabit habit{3.0};
    double before = 0.0;
    for (const RoadClass road :
         {RoadClass::Smooth, RoadClass::Broken, RoadClass::Gravel, RoadClass::Washboard, RoadClass::Track}) {
        const TripShake shake = shakeOf(tripOf(10, road), habit);
        CHECK(shake.basis == "common_practice");
        CHECK(shake.equivalent.si() > before);
        CHECK(shake.low <= shake.equivalent);
        CHECK(shake.equivalent <= shake.high);
        CHECK(shake.consumptionLow <= shake.consumption);
        CHECK(shake.consumption <= shake.consumptionHigh);
        before = shake.equivalent.si();
    }
    CHECK(shakeOf(tripOf(10, RoadClass::Smooth), habit).equivalent == kilometres(10));
    CHECK(shakeOf(tripOf(10, RoadClass::Smooth), habit).consumption == 1.0);
    CHECK(shakeOf(tripOf(10, RoadClass::Gravel), habit).consumption == 2.5);
}

TEST_CASE("distance is used up additively: 1,200 mi at 0.4 and 1,800 mi at 0.8 are 3,000 and 2,250")
{
    const TripShake gravel = shakeOf(tripOf(1200 * 1.609344, RoadClass::Gravel), {});
    const TripShake fair = shakeOf(measuredTrip(1800 * 1.609344, 1800 * 1.609344, 2.0), {});
    CHECK(std::abs(gravel.driven.si() * gravel.consumption / miles(1).si() - 3000) < 1e-6);
    CHECK(std::abs(fair.driven.si() * fair.consumption / miles(1).si() - 2250) < 1e-6);
}

TEST_CASE("limits of consumption are 95 and 170 inches a mile")
{
    CHECK(consumptionOf(1.499) == 1.0);
    CHECK(consumptionOf(1.501) == 1.25);
    CHECK(consumptionOf(2.68) == 1.25);
    CHECK(consumptionOf(2.69) == 2.0);
}

TEST_CASE("what was measured counts, and half of a trip speaks for the rest")
{
    const TripShake whole = shakeOf(measuredTrip(50, 25, 4.0), {});
    CHECK(whole.basis == "measured");
    CHECK(std::abs(whole.equivalent / whole.driven - 16.0) < 1e-9);
    CHECK(std::abs(whole.low / whole.driven - 4.0) < 1e-9);
    CHECK(std::abs(whole.high / whole.driven - 64.0) < 1e-9);

    // a fifth measured: the rest by default, from all smooth to all as the roughest tenth (8 m/km)
    const TripShake little = shakeOf(measuredTrip(50, 10, 4.0), {});
    CHECK(little.basis == "measured");
    CHECK(std::abs(little.equivalent / little.driven - (0.2 * 16 + 0.8 * std::pow(1.25, 4))) < 1e-9);
    CHECK(std::abs(little.low / little.driven - (0.2 * 4 + 0.8 * std::pow(0.7, 4))) < 1e-9);
    CHECK(std::abs(little.high / little.driven - (0.2 * 64 + 0.8 * 256)) < 1e-9);
    CHECK(little.consumptionLow < little.consumption);
}

TEST_CASE("an index that is not this rig's own widens the range by the spread between vehicles")
{
    Trip trip = measuredTrip(50, 50, 4.0);
    const TripShake known = shakeOf(trip, {});
    trip.measured->calibrated = false;
    const TripShake golden = shakeOf(trip, {});
    CHECK(golden.equivalent == known.equivalent);
    CHECK(std::abs(golden.high / golden.equivalent - std::exp(1.2815515655446 * 0.5 * 4)) < 1e-9);
    trip.measured->calibrated = true;
    trip.measured->sensorLocation = "tow_vehicle";
    CHECK(shakeOf(trip, {}).high == golden.high);
}

TEST_CASE("a trip of no length shakes nothing")
{
    const TripShake shake = shakeOf(tripOf(0, RoadClass::Track), {});
    CHECK(shake.equivalent == Distance{});
    CHECK(shake.high == Distance{});
}
