// SPDX-License-Identifier: Apache-2.0
// The drawing itself: within its paper for whatever is drawn, with what the rig has and nothing else.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "every_rig.hpp"
#include "rig/outline/outline.hpp"
#include "rig/outline/profile.hpp"

using namespace snugwalk;
using namespace snugwalk::outline;

namespace {

constexpr const char *stands[] = {"nose",      "kerb-front",  "kerb-wheels", "rear",
                                  "road-rear", "roof",        "underneath",  "inside-front",
                                  "inside",    "inside-rear", "utilities"};

bool isWithin(const Outline &outline, PaperSpot p)
{
    return p.x >= -1e-9 && p.x <= outline.across + 1e-9 && p.y >= -1e-9 && p.y <= outline.up + 1e-9;
}

// A cubic lies within the hull of its four spots, so spots within the paper are enough.
bool isWithin(const Outline &outline, const Step &step)
{
    if (step.kind == Step::Kind::Close)
        return true;
    const bool ends = isWithin(outline, step.to);
    return step.kind != Step::Kind::Cubic
               ? ends
               : ends && isWithin(outline, step.first) && isWithin(outline, step.second);
}

long count(const Outline &outline, Dash dash)
{
    return std::count_if(outline.strokes.begin(), outline.strokes.end(),
                         [&](const Stroke &stroke) { return stroke.dash == dash; });
}

Outline draw(const Rig &rig, Face face) { return outlineOf(rig, {face, true}); }

} // namespace

TEST_CASE("everything lies on its paper, for every kind, country, face and stand")
{
    test::forEachFace([](const Rig &rig, FaceView view) {
        for (const char *stand : stands) {
            CAPTURE(stand);
            const Outline outline = outlineOf(rig, view, standPlace(rig, stand));
            REQUIRE(outline.strokes.size() > 1);
            for (const Stroke &stroke : outline.strokes) {
                REQUIRE(!stroke.steps.empty());
                CHECK(stroke.steps.front().kind == Step::Kind::Move);
                CHECK(std::all_of(stroke.steps.begin(), stroke.steps.end(),
                                  [&](const Step &step) { return isWithin(outline, step); }));
            }
            for (const TankLetter &tank : outline.tanks)
                CHECK(isWithin(outline, tank.at));
        }
    });
}

TEST_CASE("an opening typed off the rig is not drawn off the paper")
{
    Rig rig = usualRig(RigKind::Teardrop, Practice::Europe);
    rig.openings = {{"tent",
                     OpeningKind::Window,
                     Face::Left,
                     {metres(2.9), metres(-1), metres(1.6)},
                     metres(9),
                     metres(9)}};
    const Outline outline = draw(rig, Face::Left);
    for (const Stroke &stroke : outline.strokes)
        CHECK(std::all_of(stroke.steps.begin(), stroke.steps.end(),
                          [&](const Step &step) { return isWithin(outline, step); }));
}

TEST_CASE("each axle is three rings on a side and a line with two wheels underneath")
{
    Rig rig = usualRig(RigKind::TravelTrailer, Practice::NorthAmerica);
    const std::size_t twoAxles = draw(rig, Face::Left).strokes.size();
    const std::size_t below = draw(rig, Face::Underside).strokes.size();
    rig.measures.axles.push_back(metres(5.4));
    CHECK(draw(rig, Face::Left).strokes.size() == twoAxles + 3);
    CHECK(draw(rig, Face::Underside).strokes.size() == below + 3);
}

TEST_CASE("an opening is on its own face, and what is on the roof stands out of it on both sides")
{
    Rig rig = usualRig(RigKind::Van, Practice::Europe);
    const auto sizes = [&] {
        std::vector<std::size_t> all;
        for (const Face face : test::faces)
            all.push_back(draw(rig, face).strokes.size());
        return all;
    };
    const std::vector<std::size_t> before = sizes();
    rig.openings = {
        {"hatch", OpeningKind::Hatch, Face::Top, {metres(3), {}, metres(2.5)}, metres(0.4), metres(0.4)}};
    const std::vector<std::size_t> after = sizes();
    // in the order of `test::faces`: top, left, right, front, rear, underside
    const std::vector<std::size_t> more = {1, 1, 1, 0, 0, 0};
    for (std::size_t i = 0; i < more.size(); ++i)
        CHECK(after[i] == before[i] + more[i]);
}

TEST_CASE("a drawbar is drawn where there is one")
{
    Rig rig = usualRig(RigKind::Teardrop, Practice::Europe);
    const std::size_t with = draw(rig, Face::Top).strokes.size();
    rig.measures.hitchLength = {};
    CHECK(draw(rig, Face::Top).strokes.size() == with - 2); // two bars as one line, and the coupling
}

TEST_CASE("tanks are dashed, lettered, on the underside alone, and only what is fitted")
{
    Rig rig = usualRig(RigKind::TravelTrailer, Practice::NorthAmerica);
    rig.fittings = {"fresh_water", "waste_tanks", "toilet", "lp_gas", "house_battery"};
    std::string letters;
    for (const TankLetter &tank : draw(rig, Face::Underside).tanks)
        letters += tank.letter;
    CHECK(letters == "ABCDDE"); // two cylinders
    CHECK(count(draw(rig, Face::Underside), Dash::Dashed) == 6);
    for (const Face face : {Face::Top, Face::Left, Face::Right, Face::Front, Face::Rear}) {
        CHECK(draw(rig, face).tanks.empty());
        CHECK(count(draw(rig, face), Dash::Dashed) == 0);
    }
    rig.fittings = {"waste_tanks", "cassette_toilet"};
    REQUIRE(draw(rig, Face::Underside).tanks.size() == 1);
    CHECK(draw(rig, Face::Underside).tanks.front().kind == TankKind::GreyWater);
    rig.fittings = {"fresh_water", "waste_tanks", "loose_tanks"};
    CHECK(draw(rig, Face::Underside).tanks.empty());
}

TEST_CASE("tanks lie on the rig, clear of the wheels and of each other")
{
    test::forEachFace([](const Rig &rig, FaceView view) {
        if (view.face != Face::Underside || !view.noseLeft)
            return;
        const std::vector<UsualTank> tanks = usualTanks(rig);
        for (std::size_t i = 0; i < tanks.size(); ++i) {
            const UsualTank &a = tanks[i];
            CHECK(a.at.aft.si() - a.along.si() / 2 >= -rig.measures.hitchLength.si());
            CHECK(a.at.aft.si() + a.along.si() / 2 <= rig.measures.length.si());
            CHECK(std::fabs(a.at.right.si()) + a.across.si() / 2 <= rig.measures.width.si() / 2);
            for (std::size_t k = 0; k < i; ++k) {
                const UsualTank &b = tanks[k];
                CAPTURE(a.letter);
                CAPTURE(b.letter);
                CHECK((std::fabs(a.at.aft.si() - b.at.aft.si()) >= (a.along.si() + b.along.si()) / 2 - 1e-9 ||
                       std::fabs(a.at.right.si() - b.at.right.si()) >=
                           (a.across.si() + b.across.si()) / 2 - 1e-9));
            }
        }
    });
}

TEST_CASE("a corner is an arc of its radius")
{
    const Stroke square = rounded(Pen::Heavy, {{{0, 0}, 0.5}, {{4, 0}, 0.5}, {{4, 4}, 0.5}, {{0, 4}, 0.5}});
    // off the circle by 0.03 % at most, as the docstring says
    for (const PaperSpot p : flattened(square, 16)) {
        if (p.x < 0.5 - 1e-9 && p.y < 0.5 - 1e-9)
            CHECK(std::hypot(p.x - 0.5, p.y - 0.5) == doctest::Approx(0.5).epsilon(3e-4));
    }
    for (const PaperSpot p : flattened(ring(Pen::Thin, {1, 2}, 3), 16))
        CHECK(std::hypot(p.x - 1, p.y - 2) == doctest::Approx(3).epsilon(3e-4));
}

TEST_CASE("a corner too round for its lines ends at their middles")
{
    const Stroke square = rounded(Pen::Heavy, {{{0, 0}, 9}, {{2, 0}, 9}, {{2, 2}, 9}, {{0, 2}, 9}});
    for (const PaperSpot p : flattened(square)) {
        CHECK(p.x >= -1e-12);
        CHECK(p.x <= 2 + 1e-12);
        CHECK(std::hypot(p.x - 1, p.y - 1) == doctest::Approx(1).epsilon(3e-4)); // the circle within
    }
}

TEST_CASE("the body's span is floor to roof, and shorter where it steps up or slopes")
{
    const Rig trailer = usualRig(RigKind::TravelTrailer, Practice::Europe);
    const double floor = trailer.measures.floorHeight.si();
    CHECK(bodySpan(trailer, 3).low == doctest::Approx(floor));
    CHECK(bodySpan(trailer, 3).high == doctest::Approx(floor + trailer.measures.height.si()));
    CHECK(bodySpan(trailer, -1).high == bodySpan(trailer, -1).low); // ahead of it
    const Rig fifth = usualRig(RigKind::FifthWheel, Practice::NorthAmerica);
    CHECK(bodySpan(fifth, 1).low > bodySpan(fifth, 6).low + 0.5);
    const Rig drop = usualRig(RigKind::Teardrop, Practice::Europe);
    CHECK(bodySpan(drop, 2.7).high < bodySpan(drop, 1.2).high - 0.3);
}

TEST_CASE("paths are written as SVG writes them")
{
    Stroke stroke = polyline(Pen::Thin, {{0, 0}, {1, 0.25}}, true);
    stroke.steps.insert(stroke.steps.begin() + 2, Step{Step::Kind::Cubic, {0, 1}, {1, 1}, {2, 2}});
    CHECK(pathData(stroke, 100, {10, -5}) == "M10.0 -5.0L110.0 20.0C10.0 95.0 110.0 95.0 210.0 195.0Z");
}

TEST_CASE("a rig nobody has measured has an empty sheet")
{
    CHECK(outlineOf(Rig{}, {Face::Left, true}).strokes.empty());
}
