// SPDX-License-Identifier: Apache-2.0
// Spacings, gaps, short profiles. [ASTM-E1926], [SAYERS-1986]
#include <cmath>
#include <vector>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/profile/iri.hpp"
#include "road/profile/iso8608.hpp"

using namespace snugwalk;

namespace {

std::vector<double> rough(std::size_t points, double dx = 0.25)
{
    SynthPlan plan;
    plan.density = 64e-6;
    plan.points = points;
    plan.bins = 400;
    plan.spacing = metres(dx);
    return synthesise(plan)->elevations;
}

IriResult withGap(const std::vector<double> &before, const std::vector<double> &after)
{
    IriMeter meter = IriMeter::make(metres(0.25), metres(20)).value();
    for (const double z : before)
        meter.add(z);
    meter.gap(Distance::fromSi(50));
    for (const double z : after)
        meter.add(z);
    return meter.finish().value();
}

} // namespace

TEST_CASE("a sine is weighed by the car's gain: |body - wheel| of a steady wave")
{
    // mean of |sin| is 2 / pi
    constexpr double wave = 16.0;
    constexpr double slope = 0.01;
    std::vector<double> y;
    for (int i = 0; i <= 20'000; ++i)
        y.push_back(slope * wave / (2 * 3.14159265358979) * std::sin(2 * 3.14159265358979 * i * 0.1 / wave));
    const auto r = iriOf(y, metres(0.1));
    REQUIRE(r);
    const double box = std::sin(3.14159265358979 * 0.3 / wave) / (3.14159265358979 * 0.3 / wave);
    CHECK(std::abs(r->iri / (1000 * slope * carGain(metres(wave)) * box * 2 / 3.14159265358979) - 1.0) <
          0.005);
}

TEST_CASE("points of a profile: slopes over the tire's print below 0.167 m, neighbours from there on")
{
    for (const double dx : {0.05, 0.1, 0.166, 0.17, 0.25, 0.5}) {
        const double k = dx < 0.167 ? std::floor(0.25 / dx + 0.5) : 1.0;
        const auto r = iriOf(rough(1000, dx), metres(dx));
        REQUIRE(r);
        CHECK(std::abs(r->analysed.si() - (1000 - k) * dx) < 1e-9);
    }
}

TEST_CASE("segments tile the way and mean the whole")
{
    const auto r = iriOf(rough(2001), metres(0.25), metres(20));
    REQUIRE(r);
    REQUIRE(r->segments.size() == 25);
    double sum = 0.0;
    double at = 0.0;
    for (const IriSegment &s : r->segments) {
        CHECK(std::abs(s.from.si() - at) < 1e-9);
        at = s.to.si();
        sum += s.iri * (s.to - s.from).si();
    }
    CHECK(std::abs(at - 500) < 1e-9);
    CHECK(std::abs(sum / 500 - r->iri) < 1e-12);
    // the last one is as short as it is
    const auto odd = iriOf(rough(2041), metres(0.25), metres(100));
    CHECK(std::abs((odd->segments.back().to - odd->segments.back().from).si() - 10) < 1e-9);
}

TEST_CASE("after a gap the car starts anew and 11 m do not count")
{
    const auto road = rough(801);
    const IriResult whole = iriOf(road, metres(0.25), metres(20)).value();
    const IriResult both = withGap(road, road);
    CHECK(both.gaps == 1);
    CHECK(std::abs(both.analysed.si() - (2 * whole.analysed.si() - 11)) < 1e-9);
    CHECK(std::abs(both.segments[0].iri - whole.segments[0].iri) < 1e-12);
    CHECK(both.segments.back().to.si() <= 200 + 50 + 200 + 1e-9);
    CHECK(both.segments.back().to.si() > 400);
    // a scrap of less than 11 m after a gap is dropped
    const IriResult scrap = withGap(road, rough(20));
    CHECK(std::abs(scrap.iri - whole.iri) < 1e-12);
}

TEST_CASE("a profile under 11 m has an index, and says that it is short")
{
    const auto r = iriOf(rough(20), metres(0.25));
    REQUIRE(r);
    CHECK(r->tooShort);
    CHECK(!iriOf(rough(200), metres(0.25))->tooShort);
}

TEST_CASE("what cannot be is refused")
{
    CHECK(!iriOf({}, metres(0.25)));
    CHECK(!iriOf({1.0}, metres(0.25)));
    CHECK(!iriOf({1.0, NAN, 1.0}, metres(0.25)));
    CHECK(!iriOf({1.0, 1.1, 1.2}, metres(0.05))); // fewer points than the tire bridges
    for (const double dx : {0.0, 0.009, 0.61, -1.0, double(NAN)})
        CHECK(!IriMeter::make(metres(dx), metres(100)));
    CHECK(!IriMeter::make(metres(0.25), metres(0.1)));
}
