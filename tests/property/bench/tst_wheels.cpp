// SPDX-License-Identifier: Apache-2.0
// Laws of wheel nuts: more torque clamps harder, more friction less, and the torque for a force comes back.
#include <doctest/doctest.h>

#include <random>

#include "bench/wheels/clamp_force.hpp"

using namespace snugwalk;

TEST_CASE("clamp force rises with torque, falls with friction, and gives its torque back")
{
    std::mt19937 rng(20261127);
    std::uniform_real_distribution<double> newtonMetres(60, 700);
    std::uniform_real_distribution<double> factor(0.06, 0.34);
    for (int i = 0; i < 10'000; ++i) {
        const Stud stud{Length::fromSi(0.008 + 0.001 * (i % 15)), Length::fromSi(0.0015), false, {}, {}};
        const Torque torque = Torque::fromSi(newtonMetres(rng));
        const double friction = factor(rng);
        const Estimate force = clampForce(stud, torque, friction).value();
        REQUIRE(force.low < force.value);
        REQUIRE(clampForce(stud, torque * 1.01, friction).value().value > force.value);
        REQUIRE(clampForce(stud, torque, friction * 1.01).value().value < force.value);
        REQUIRE(torqueFor(stud, Force::fromSi(force.value), friction).si() ==
                doctest::Approx(torque.si()).epsilon(1e-12));
    }
}
