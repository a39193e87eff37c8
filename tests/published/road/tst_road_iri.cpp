// SPDX-License-Identifier: Apache-2.0
// The index of profiles by [ASTM-E1926] and [SAYERS-1986]; figures computed with an independent program in
// double precision.
#include <cmath>
#include <vector>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/profile/iri.hpp"
#include "road/profile/iso8608.hpp"

using namespace snugwalk;

TEST_CASE("a constant grade is smooth: less than 1e-9 m/km")
{
    std::vector<double> y;
    for (int i = 0; i <= 400; ++i)
        y.push_back(0.02 * 0.25 * i);
    const auto r = iriOf(y, metres(0.25));
    REQUIRE(r);
    CHECK(r->iri < 1e-9);
}

TEST_CASE("a bump of 10 mm on 100 m of flat road is 0.27594784749 m/km")
{
    std::vector<double> y(401, 0.0);
    y[41] = y[43] = 0.005;
    y[42] = 0.010;
    const auto r = iriOf(y, metres(0.25));
    REQUIRE(r);
    CHECK(std::abs(r->iri - 0.27594784749) < 5e-12);
    REQUIRE(r->segments.size() == 1);
    CHECK(r->segments[0].iri == r->iri);

    const CarStep step = carStep(metres(0.25), goldenSpeed);
    constexpr double travel[] = {4.4424135, 13.1762115, 11.3411318, 3.8161929, 15.7581976};
    CarState x{};
    for (std::size_t i = 0; i < 45; ++i) {
        x = step.next(x, (y[i + 1] - y[i]) / 0.25);
        if (i >= 40)
            CHECK(std::abs(1000.0 * std::abs(x[0] - x[2]) - travel[i - 40]) < 5e-8);
        else
            CHECK(x[0] == 0.0);
    }
}

TEST_CASE("a rough road of 320 m, whole and by halves")
{
    Lcg lcg(12345);
    std::vector<double> y;
    double z = 0.0;
    for (int i = 0; i < 1281; ++i)
        y.push_back(z = 0.999 * z + 0.002 * (lcg.next() - 0.5));
    const auto r = iriOf(y, metres(0.25), metres(160));
    REQUIRE(r);
    CHECK(std::abs(r->iri - 1.326854113) < 1.4e-9);
    REQUIRE(r->segments.size() == 2);
    CHECK(std::abs(r->segments[0].iri - 1.327621480) < 1.4e-9);
    CHECK(std::abs(r->segments[1].iri - 1.326086746) < 1.4e-9);
}
