// SPDX-License-Identifier: Apache-2.0
// Linings: 1/16 in is the least, [CFR49-570] 570.59; 3/32 in to order shoes is common practice, no source.
// The pace is arithmetic.
#include "../sourced.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "bench/brakes/lining_life.hpp"

using namespace snugwalk;

namespace {

bool warns(const LiningLife &l, const char *slug)
{
    return std::find(l.left.warnings.begin(), l.left.warnings.end(), slug) != l.left.warnings.end();
}

} // namespace

TEST_CASE("5.0 then 4.0 mm over 20,000 km leave 48,000 km to 1.6 mm, 37,000 to 70,200 by the readings' doubt")
{
    const LiningLife l = liningLife({millimetres(5), millimetres(4), kilometres(20000), {}}).value();
    SOURCED("computed", l.left.value, 48e6, 1e-3);
    CHECK(l.left.low == doctest::Approx(2.2 / 1.2828427 * 20e6).epsilon(1e-6));
    CHECK(l.left.high == doctest::Approx(2.6 / 0.7171573 * 20e6).epsilon(1e-6));
    CHECK(l.rate.value == doctest::Approx(0.001 / 20e6));
    CHECK(l.left.basis == "published");
}

TEST_CASE("1/16 in is a hold, 3/32 in is time to order, a maker's larger figure wins and a smaller does not")
{
    CHECK(warns(liningLife({millimetres(5), millimetres(1.6), kilometres(9000), {}}).value(), "lining_hold"));
    CHECK(liningLife({millimetres(5), millimetres(1.6), kilometres(9000), {}}).value().left.value == 0.0);
    CHECK(warns(liningLife({millimetres(5), millimetres(2.3), kilometres(9000), {}}).value(), "lining_plan"));
    const LiningLife maker =
        liningLife({millimetres(5), millimetres(4), kilometres(20000), millimetres(3)}).value();
    CHECK(maker.left.value == doctest::Approx(20e6));
    CHECK(maker.left.basis == "maker");
    CHECK(
        liningLife({millimetres(5), millimetres(4), kilometres(20000), millimetres(1)}).value().left.value ==
        doctest::Approx(48e6));
}

TEST_CASE("wear no larger than the doubt of two readings is told, and the high end stays finite")
{
    const LiningLife l = liningLife({millimetres(5), millimetres(4.8), kilometres(2000), {}}).value();
    CHECK(warns(l, "wear_within_doubt"));
    CHECK(l.left.high == 1.6e8);
}

TEST_CASE("a lining that grew was replaced: refused by name")
{
    CHECK(liningLife({millimetres(4), millimetres(5), kilometres(2000), {}}).error().where == "now");
    CHECK(liningLife({millimetres(40), millimetres(5), kilometres(2000), {}}).error().where == "before");
    CHECK(liningLife({millimetres(5), millimetres(4), kilometres(2), {}}).error().where == "driven");
}
