// SPDX-License-Identifier: Apache-2.0
// The scale and the power of speed of a rig, from windows with a known answer. [ALESSANDRONI-2017]
#include <cmath>
#include <random>

#include <doctest/doctest.h>

#include "road/accel/roughness.hpp"

using namespace snugwalk;

namespace {

Calibrator driven(double exponent, int windows, const std::vector<double> &kmh, double noise)
{
    std::mt19937 rng(5);
    std::normal_distribution<double> normal(0.0, noise);
    Calibrator c;
    for (int i = 0; i < windows; ++i) {
        const double v = kmh[static_cast<std::size_t>(i) % kmh.size()] / 3.6;
        c.add(0.5 * std::pow(v / referenceSpeed, exponent) * std::exp(normal(rng)), v);
    }
    return c;
}

} // namespace

TEST_CASE("below 30 windows or 3 speeds the power of speed stays 0.5")
{
    CHECK(!driven(0.8, 29, {40, 60, 80}, 0.01).law().fitted);
    CHECK(!driven(0.8, 90, {60, 80}, 0.01).law().fitted);
    CHECK(!driven(0.8, 90, {80, 80.1, 80.2}, 0.01).law().fitted);
    CHECK(driven(0.8, 29, {40, 60, 80}, 0.01).law().exponent == 0.5);
    CHECK(driven(0.8, 30, {40, 60, 80}, 0.01).law().fitted);
}

TEST_CASE("clean windows tell their power, noisy ones lean on the prior")
{
    const SpeedLaw clean = driven(0.8, 90, {40, 60, 80}, 0.01).law();
    CHECK(std::abs(clean.exponent - 0.8) < 0.01);
    CHECK(clean.spread < 0.02);
    const SpeedLaw noisy = driven(0.8, 30, {70, 80, 90}, 3.0).law();
    CHECK(noisy.spread > 0.2);
    CHECK(noisy.spread <= 0.25);
    CHECK(std::abs(noisy.exponent - 0.5) < 0.2);
}

TEST_CASE("the scale brings the stretch to its known index at 80 km/h")
{
    const Calibration c = driven(0.5, 20, {60}, 0.0).calibrate(2.5);
    CHECK(std::abs(c.scale - 5.0) < 1e-12); // 2.5 m/km over 0.5 m/s^2
    CHECK(c.windows == 20);
    CHECK(std::abs(roughnessIndex(0.5 * std::sqrt(60.0 / 80.0), 60 / 3.6, c.scale) - 2.5) < 1e-12);
    CHECK(driven(0.5, 200, {60}, 0.3).calibrate(2.5).spread > 0.25);
    CHECK(driven(0.5, 200, {60}, 0.3).calibrate(2.5).spread < 0.35);
}

TEST_CASE("windows without shaking or speed are passed over")
{
    Calibrator c;
    c.add(0, 20);
    c.add(1, 0);
    c.add(NAN, 20);
    CHECK(c.windows() == 0);
}
