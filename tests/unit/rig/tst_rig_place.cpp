// SPDX-License-Identifier: Apache-2.0
// Places on the rig in words, by name and as spots.
#include <doctest/doctest.h>

#include <limits>

#include "base/text.hpp"
#include "rig/place.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

RigPlace spot(Face face, double aft, double right, double up)
{
    return {"", face, RigPosition{metres(aft), metres(right), metres(up)}};
}

// "underside, from_front 4.1, to_road_side 0.6"
std::string words(const Rig &rig, const RigPlace &place)
{
    std::vector<std::string> parts;
    for (const PlacePart &part : placeParts(rig, place)) {
        parts.push_back(part.name.empty() ? std::string(part.key) : part.name);
        if (part.length)
            parts.back() += " " + formatSi({Dimension::Length, "", "", 1.0}, part.length->si(), 1);
    }
    return join(parts, ", ");
}

} // namespace

TEST_CASE("kerb side is right where one drives on the right, and left in Australia and New Zealand")
{
    const Rig north = tandem();
    const Rig south = southernTwinAxle();
    const RigPlace leftUnder = spot(Face::Underside, 4.1, -0.6, 0.5);
    CHECK(words(north, leftUnder) == "underside, from_front 4.1, to_road_side 0.6");
    CHECK(words(south, leftUnder) == "underside, from_front 4.1, to_kerb_side 0.6");
    CHECK(words(north, spot(Face::Right, 2, 1.2, 1.5)) == "kerb_side, from_front 2.0, up 1.5");
    CHECK(words(south, spot(Face::Right, 2, 1.2, 1.5)) == "road_side, from_front 2.0, up 1.5");
    CHECK(words(north, spot(Face::Left, 2, -1.2, 1.5)) == "road_side, from_front 2.0, up 1.5");
}

TEST_CASE("ends, roof, drawbar and centre line")
{
    const Rig rig = tandem();
    CHECK(words(rig, spot(Face::Rear, 6.4, 0.7, 2)) == "rear, to_kerb_side 0.7, up 2.0");
    CHECK(words(rig, spot(Face::Top, 3, 0.02, 2.8)) == "roof, from_front 3.0, on_centre_line");
    CHECK(words(rig, spot(Face::Underside, -1, 0, 0.4)) == "underside, ahead_of_front 1.0, on_centre_line");
    CHECK(words(rig, {"", Face::Front, std::nullopt}) == "front");
    CHECK(words(rig, {}).empty());
    CHECK(words(rig, {"wheel 2R", std::nullopt, std::nullopt}) == "wheel 2R");
}

TEST_CASE("wheels and openings are places with a spot")
{
    const Rig rig = tandem();
    const RigPlace wheel = findNamedPlace(rig, "wheel 2R").value();
    CHECK(wheel.face == Face::Right);
    CHECK(wheel.at->aft == metres(4.15));
    CHECK(wheel.at->right == metres(1.22));
    CHECK(findNamedPlace(rig, "wheel 1L")->at->right == metres(-1.22));
    CHECK(findNamedPlace(rig, "vent 1")->face == Face::Top);
    CHECK_FALSE(findNamedPlace(rig, "wheel 3L"));
    CHECK_FALSE(findNamedPlace(rig, ""));
}

TEST_CASE("a spot must be on the rig")
{
    const Rig rig = tandem();
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(checkPlace(rig, {}));
    CHECK(checkPlace(rig, {"wheel 1L", std::nullopt, std::nullopt}));
    CHECK(checkPlace(rig, spot(Face::Underside, -1.3, 0, 0.4))); // the coupling
    CHECK(checkPlace(rig, spot(Face::Right, 6.5, 1.3, 2.8)));    // a hand's breadth of slack
    for (const RigPlace &off :
         {spot(Face::Top, 7, 0, 2.8), spot(Face::Top, -1.6, 0, 1), spot(Face::Left, 3, -1.5, 1),
          spot(Face::Left, 3, -1, 4), spot(Face::Left, 3, -1, -0.3), spot(Face::Top, nan, 0, 1),
          spot(Face::Top, 1, nan, 1), spot(Face::Top, 1, 0, nan)}) {
        const Status status = checkPlace(rig, off);
        REQUIRE_FALSE(status);
        CHECK(status.error().code == Errc::OutOfRange);
        CHECK_FALSE(status.error().act.empty());
    }
}

TEST_CASE("a name that this rig has nowhere is refused, with a face too")
{
    const Rig rig = tandem();
    CHECK(checkPlace(rig, {"wheel 9L", std::nullopt, std::nullopt}).error().code == Errc::InvalidInput);
    CHECK(checkPlace(rig, {"\xFF\xFE", Face::Top, std::nullopt}).error().code == Errc::InvalidInput);
}
