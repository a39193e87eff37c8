// SPDX-License-Identifier: Apache-2.0
// Gamma rates against figures computed apart from this code (SciPy 1.10: quad, stats.gamma), and against
// the grid, which knows nothing of closed forms.
#include <doctest/doctest.h>

#include <cmath>

#include "due/life/gamma_rate.hpp"
#include "due/life/life_posterior.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

constexpr GammaRate prior{2.0, 24.0};

} // namespace

TEST_CASE("a pass at 12: how long until 1 in 10 and 1 in 20")
{
    // s = (b + u) ((1 - p)^(-1/a) - 1) with a = 2, b = 24, u = 12
    CHECK(prior.after(0, 12.0).exposureUntil(0.10) == Approx(1.947332).epsilon(3e-7));
    CHECK(prior.after(0, 12.0).exposureUntil(0.05) == Approx(0.935221).epsilon(6e-7));
    const GammaRate later = prior.after(0, 12.0);
    CHECK(1.0 - later.noneWithin(later.exposureUntil(0.1)) == Approx(0.1).epsilon(1e-12));
}

TEST_CASE("found between 6 and 12, then renewed")
{
    // closed form and scipy.integrate.quad agree to 1e-15
    GammaMixture mixture(prior);
    REQUIRE(mixture.find(6.0, 12.0));
    CHECK(mixture.evidence() == Approx(0.195555556).epsilon(3e-9));
    CHECK(mixture.meanRate() == Approx(0.091919192).epsilon(6e-9));
    CHECK(prior.mean() == Approx(0.083333).epsilon(6e-6));
    CHECK(1.0 - mixture.survives(6.0) == Approx(0.397031540).epsilon(2e-9));
    CHECK(1.0 - mixture.survives(12.0) == Approx(0.608650278).epsilon(2e-9));
}

TEST_CASE("three failures in 60, known to the event")
{
    // gamma-Poisson, scipy.stats.gamma(5, scale=1/84).ppf
    const GammaRate rate = prior.after(3, 60.0);
    CHECK(rate.mean() == Approx(0.059523810).epsilon(1e-8));
    CHECK(rate.quantile(0.05) == Approx(0.023454163).epsilon(3e-8));
    CHECK(rate.quantile(0.95) == Approx(0.108970463).epsilon(1e-8));
    CHECK(rate.noneWithin(6.0) == Approx(0.708245597).epsilon(2e-9));
}

TEST_CASE("a narrow finding is the limit of wider ones")
{
    GammaMixture wide(prior);
    GammaMixture point(prior);
    REQUIRE(wide.find(8.995, 9.005));
    REQUIRE(point.find(8.9999, 9.0001));
    CHECK(wide.survives(10.0) == Approx(point.survives(10.0)).epsilon(1e-6));
    CHECK(wide.meanRate() == Approx(point.meanRate()).epsilon(1e-6));
    // density a b^a / (b + u)^(a + 1)
    CHECK(point.evidence() == Approx(2.0 * 24.0 * 24.0 / std::pow(33.0, 3)).epsilon(1e-8));
    CHECK(wide.evidence() / 0.01 == Approx(point.evidence()).epsilon(1e-6));
}

TEST_CASE("many findings are left to the grid, before digits are lost")
{
    GammaMixture eight(prior);
    for (int i = 0; i < 8; ++i)
        REQUIRE(eight.find(6.0, 30.0));
    CHECK_FALSE(eight.find(6.0, 30.0));
    GammaMixture narrow(prior);
    Status status = done();
    int found = 0;
    while (status && found < 8) {
        status = narrow.find(6.0, 6.1);
        ++found;
    }
    REQUIRE_FALSE(status);
    CHECK(found < 8);
    CHECK(status.error().code == Errc::OutOfRange);
}

TEST_CASE("the grid gives the same where the shape is known and the prior is wide open")
{
    // A prior on log age so wide that it is flat is the limit Gamma(0, 0): with shape 1, one finding at 9
    // and a pass of 40 leave Gamma(1, 49)
    const LifeCells cells({LifePrior().anchor, 3000.0, 1.0, 1e-6}, {4001, 1, 0.004});
    LifePosterior posterior(cells, 30.0);
    const LookAtAge before{8.9999, 1.0};
    const LookAtAge pass{40.0, 1.0};
    posterior.add({{{&before, 1}}, LookAtAge{9.0001, 1.0}, 0.0});
    posterior.add({{{&pass, 1}}, {}, 0.0});
    posterior.settle();
    double rate = 0.0;
    for (std::size_t cell = 0; cell < posterior.weights().size(); ++cell)
        rate += posterior.weights()[cell] / posterior.life(cell).scale;
    CHECK(rate == Approx(1.0 / 49.0).epsilon(1e-5));
}
