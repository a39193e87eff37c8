// SPDX-License-Identifier: Apache-2.0
// Quantities do not mix, and points on a thermometer are not differences.
#include <doctest/doctest.h>

#include <concepts>

#include "base/geo.hpp"
#include "base/quantity.hpp"
#include "base/units.hpp"

using namespace snugwalk;

namespace {

template <typename A, typename B>
concept Addable = requires(A a, B b)
{
    a + b;
};
template <typename A, typename B>
concept Subtractable = requires(A a, B b)
{
    a - b;
};
template <typename A, typename B>
concept Comparable = requires(A a, B b)
{
    a < b;
};
template <typename A, typename B>
concept Multipliable = requires(A a, B b)
{
    a *b;
};

// Each would be a wrong reading on paper; here it does not compile.
static_assert(!Addable<Pressure, Torque>);
static_assert(!Addable<Pressure, AbsolutePressure>, "gauge and absolute are two things");
static_assert(!Addable<Length, Distance>, "a size on the rig is no distance on the road");
static_assert(!Addable<Mass, Force>);
static_assert(!Addable<Pressure, double>);
static_assert(!Addable<Temperature, Temperature>, "points on a scale do not add");
static_assert(!Subtractable<Temperature, Length>);
static_assert(!Comparable<Pressure, Torque>);
static_assert(!Comparable<Temperature, TemperatureDifference>);
static_assert(!Multipliable<Force, Length>, "torque() is the one named product");
static_assert(!std::convertible_to<double, Pressure>, "a bare number has no unit");
static_assert(!std::constructible_from<Pressure, double>);
static_assert(!std::convertible_to<Pressure, double>);

static_assert(Addable<Pressure, Pressure>);
static_assert(Addable<Temperature, TemperatureDifference>);
static_assert(std::same_as<decltype(Temperature() - Temperature()), TemperatureDifference>);
static_assert(std::same_as<decltype(Mass() / Mass()), double>);

} // namespace

TEST_CASE("arithmetic stays within one dimension")
{
    const Pressure a = Pressure::fromSi(300.0);
    const Pressure b = Pressure::fromSi(200.0);
    CHECK((a + b).si() == 500.0);
    CHECK((a - b).si() == 100.0);
    CHECK((a * 2.0).si() == 600.0);
    CHECK((0.5 * a).si() == 150.0);
    CHECK((a / 4.0).si() == 75.0);
    CHECK(a / b == 1.5);
    CHECK(a > b);
    CHECK(Pressure{} == Pressure::fromSi(0.0));
}

TEST_CASE("a temperature moves by a difference")
{
    const Temperature shed = Temperature::fromSi(293.15);
    const Temperature frost = Temperature::fromSi(263.15);
    CHECK((shed - frost).si() == doctest::Approx(30.0));
    CHECK((frost + (shed - frost)).si() == doctest::Approx(293.15));
    CHECK(frost < shed);
}

TEST_CASE("gauge pressure becomes absolute at the local air pressure and back")
{
    const AbsolutePressure air = AbsolutePressure::fromSi(89874.0);
    const Pressure tire = Pressure::fromSi(448159.0);
    CHECK(absolute(tire, air).si() == 538033.0);
    CHECK(gauge(absolute(tire, air), air) == tire);
}

TEST_CASE("a force on an arm is a torque")
{
    CHECK(torque(Force::fromSi(200.0), Length::fromSi(0.5)).si() == 100.0);
}

TEST_CASE("a place is valid only on the globe")
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto at = [](double latitude, double longitude) {
        return GeoPoint{latitude, longitude, std::nullopt, std::nullopt};
    };
    CHECK(isValid(at(-43.5, 172.6)));
    CHECK(isValid(at(90.0, -180.0)));
    CHECK_FALSE(isValid(at(90.001, 0.0)));
    CHECK_FALSE(isValid(at(0.0, 180.001)));
    CHECK_FALSE(isValid(at(nan, 0.0)));
    CHECK_FALSE(isValid(at(0.0, nan)));
}
