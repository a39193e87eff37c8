// SPDX-License-Identifier: Apache-2.0
// Made-up roads by [ISO-8608]: seeds, repeats, limits.
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/profile/iri.hpp"
#include "road/profile/iso8608.hpp"

using namespace snugwalk;

TEST_CASE("left to itself a road never repeats, and its index is near theory")
{
    SynthPlan plan;
    plan.density = classDensity(ProfileClass::B);
    plan.points = 4000;
    const auto road = synthesise(plan);
    REQUIRE(road);
    CHECK(road->repeatsAfter.si() >= 1000.0 - 1e-6);
    const auto index = iriOf(road->elevations, plan.spacing);
    CHECK(std::abs(index->iri / iriOfDensity(plan.density) - 1.0) < 0.05);
}

TEST_CASE("a seed is a road")
{
    SynthPlan plan;
    plan.points = 100;
    const auto one = synthesise(plan);
    CHECK(synthesise(plan)->elevations == one->elevations);
    plan.seed = 2;
    CHECK(synthesise(plan)->elevations != one->elevations);
}

TEST_CASE("what cannot be made is refused")
{
    const auto refused = [](auto change) {
        SynthPlan plan;
        change(plan);
        return !synthesise(plan);
    };
    CHECK(refused([](SynthPlan &p) { p.points = 0; }));
    CHECK(refused([](SynthPlan &p) { p.points = 20'000'000; }));
    CHECK(refused([](SynthPlan &p) { p.bins = 199; }));
    CHECK(refused([](SynthPlan &p) { p.spacing = metres(0.7); }));
    CHECK(refused([](SynthPlan &p) { p.density = 0.0; }));
    CHECK(refused([](SynthPlan &p) { p.points = 9'000'000; }));
    CHECK(!findProfileClass("I"));
    CHECK(!findProfileClass(""));
    CHECK(findProfileClass("h") == ProfileClass::H);
}
