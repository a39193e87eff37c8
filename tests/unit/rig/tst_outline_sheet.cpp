// SPDX-License-Identifier: Apache-2.0
// A spot goes to paper and back, faces look the way they do from outside, stands are where feet are.
#include <doctest/doctest.h>

#include <random>

#include "every_rig.hpp"
#include "rig/outline/stand_place.hpp"

using namespace snugwalk;
using namespace snugwalk::outline;

TEST_CASE("a touch tells the spot shown, on every face of every rig")
{
    std::mt19937 rng(20261129);
    test::forEachFace([&](const Rig &rig, FaceView view) {
        const FaceSheet sheet(rig.measures, view);
        std::uniform_real_distribution<double> x(0, sheet.across());
        std::uniform_real_distribution<double> y(0, sheet.up());
        for (int i = 0; i < 20; ++i) {
            const PaperSpot spot{x(rng), y(rng)};
            const PaperSpot again = sheet.at(sheet.position(spot));
            CHECK(again.x == doctest::Approx(spot.x).epsilon(1e-12));
            CHECK(again.y == doctest::Approx(spot.y).epsilon(1e-12));
        }
    });
}

TEST_CASE("the face tells the third metre")
{
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    const auto at = [&](Face face) { return FaceSheet(rig.measures, {face, true}).position({1.0, 1.0}); };
    const Measures &m = rig.measures;
    CHECK(at(Face::Left).right == m.width / -2.0);
    CHECK(at(Face::Right).right == m.width / 2.0);
    CHECK(at(Face::Front).aft == Length{});
    CHECK(at(Face::Rear).aft == m.length);
    CHECK(at(Face::Top).up == m.floorHeight + m.height);
    CHECK(at(Face::Underside).up == m.floorHeight);
}

TEST_CASE("faces look as seen from outside")
{
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::NorthAmerica);
    const auto x = [&](Face face, double aft, double right) {
        return FaceSheet(rig.measures, {face, true}).at(aft, right, 1).x;
    };
    const auto y = [&](Face face, bool noseLeft, double right) {
        return FaceSheet(rig.measures, {face, noseLeft}).at(1, right, 0).y;
    };
    CHECK(x(Face::Left, 0, 0) < x(Face::Left, 5, 0));
    CHECK(x(Face::Right, 0, 0) > x(Face::Right, 5, 0));
    CHECK(x(Face::Rear, 0, 1) > x(Face::Rear, 0, -1));
    CHECK(x(Face::Front, 0, 1) < x(Face::Front, 0, -1));
    // from above with the front at the left the right side is up; turned round it is down; from below
    // the other way
    CHECK(y(Face::Top, true, 1) < y(Face::Top, true, -1));
    CHECK(y(Face::Top, false, 1) > y(Face::Top, false, -1));
    CHECK(y(Face::Underside, true, 1) > y(Face::Underside, true, -1));
    CHECK(y(Face::Underside, false, 1) < y(Face::Underside, false, -1));
}

TEST_CASE("every stand lies on the sheet of its face, from before to")
{
    test::forEachFace([](const Rig &rig, FaceView) {
        for (const char *stand :
             {"nose", "kerb-front", "kerb-wheels", "kerb-rear", "rear", "road-rear", "road-wheels",
              "road-front", "roof", "underneath", "inside-front", "inside", "inside-rear", "utilities"}) {
            CAPTURE(stand);
            const StandPlace place = standPlace(rig, stand);
            CHECK(place.level != StandLevel::None);
            CHECK(place.from <= place.to);
            const FaceSheet sheet(rig.measures, {place.face, true});
            for (const Length end : {place.from, place.to}) {
                const PaperSpot spot = sheet.isEnd() ? sheet.at(0, end.si(), 0) : sheet.at(end.si(), 0, 0);
                CHECK(spot.x >= 0.0);
                CHECK(spot.x <= sheet.across());
            }
        }
    });
}

TEST_CASE("kerb and road side follow the country; a stand without a place has no level")
{
    const Rig american = usualRig(RigKind::TravelTrailer, Practice::NorthAmerica);
    const Rig british = usualRig(RigKind::TravelTrailer, Practice::AustraliaNewZealand);
    CHECK(standPlace(american, "kerb-front").face == Face::Right);
    CHECK(standPlace(american, "road-rear").face == Face::Left);
    CHECK(standPlace(british, "kerb-front").face == Face::Left);
    CHECK(standPlace(american, "scales").level == StandLevel::None);
    CHECK(standPlace(american, "nose").face == Face::Right);
    // nothing to stand beside ahead of a body without a drawbar
    CHECK(standPlace(usualRig(RigKind::Van, Practice::Europe), "nose").face == Face::Front);
}
