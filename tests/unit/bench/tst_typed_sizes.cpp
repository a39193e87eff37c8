// SPDX-License-Identifier: Apache-2.0
// Beads and stamps as people write them.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "bench/gas/stamp.hpp"
#include "bench/joints/bead_text.hpp"

using namespace snugwalk;

TEST_CASE("beads")
{
    const struct {
        const char *text;
        BeadShape shape;
        double width, height; // mm
    } rows[] = {
        {"1/4 in", BeadShape::Round, 6.35, 6.35},
        {"1/4", BeadShape::Round, 6.35, 6.35},
        {"1/4 in round", BeadShape::Round, 6.35, 6.35},
        {"3/8 in fillet", BeadShape::Fillet, 9.525, 9.525},
        {"fillet 10 mm", BeadShape::Fillet, 10, 10},
        {"1/4 x 1/2", BeadShape::Rectangle, 6.35, 12.7},
        {"1/4x1/4 in", BeadShape::Rectangle, 6.35, 6.35},
        {"6 x 3 mm", BeadShape::Rectangle, 6, 3},
        {"6 mm × 3 mm", BeadShape::Rectangle, 6, 3},
        {"10 x 5 mm half ellipse", BeadShape::HalfEllipse, 10, 5},
        {"Half Round 12 mm", BeadShape::HalfRound, 12, 12},
        {"1 1/2 x 1/8 in flat", BeadShape::Rectangle, 38.1, 3.175},
        {"0,5 x 0,25 in", BeadShape::Rectangle, 12.7, 6.35},
    };
    for (const auto &row : rows) {
        CAPTURE(row.text);
        const auto bead = parseBead(row.text);
        REQUIRE(bead);
        CHECK(bead->shape == row.shape);
        CHECK(bead->width.si() * 1e3 == doctest::Approx(row.width));
        CHECK(bead->height.si() * 1e3 == doctest::Approx(row.height));
    }
    CHECK(parseBead("1/4 in", "fillet")->shape == BeadShape::Fillet);
    CHECK(parseBead("1/4 in round", "fillet")->shape == BeadShape::Round);
}

TEST_CASE("no beads: a bare number is refused, inches or millimetres nobody knows")
{
    for (const char *wrong : {"", "6", "6 x 3", "round", "1/4 x 1/4 x 1/4", "6 psi", "-6 mm", "1 m", "nan mm",
                              "x", "6 mm x", "1e999 in"}) {
        CAPTURE(wrong);
        REQUIRE_FALSE(parseBead(wrong));
        CHECK(parseBead(wrong).error().where == "bead");
    }
    CHECK(parseBead("1/4 in", "star").error().where == "bead");
}

TEST_CASE("stamps")
{
    using namespace std::chrono;
    const struct {
        const char *text;
        CivilDate date;
    } rows[] = {{"04-19", year(2019) / 4 / 1},       {"4/19", year(2019) / 4 / 1},
                {"04 2019", year(2019) / 4 / 1},     {"2019-04", year(2019) / 4 / 1},
                {"2019-04-30", year(2019) / 4 / 30}, {"10 89", year(1989) / 10 / 1},
                {" 12.05 ", year(2005) / 12 / 1}};
    for (const auto &row : rows) {
        CAPTURE(row.text);
        REQUIRE(parseStamp(row.text));
        CHECK(*parseStamp(row.text) == row.date);
    }
    for (const char *wrong :
         {"", "2019", "13-19", "00-19", "april 19", "2019-04-31", "4-19-2", "1-2-3-4-5-6", "04-119"})
        CHECK_FALSE(parseStamp(wrong));
}
