// SPDX-License-Identifier: Apache-2.0
// Noise lengthens measured steps: [RANACHER-2016], from memory; figures computed apart with
// 400,000 samples of another generator: 3 m of white noise an axis.
#include <cmath>
#include <random>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "trip/geodesic.hpp"
#include "trip/track.hpp"

using namespace snugwalk;

namespace {

constexpr double sigma = 3.0;

class Noise {
public:
    GeoPoint around(double east, double north)
    {
        return {45.0 + (north + m_normal(m_rng)) / 111131.7746,
                7.0 + (east + m_normal(m_rng)) / 78846.8351,
                {},
                {}};
    }

private:
    std::mt19937 m_rng{20240601};
    std::normal_distribution<double> m_normal{0.0, sigma};
};

double meanStep(double distance)
{
    Noise noise;
    constexpr int samples = 200'000;
    double sum = 0.0;
    for (int i = 0; i < samples; ++i)
        sum += stepBetween(noise.around(0, 0), noise.around(distance, 0)).si();
    return sum / samples;
}

// 1 fix a second at `speed`, standing when 0.
std::vector<Fix> drive(double speed, int seconds)
{
    Noise noise;
    std::vector<Fix> fixes;
    for (int s = 0; s < seconds; ++s) {
        Fix fix;
        fix.time = fromMillis(1'600'000'000'000LL + 1000LL * s);
        fix.point = noise.around(speed * s, 0);
        // 68 % of a circular normal spread lie within sqrt(-2 ln 0.32) sigma
        fix.point.accuracy = metres(sigma * std::sqrt(-2.0 * std::log(0.32)));
        fixes.push_back(fix);
    }
    return fixes;
}

double naiveLength(const std::vector<Fix> &fixes)
{
    double sum = 0.0;
    for (std::size_t i = 1; i < fixes.size(); ++i)
        sum += stepBetween(fixes[i - 1].point, fixes[i].point).si();
    return sum;
}

} // namespace

TEST_CASE("noisy steps come out with the means worked apart")
{
    // four standard errors of the mean of 200,000 steps are 0.04 m
    CHECK(std::abs(meanStep(25.0) - 25.3622) < 0.04);
    CHECK(std::abs(meanStep(10.0) - 10.9536) < 0.04);
    CHECK(std::abs(meanStep(1.0) - 5.3959) < 0.03);
    CHECK(std::abs(meanStep(0.0) - 5.3185) < 0.03);
    CHECK(std::abs(meanStep(25.0) - (25.0 + sigma * sigma / 25.0)) < 0.04);
}

TEST_CASE("standing an hour makes no miles, though the steps add up to many")
{
    const auto fixes = drive(0.0, 3600);
    CHECK(naiveLength(fixes) > 18'000.0);
    const TrackSummary summary = summarise(fixes);
    CHECK(summary.length.si() < 40.0);
    REQUIRE(summary.stops.size() == 1);
    CHECK(std::abs(toMillis(summary.stops[0].to) - toMillis(summary.stops[0].from) - 3'599'000) < 120'000);
    CHECK(distanceBetween(summary.stops[0].place, {45, 7, {}, {}}).si() < 1.0);
}

TEST_CASE("driving and walking are measured within a few percent of the true way")
{
    const auto road = drive(25.0, 1200);
    CHECK(naiveLength(road) / (25.0 * 1199) > 1.012);
    CHECK(summarise(road).length.si() / (25.0 * 1199) == doctest::Approx(1.0).epsilon(0.016));

    const auto walk = drive(1.2, 3600);
    CHECK(naiveLength(walk) / (1.2 * 3599) > 4.0);
    const double ratio = summarise(walk).length.si() / (1.2 * 3599);
    CAPTURE(ratio);
    CHECK(ratio > 0.95);
    CHECK(ratio < 1.15);
}
