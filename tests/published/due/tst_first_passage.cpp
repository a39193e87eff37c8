// SPDX-License-Identifier: Apache-2.0
// First passage of a distance: against SciPy 1.10 (lognorm, invgauss), whose figures were computed
// apart from this code, and the normal quantiles of every statistical table.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "due/first_passage.hpp"
#include "due/special_functions.hpp"

using namespace snugwalk;

TEST_CASE("standard normal quantiles")
{
    // Table values of the standard normal distribution, e.g. NIST/SEMATECH e-Handbook 1.3.6.7.1, from memory
    CHECK(normalQuantile(0.5) == doctest::Approx(0.0));
    CHECK(normalQuantile(0.9) == doctest::Approx(1.2815515655446004).epsilon(1e-12));
    CHECK(normalQuantile(0.975) == doctest::Approx(1.959963984540054).epsilon(1e-12));
    CHECK(normalQuantile(0.05) == doctest::Approx(-1.6448536269514722).epsilon(1e-12));
}

TEST_CASE("lognormal rate: 6,000 km left at 40 with sd 12 km a day, 215 days of calendar left")
{
    const LognormalRate rate = lognormalFromMean(40.0, 12.0);
    // scipy.stats.lognorm(s, scale=exp(m)).ppf, s^2 = ln(1 + (12/40)^2), m = ln 40 - s^2/2
    CHECK(daysUntil(rate, 6000.0, 0.1) == doctest::Approx(107.5022).epsilon(5e-7));
    CHECK(daysUntil(rate, 6000.0, 0.5) == doctest::Approx(156.6046).epsilon(5e-7));
    CHECK(daysUntil(rate, 6000.0, 0.9) == doctest::Approx(228.1349).epsilon(5e-7));
    // whichever comes first: 107.50, 156.60, 215
    CHECK(std::abs(std::min(daysUntil(rate, 6000.0, 0.1), 215.0) - 107.50) < 0.005);
    CHECK(std::abs(std::min(daysUntil(rate, 6000.0, 0.5), 215.0) - 156.60) < 0.005);
    CHECK(std::min(daysUntil(rate, 6000.0, 0.9), 215.0) == 215.0);
    CHECK(std::abs(chanceWithin(rate, 6000.0, 215.0) - 0.859829) < 5e-7);
}

TEST_CASE("lumpy rate: drift 0.25, deviation 0.35, limit 3")
{
    const LumpyRate rate{0.25, 0.35 * 0.35};
    // scipy.stats.invgauss(mu = m / l, scale = l).cdf, m = 3 / 0.25, l = (3 / 0.35)^2
    CHECK(chanceWithin(rate, 3.0, 6.0) == doctest::Approx(0.0559968030).epsilon(1e-8));
    CHECK(chanceWithin(rate, 3.0, 12.0) == doctest::Approx(0.5776618919).epsilon(1e-8));
    CHECK(chanceWithin(rate, 3.0, 18.0) == doctest::Approx(0.8895359415).epsilon(1e-8));
}

TEST_CASE("the scaled complement of the error function")
{
    // DLMF 7.12.1, 7.17 and Abramowitz and Stegun table 7.2 (from memory): at 0, 0.5, 1; scipy.special.erfcx
    // at 10, 100 and 1e5; [DLMF] 7.12.1 for its tail
    CHECK(erfcScaled(0.0) == 1.0);
    CHECK(erfcScaled(0.5) == doctest::Approx(0.6156903441929259).epsilon(1e-14));
    CHECK(erfcScaled(1.0) == doctest::Approx(0.4275835761558070).epsilon(1e-14));
    CHECK(erfcScaled(10.0) == doctest::Approx(0.05614099274382259).epsilon(1e-14));
    CHECK(erfcScaled(100.0) == doctest::Approx(0.005641613782989433).epsilon(1e-14));
    CHECK(erfcScaled(1e5) == doctest::Approx(1.0 / (1e5 * std::sqrt(std::acos(-1.0)))).epsilon(1e-9));
    // both forms meet at 2
    CHECK(erfcScaled(2.0) == doctest::Approx(std::exp(4.0) * std::erfc(2.0)).epsilon(1e-14));
    CHECK(erfcScaled(std::nextafter(2.0, 0.0)) == doctest::Approx(erfcScaled(2.0)).epsilon(1e-14));
}

TEST_CASE("quantile and chance are inverse, far into the tails and for tiny noise")
{
    for (const double variance : {1e-4, 0.1225, 1.0, 50.0}) {
        const LumpyRate rate{0.25, variance};
        for (const double p : {0.001, 0.1, 0.5, 0.9, 0.999}) {
            CAPTURE(variance);
            CAPTURE(p);
            CHECK(chanceWithin(rate, 3.0, daysUntil(rate, 3.0, p)) == doctest::Approx(p).epsilon(1e-6));
        }
    }
}
