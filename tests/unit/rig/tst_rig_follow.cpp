// SPDX-License-Identifier: Apache-2.0
// What follows from a rig's fields.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/units.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("wheels in walking order")
{
    CHECK(wheelNames(tandem()) == std::vector<std::string>{"wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R"});
    CHECK(wheelNames(bareRig()) == std::vector<std::string>{"wheel 1L", "wheel 1R"});
}

TEST_CASE("fittings that nobody has to type")
{
    const auto has = [](const Rig &rig, const char *fitting) { return allFittings(rig).count(fitting) > 0; };
    Rig rig = tandem();
    CHECK(has(rig, "multi_axle"));
    CHECK_FALSE(has(bareRig(), "multi_axle"));
    CHECK(has(rig, "ball_coupling"));
    CHECK(has(rig, "adjustable_bearings"));
    CHECK(has(rig, "membrane_roof"));
    CHECK_FALSE(has(rig, "rooflights"));
    rig.openings[0].kind = OpeningKind::Rooflight;
    CHECK(has(rig, "rooflights"));
    // 80 in wide or more: 49 CFR 571.108 (from memory)
    rig.measures.width = Length::fromSi(80 * 0.0254);
    CHECK(has(rig, "wide_body"));
    rig.measures.width = metres(2.03);
    CHECK_FALSE(has(rig, "wide_body"));
    rig.bearings = BearingKind::Sealed;
    CHECK_FALSE(has(rig, "adjustable_bearings"));
    rig.hitch = HitchType::FifthWheel;
    CHECK(has(rig, "fifth_wheel_coupling"));
    CHECK_FALSE(has(rig, "ball_coupling"));
    rig.kind = RigKind::Motorhome;
    CHECK(has(rig, "engine"));
    CHECK_FALSE(has(rig, "sealed_bearings"));
}

TEST_CASE("the list of fittings is sorted, since it is searched by halves")
{
    CHECK(std::is_sorted(knownFittings().begin(), knownFittings().end()));
    for (const std::string &fitting : allFittings(tandem()))
        CHECK(isKnownFitting(fitting));
    CHECK_FALSE(isKnownFitting(""));
}

TEST_CASE("what is towed")
{
    CHECK(isTowed(RigKind::TravelTrailer));
    CHECK_FALSE(isTowed(RigKind::Motorhome));
    CHECK_FALSE(isTowed(RigKind::TruckCamper));
}
