// SPDX-License-Identifier: Apache-2.0
// Margins of the trade's example, and sides. Common practice, no source, but for the arithmetic: one paper
// flags 5 % of an axle group, another 10 %; both are told, 5 % as watch and 10 % as mend soon.
#include "../sourced.hpp"

#include <algorithm>
#include <vector>

#include "base/units.hpp"
#include "bench/weights/ratings.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double pound = 0.45359237;
Mass pounds(double v) { return kilograms(v * pound); }
double left(const Margin &m) { return 100.0 * (1.0 - m.share.value); }

} // namespace

TEST_CASE("6,920 of 7,400, axles 6,250 of 7,000, tow vehicle 7,170 of 7,100, together 13,420 of 14,500 lb")
{
    const std::vector<RatedLoad> loads{{"gross", pounds(6920), pounds(7400), pounds(26)},
                                       {"axles", pounds(6250), pounds(7000), pounds(12)},
                                       {"vehicle", pounds(7170), pounds(7100), pounds(16)},
                                       {"combination", pounds(13420), pounds(14500), pounds(20)}};
    const Margins m = marginsOf(loads).value();
    SOURCED("CP", left(m.each[0]), 6.5, half(0.1));
    SOURCED("CP", left(m.each[1]), 10.7, half(0.1));
    SOURCED("CP", 100.0 * m.each[2].share.value, 101, half(1));
    SOURCED("CP", left(m.each[3]), 7.4, half(0.1));
    CHECK(m.binding == 2);
    CHECK(m.each[2].left.warnings == std::vector<std::string>{"over_rating"});
    CHECK(m.each[0].left.warnings.empty());
    SOURCED("CP", m.each[0].left.value / pound, 480, half(1)); // what may still go aboard
}

TEST_CASE("a rating within the scale's doubt is near; a rating that is just met is not over")
{
    const std::vector<RatedLoad> loads{{"gross", pounds(7400), pounds(7400), pounds(23)}};
    CHECK(marginsOf(loads).value().each[0].left.warnings == std::vector<std::string>{"near_rating"});
    const std::vector<RatedLoad> no{{"gross", pounds(7400), Mass(), pounds(23)}};
    CHECK(marginsOf(no).error().where == "gross");
    CHECK(marginsOf({}).error().where == "ratings");
}

TEST_CASE("left 3,350 and right 2,900 lb: 7.2 % apart, 1,675 lb on each of two tires")
{
    const Sides s = sideToSide(pounds(3350), pounds(2900), 2, pounds(20)).value();
    SOURCED("CP", 100 * s.imbalance.value, 7.2, half(0.1));
    SOURCED("CP", s.heavierTire.value / pound, 1675, half(1));
    CHECK(s.leftHeavier);
    CHECK(s.imbalance.warnings == std::vector<std::string>{"side_watch"});
}

TEST_CASE("5 % is not over 5 %; over 10 % is mend soon")
{
    CHECK(sideToSide(kilograms(1050), kilograms(950), 2, kilograms(10)).value().imbalance.warnings.empty());
    CHECK(sideToSide(kilograms(900), kilograms(1110), 2, kilograms(10)).value().imbalance.warnings ==
          std::vector<std::string>{"side_mend_soon"});
    CHECK(sideToSide(Mass(), Mass(), 2, kilograms(10)).error().where == "left");
    CHECK(sideToSide(kilograms(900), kilograms(-1), 2, kilograms(10)).error().where == "right");
}
