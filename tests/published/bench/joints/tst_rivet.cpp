// SPDX-License-Identifier: Apache-2.0
// Rivets: [NAVEDTRA-14018] chapter 13 and [AC-43.13-1B] 4-57, both read; the flush head as a study guide has
// it.
#include "../sourced.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "base/units.hpp"
#include "bench/joints/rivet.hpp"

using namespace snugwalk;

namespace {

constexpr double inch = 0.0254;

RivetChoice choose(std::vector<double> sheets, bool flush = false, std::optional<double> hole = {})
{
    std::vector<Length> lengths;
    for (const double t : sheets)
        lengths.push_back(metres(t * inch));
    RivetJoint joint{lengths, flush, {}, {}};
    if (hole)
        joint.enlargedHole = metres(*hole * inch);
    return chooseRivet(joint).value();
}

bool warns(const RivetChoice &c, const char *slug)
{
    return std::find(c.diameter.warnings.begin(), c.diameter.warnings.end(), slug) !=
           c.diameter.warnings.end();
}

} // namespace

TEST_CASE(
    "0.040 on 0.063 in: 3/16 by three sheets, edge 3/8, pitch 9/16, shank grip and a half diameter more")
{
    const auto c = choose({0.040, 0.063});
    CHECK(c.size.inches == "3/16");
    CHECK(c.size.drill == "11");
    SOURCED("AC-43.13-1B", c.edge.value / inch, 3.0 / 8.0, 1e-9);
    SOURCED("NAVEDTRA-14018", c.pitch.value / inch, 9.0 / 16.0, 1e-9);
    SOURCED("NAVEDTRA-14018", c.pitch.high / inch, 1.5, 1e-9); // seldom more than eight diameters
    CHECK(c.grip.value / inch == doctest::Approx(0.103));
    SOURCED("NAVEDTRA-14018", c.solidLength.value / inch, 0.103 + 1.5 * 0.1875, 1e-9); // 1 1/2 D + G = L
    CHECK(c.blindGrip.si() / inch == doctest::Approx(0.125));                          // two sixteenths
    SOURCED("NAVEDTRA-14018", c.diameter.low / inch, 0.063, 1e-9); // no thinner than the thickest sheet
    SOURCED("NAVEDTRA-14018", c.diameter.high / inch, 0.189, 1e-9);
    CHECK(c.diameter.warnings.empty());
}

TEST_CASE("a flush head takes 2 1/2 diameters to the edge")
{
    CHECK(choose({0.040, 0.040}, true).edge.value ==
          doctest::Approx(2.5 * choose({0.040}).size.diameter.si()));
}

TEST_CASE("drills of the sizes: 40, 30, 20, 11, F, from memory")
{
    const char *drills[] = {"40", "30", "20", "11", "F"};
    const double holes[] = {0.098, 0.1285, 0.161, 0.191, 0.257};
    REQUIRE(rivetSizes().size() == 5);
    for (std::size_t i = 0; i < 5; ++i) {
        CHECK(rivetSizes()[i].drill == drills[i]);
        CHECK(rivetSizes()[i].hole.si() / inch == doctest::Approx(holes[i]));
        CHECK(rivetSizes()[i].hole > rivetSizes()[i].diameter);
    }
}

TEST_CASE("an enlarged hole takes the next larger size, with its wider edge and pitch")
{
    const auto before = choose({0.032, 0.040});
    const auto after = choose({0.032, 0.040}, false, 0.140);
    CHECK(before.size.inches == "1/8");
    CHECK(after.size.inches == "5/32");
    CHECK(warns(after, "hole_enlarged"));
    CHECK(after.edge.value > before.edge.value);
    CHECK(choose({0.032, 0.040}, false, 0.1285).size.inches == "1/8");
}

TEST_CASE("what rivets of a rig do not do")
{
    CHECK(warns(choose({0.125, 0.125}), "sheets_too_thick"));
    const Length sheet[] = {metres(0.040 * inch)};
    CHECK(chooseRivet({sheet, false, metres(0.5 * inch), {}}).error().code == Errc::Unsupported);
    CHECK(chooseRivet({sheet, false, metres(0.5 * inch), {}}).error().where == "hole");
    CHECK(chooseRivet({sheet, false, metres(std::nan("")), {}}).error().where == "hole");
    CHECK(chooseRivet({{}, false, {}, {}}).error().where == "sheets");
    const Length none[] = {Length()};
    CHECK(chooseRivet({none, false, {}, {}}).error().where == "sheets");
    CHECK(chooseRivet({sheet, false, {}, metres(1)}).error().where == "diameter");
    const auto maker = chooseRivet({sheet, false, {}, metres(3.0 / 16.0 * inch)}).value();
    CHECK(maker.diameter.basis == "maker");
    CHECK(warns(maker, "beyond_three_sheets"));
}
