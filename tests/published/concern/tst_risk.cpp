// SPDX-License-Identifier: Apache-2.0
// Risk as consequence times chance, against worked figures.
#include <doctest/doctest.h>

#include <cmath>

#include "concern/concern.hpp"

using namespace snugwalk;

namespace {

double decibel(double risk) { return 10.0 * std::log10(risk / 0.1); }

} // namespace

TEST_CASE("four items keep their order, with decibels over R of 0.1")
{
    // Worked by hand and with SciPy 1.10: nut low, roof crack, tire age, awning screw
    CHECK(decibel(100 * 0.05) == doctest::Approx(17.0).epsilon(0.003));
    CHECK(concernNumber(100 * 0.05) > concernNumber(8 * 0.40));
    CHECK(concernNumber(8 * 0.40) > concernNumber(60 * 0.01));
    CHECK(concernNumber(60 * 0.01) > concernNumber(0.3 * 0.6));
    CHECK(concernNumber(5.0) == doctest::Approx(67.4742501084));  // 25 (log10 5 + 2)
    CHECK(concernNumber(0.18) == doctest::Approx(31.3818126278)); // 25 (log10 0.18 + 2)
}

TEST_CASE("exponential time to failure: a chance of 1 - 1/e at the scale of each grade")
{
    // Scales of grades 1 to 5 in months: common practice, declared
    const double scales[] = {24.0, 12.0, 6.0, 0.5, 0.02};
    for (int grade = 1; grade <= 5; ++grade) {
        const double scale = scales[grade - 1];
        CHECK(chanceOfFailing(grade, scale) == doctest::Approx(0.6321205588285577).epsilon(1e-12));
        CHECK(chanceOfFailing(grade, 0.0) == 0.0);
        CHECK(chanceOfFailing(grade, scale * 1e-9) == doctest::Approx(1e-9).epsilon(1e-6)); // no cancellation
    }
}
