// SPDX-License-Identifier: Apache-2.0
// Each field of a rig that cannot be true, told with its name and what to do.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "base/units.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr double noNumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

// The faults of a tandem with one thing changed.
std::vector<Problem> faultsWith(const std::function<void(Rig &)> &change)
{
    Rig rig = tandem();
    change(rig);
    return validate(rig);
}

// Wants a fault of `field`, told in full.
void wantFault(const std::string &field, const std::function<void(Rig &)> &change)
{
    CAPTURE(field);
    const auto problems = faultsWith(change);
    const auto found =
        std::find_if(problems.begin(), problems.end(), [&](const Problem &p) { return p.field == field; });
    REQUIRE(found != problems.end());
    CHECK_FALSE(found->what.empty());
    CHECK_FALSE(found->act.empty());
}

} // namespace

TEST_CASE("rigs that people have are taken")
{
    CHECK(validate(tandem()).empty());
    CHECK(validate(southernTwinAxle()).empty());
    CHECK(validate(bareRig()).empty());
    CHECK(faultsWith([](Rig &r) {
              r.kind = RigKind::TruckCamper, r.hitch = HitchType::None, r.measures.axles = {},
              r.ratings.axle = {};
          }).empty());
}

TEST_CASE("names")
{
    wantFault("name", [](Rig &r) { r.name.clear(); });
    wantFault("name", [](Rig &r) { r.name = std::string(81, 'n'); });
    wantFault("name", [](Rig &r) { r.name = "\xC3\x28"; });
    wantFault("tires.size", [](Rig &r) { r.tires.size = "\xFF"; });
    wantFault("tires.load_range", [](Rig &r) { r.tires.loadRange = std::string(500, 'C'); });
}

TEST_CASE("measures: too small, too large, no number")
{
    for (const double bad : {noNumber, infinity, -1.0, 1e6}) {
        CAPTURE(bad);
        wantFault("measures.length", [=](Rig &r) { r.measures.length = metres(bad); });
        wantFault("measures.width", [=](Rig &r) { r.measures.width = metres(bad); });
        wantFault("measures.height", [=](Rig &r) { r.measures.height = metres(bad); });
        wantFault("measures.floor_height", [=](Rig &r) { r.measures.floorHeight = metres(bad); });
        wantFault("measures.hitch_length", [=](Rig &r) { r.measures.hitchLength = metres(bad); });
    }
    for (const double bad : {noNumber, infinity, -5.0, 6.5})
        wantFault("measures.axles[0]", [=](Rig &r) { r.measures.axles[0] = metres(bad); });
    wantFault("measures.axles", [](Rig &r) { r.measures.axles = {}, r.ratings.axle = {}; });
    wantFault("measures.axles[1]", [](Rig &r) { r.measures.axles[1] = r.measures.axles[0]; });
    wantFault("measures.axles", [](Rig &r) { r.measures.axles.assign(5, metres(3)); });
}

TEST_CASE("ratings go by the names they have in a rig's value")
{
    for (const double bad : {noNumber, -1.0, 0.0, 1e6}) {
        CAPTURE(bad);
        wantFault("ratings.gvwr", [=](Rig &r) { r.ratings.gross = kilograms(bad); });
        wantFault("ratings.gawr[1]", [=](Rig &r) { r.ratings.axle[1] = kilograms(bad); });
        wantFault("ratings.nose_max", [=](Rig &r) { r.ratings.nose = kilograms(bad); });
    }
    wantFault("ratings.gawr", [](Rig &r) { r.ratings.axle.assign(3, kilograms(1000)); });
    wantFault("ratings.nose_max", [](Rig &r) { r.ratings.nose = *r.ratings.gross + kilograms(1); });
}

TEST_CASE("tires and wheels")
{
    for (const double bad : {noNumber, -1.0, 0.0, 1e9}) {
        CAPTURE(bad);
        wantFault("tires.max_load", [=](Rig &r) { r.tires.maxLoad = kilograms(bad); });
        wantFault("tires.max_pressure", [=](Rig &r) { r.tires.maxPressure = Pressure::fromSi(bad); });
        wantFault("tires.placard", [=](Rig &r) { r.tires.placard = Pressure::fromSi(bad); });
        wantFault("wheels.torque", [=](Rig &r) { r.wheels.torque = Torque::fromSi(bad); });
    }
    wantFault("tires.placard", [](Rig &r) { r.tires.placard = *r.tires.maxPressure + kilopascals(1); });
    wantFault("tires.load_index", [](Rig &r) { r.tires.loadIndex = 12; });
    wantFault("wheels.studs", [](Rig &r) { r.wheels.studs = 2; });
}

TEST_CASE("openings, fittings and the rest")
{
    for (const double bad : {noNumber, 50.0}) {
        CAPTURE(bad);
        wantFault("openings[0].x", [=](Rig &r) { r.openings[0].at.aft = metres(bad); });
        wantFault("openings[0].y", [=](Rig &r) { r.openings[0].at.right = metres(bad); });
        wantFault("openings[0].z", [=](Rig &r) { r.openings[0].at.up = metres(bad); });
        wantFault("openings[0].w", [=](Rig &r) { r.openings[0].width = metres(bad); });
        wantFault("openings[0].h", [=](Rig &r) { r.openings[0].height = metres(bad); });
    }
    wantFault("openings[0].name", [](Rig &r) { r.openings[0].name.clear(); });
    wantFault("openings[1].name", [](Rig &r) { r.openings[1].name = r.openings[0].name; });
    wantFault("openings[0].name", [](Rig &r) { r.openings[0].name = "\xFF"; });
    wantFault("openings[0].name", [](Rig &r) { r.openings[0].name = "wheel 1L"; }); // wheels have these names
    wantFault("fittings", [](Rig &r) { r.fittings.insert("jacuzzi"); });
    wantFault("hitch", [](Rig &r) { r.kind = RigKind::Van; });
    wantFault("hitch", [](Rig &r) { r.kind = RigKind::FifthWheel; });
    wantFault("annual_distance", [](Rig &r) { r.yearly = kilometres(noNumber); });
    wantFault("annual_distance", [](Rig &r) { r.yearly = kilometres(-1); });
}

TEST_CASE("all faults are told, not the first alone")
{
    CHECK(faultsWith([](Rig &r) {
              r.name.clear(), r.measures.length = metres(noNumber), r.wheels.studs = 99;
          }).size() >= 3);
}
