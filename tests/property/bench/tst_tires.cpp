// SPDX-License-Identifier: Apache-2.0
// Laws of tires: more load asks for more pressure, the inverse comes back, what is set is never under the
// placard.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "base/units.hpp"
#include "bench/tires/tire_load.hpp"
#include "bench/tires/tire_pressure.hpp"

using namespace snugwalk;

namespace {

double between(std::mt19937 &rng, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(rng);
}

// Half of them with a table that rises to the tire's own rating.
TireRating anyTire(std::mt19937 &rng)
{
    TireRating tire{static_cast<TireClass>(rng() % 3),
                    kilograms(between(rng, 400, 1700)),
                    psi(between(rng, 45, 110)),
                    {}};
    if (rng() % 2 == 0)
        return tire;
    for (double share = between(rng, 0.4, 0.6); share < 0.99; share += between(rng, 0.05, 0.2))
        tire.table.push_back(
            {tire.maxPressure * share, tire.maxLoad * std::pow(share, between(rng, 0.68, 0.72))});
    for (std::size_t i = 1; i < tire.table.size(); ++i) { // drawn exponents may cross: keep rows that rise
        if (!(tire.table[i].load > tire.table[i - 1].load))
            tire.table.resize(i);
    }
    return tire;
}

} // namespace

TEST_CASE("more load never asks for less pressure, and the pressure it asks for carries it")
{
    std::mt19937 rng(20261124);
    for (int i = 0; i < 20'000; ++i) {
        const TireRating tire = anyTire(rng);
        const double most =
            tire.maxLoad.si() / (tire.kind == TireClass::Passenger ? passengerOnTrailer : 1.0);
        const double low = between(rng, 0.3 * most, most);
        const double high = between(rng, low, most);
        const Estimate less = leastPressure(tire, kilograms(low)).value();
        const Estimate more = leastPressure(tire, kilograms(high)).value();
        REQUIRE(less.value <= more.value * (1.0 + 1e-12));
        const double carried = loadCarried(tire, Pressure::fromSi(more.value)).value().value;
        REQUIRE(carried >= high * (1.0 - 1e-9));
        if (tire.table.empty())
            REQUIRE(carried == doctest::Approx(high).epsilon(1e-9));
    }
}

TEST_CASE("what is set is never under the placard, the least pressure or the row, and never over the maximum")
{
    std::mt19937 rng(20261125);
    for (int i = 0; i < 20'000; ++i) {
        const TireRating tire = anyTire(rng);
        const Mass load = kilograms(between(rng, 0.3, 0.9) * tire.maxLoad.si());
        const Pressure placard = psi(between(rng, 20, inPsi(tire.maxPressure)));
        const auto set = pressureForLoad(tire, load, placard).value();
        REQUIRE(set->value >= placard.si());
        REQUIRE(set->value >= leastPressure(tire, load).value().value);
        REQUIRE(set->value <= tire.maxPressure.si() * (1.0 + 1e-9));
        if (const auto row = rowFor(tire, load))
            REQUIRE(set->value >= row->pressure.si());
    }
}

TEST_CASE("for any temperature and altitude, what is set now is at or over the placard")
{
    std::mt19937 rng(20261126);
    for (int i = 0; i < 20'000; ++i) {
        const Pressure placard = psi(between(rng, 20, 110));
        TireSetting setting{placard,
                            {},
                            {celsius(between(rng, -40, 90)), metres(between(rng, -500, 11000))},
                            {celsius(between(rng, -40, 90)), metres(between(rng, -500, 11000))}};
        if (rng() % 2 == 0)
            setting.maximum = std::min(placard * between(rng, 1.0, 1.5), kilopascals(1000));
        const auto set = pressureToSet(setting);
        REQUIRE(set.has_value());
        REQUIRE(set->value >= placard.si());
        REQUIRE(set->low >= placard.si());
    }
}
