// SPDX-License-Identifier: Apache-2.0
// Places on the rig in words, by name and as spots.
#include <doctest/doctest.h>

#include <limits>

#include "rig/place.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// formatSi puts a no-break space between number and unit
std::string plain(std::string text)
{
    const std::string space = "\xC2\xA0";
    for (auto at = text.find(space); at != std::string::npos; at = text.find(space))
        text.replace(at, space.size(), " ");
    return text;
}

RigPlace spot(Face face, double aft, double right, double up)
{
    return {"", face, RigPosition{metres(aft), metres(right), metres(up)}};
}

std::string words(const Rig &rig, const RigPlace &place, UnitSystem units = UnitSystem::Si)
{
    return plain(placeWords(rig, place, units));
}

} // namespace

TEST_CASE("kerb side is right where one drives on the right, and left in Australia and New Zealand")
{
    const Rig north = tandem();
    const Rig south = southernTwinAxle();
    const RigPlace leftUnder = spot(Face::Underside, 4.1, -0.6, 0.5);
    CHECK(words(north, leftUnder) == "underside, 4.1 m from the front, 0.6 m to the road side");
    CHECK(words(south, leftUnder) == "underside, 4.1 m from the front, 0.6 m to the kerb side");
    CHECK(words(north, spot(Face::Right, 2, 1.2, 1.5)) == "kerb side, 2.0 m from the front, 1.5 m up");
    CHECK(words(south, spot(Face::Right, 2, 1.2, 1.5)) == "road side, 2.0 m from the front, 1.5 m up");
    CHECK(words(north, spot(Face::Left, 2, -1.2, 1.5)) == "road side, 2.0 m from the front, 1.5 m up");
}

TEST_CASE("ends, roof, drawbar and centre line")
{
    const Rig rig = tandem();
    CHECK(words(rig, spot(Face::Rear, 6.4, 0.7, 2)) == "rear, 0.7 m to the kerb side, 2.0 m up");
    CHECK(words(rig, spot(Face::Top, 3, 0.02, 2.8)) == "roof, 3.0 m from the front, on the centre line");
    CHECK(words(rig, spot(Face::Underside, -1, 0, 0.4)) ==
          "underside, 1.0 m ahead of the front, on the centre line");
    CHECK(words(rig, {"", Face::Front, std::nullopt}) == "front");
    CHECK(words(rig, {}).empty());
    CHECK(words(rig, {"wheel 2R", std::nullopt, std::nullopt}) == "wheel 2R");
    // 0.3048 m a foot by definition [NIST-SP811] B.8: 4.1 m are 13.45 ft, 0.6 m are 1.97 ft
    CHECK(words(rig, spot(Face::Underside, 4.1, -0.6, 0.5), UnitSystem::Us) ==
          "underside, 13.5 ft from the front, 2.0 ft to the road side");
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
