// SPDX-License-Identifier: Apache-2.0
// Classes of [ISO-8608], from memory; the relation to the index and the made-up road: computed with an
// independent program. 2.21 sqrt(C): [KROPAC-MUCKA-2004], from memory.
#include <cmath>
#include <numbers>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/profile/iri.hpp"
#include "road/profile/iso8608.hpp"

using namespace snugwalk;

namespace {

// The integral that the relation comes from: slopes of a road with density 1e-6 m^3 through the car.
double derivedIri(bool filtered)
{
    constexpr double low = 0.011;
    constexpr double high = 2.83;
    constexpr int steps = 200'000;
    const double slopes = std::pow(2.0 * std::numbers::pi * 0.1, 2) * 1e-6;
    double sum = 0.0;
    for (int i = 0; i < steps; ++i) { // midpoints in the logarithm of the wave number
        const double n = low * std::pow(high / low, (i + 0.5) / steps);
        const double x = std::numbers::pi * 0.25 * n;
        const double box = filtered ? std::sin(x) / x : 1.0;
        const double gain = carGain(metres(1.0 / n));
        sum += gain * gain * box * box * slopes * n;
    }
    return 1000.0 * std::sqrt(2.0 / std::numbers::pi) * std::sqrt(sum * std::log(high / low) / steps);
}

} // namespace

TEST_CASE("means and limits of the classes, and the index that goes with them")
{
    constexpr double means[] = {16, 64, 256, 1024, 4096, 16384, 65536, 262144};
    constexpr double indices[] = {2.17, 4.35, 8.69, 17.4, 34.8, 69.5, 139, 278};
    constexpr double digits[] = {.005, .005, .005, .05, .05, .05, .5, .5};
    for (int i = 0; i < 8; ++i) {
        const auto c = static_cast<ProfileClass>(i);
        CHECK(std::abs(classDensity(c) / 1e-6 - means[i]) < 1e-9 * means[i]);
        CHECK(std::abs(iriOfDensity(classDensity(c)) - indices[i]) < digits[i]);
        CHECK(classOf(1.99e-6 * means[i]) == c);
        CHECK(classOf(0.51e-6 * means[i]) == c);
        CHECK(classOf(2.01e-6 * means[i]) == static_cast<ProfileClass>(std::min(7, i + 1)));
        CHECK(std::abs(densityOfIri(iriOfDensity(classDensity(c))) / classDensity(c) - 1.0) < 1e-12);
        CHECK(classFromIri(indices[i]).likely == c);
        CHECK(classFromIri(indices[i]).low == static_cast<ProfileClass>(std::max(0, i - 1)));
        CHECK(classFromIri(indices[i]).high == static_cast<ProfileClass>(std::min(7, i + 1)));
    }
}

TEST_CASE("the relation follows from the car: 0.543138 with the filter, 0.554552 without")
{
    CHECK(std::abs(derivedIri(true) - 0.543138) < 5e-7);
    CHECK(std::abs(derivedIri(false) - 0.554552) < 5e-7);
    CHECK(std::abs(iriOfDensity(1e-6) - derivedIri(true)) < 5e-7);
    // printed for C in 1e-6 rad m at 1 rad/m: the density at 0.1 cycles a metre is 2 pi C / (0.2 pi)^2
    const double density = 2.0 * std::numbers::pi * 1e-6 / std::pow(0.2 * std::numbers::pi, 2);
    CHECK(std::abs(derivedIri(false) * std::sqrt(density / 1e-6) / 2.21 - 1.0) < 0.003);
}

TEST_CASE("theory of the band's rms")
{
    constexpr double rows[][2] = {{16e-6, 3.806431e-3}, {64e-6, 7.612862e-3}, {256e-6, 15.225724e-3}};
    for (const auto &[density, rms] : rows) {
        SynthPlan plan;
        plan.density = density;
        plan.points = 4;
        const auto road = synthesise(plan);
        REQUIRE(road);
        CHECK(std::abs(road->rms - rms) < 5e-10);
    }
}

TEST_CASE("a made-up road of class C, 2,000 m, 400 bins, seed 1")
{
    SynthPlan plan;
    plan.density = classDensity(ProfileClass::C);
    plan.bins = 400;
    const auto road = synthesise(plan);
    REQUIRE(road);
    REQUIRE(road->elevations.size() == 8000);
    constexpr double first[] = {-0.0158049, -0.01739501, -0.01221027, -0.01848757};
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(std::abs(road->elevations[i] - first[i]) < 1e-7);
    double squares = 0.0;
    double sum = 0.0;
    for (const double z : road->elevations) {
        squares += z * z;
        sum += z;
    }
    const double rms = std::sqrt(squares / 8000.0 - std::pow(sum / 8000.0, 2)); // about the mean
    CHECK(std::abs(rms - 15.007846e-3) < 5e-10);
    CHECK(std::abs(rms / road->rms - 1.0) < 0.02);
    // the waves' own: root of half the sum of their squared amplitudes
    CHECK(std::abs(road->wavesRms - 14.991903e-3) < 5e-10);
    const auto index = iriOf(road->elevations, metres(0.25));
    REQUIRE(index);
    CHECK(std::abs(index->iri - 8.478636) < 5e-7);
    CHECK(std::abs(road->repeatsAfter.si() - 400 / 2.819) < 1e-9);
}
