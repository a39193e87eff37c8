// SPDX-License-Identifier: Apache-2.0
// Portions, short series, still series.
#include <cmath>
#include <random>
#include <vector>

#include <doctest/doctest.h>

#include "road/series/welch.hpp"

using namespace snugwalk;

namespace {

std::vector<double> noise(std::size_t n)
{
    std::mt19937 rng(3);
    std::normal_distribution<double> normal(2.0, 1.5);
    std::vector<double> x(n);
    for (double &v : x)
        v = normal(rng);
    return x;
}

} // namespace

TEST_CASE("one by one, in portions and whole are the same")
{
    const auto x = noise(5000);
    for (const std::size_t segment : {256U, 300U, 251U}) {
        Welch whole = Welch::make(100, segment).value();
        whole.add(x);
        Welch single = Welch::make(100, segment).value();
        for (const double v : x)
            single.add(v);
        Welch portions = Welch::make(100, segment).value();
        for (std::size_t at = 0; at < x.size(); at += 77)
            portions.add(std::span(x).subspan(at, std::min<std::size_t>(77, x.size() - at)));
        const auto a = whole.finish();
        REQUIRE(a);
        CHECK(a->segments == static_cast<long long>((x.size() - segment / 2) / (segment - segment / 2)));
        CHECK(a->density == single.finish()->density);
        CHECK(a->density == portions.finish()->density);
    }
}

TEST_CASE("power is kept: white noise has its variance")
{
    Welch welch = Welch::make(100, 256).value();
    welch.add(noise(200'000));
    const auto s = welch.finish();
    REQUIRE(s);
    double power = 0.0;
    for (const double d : s->density)
        power += d * s->frequency[1];
    CHECK(std::abs(power / 2.25 - 1.0) < 0.02);
}

TEST_CASE("a series shorter than a segment is one segment, and says so")
{
    Welch welch = Welch::make(100, 512).value();
    const auto x = noise(100);
    welch.add(x);
    const auto s = welch.finish();
    REQUIRE(s);
    CHECK(s->tooShort);
    CHECK(s->density.size() == 51);
    Welch same = Welch::make(100, 100).value();
    same.add(x);
    const auto t = same.finish();
    CHECK(!t->tooShort);
    CHECK(t->density == s->density);
}

TEST_CASE("a constant has no spectrum")
{
    Welch welch = Welch::make(100, 64).value();
    for (int i = 0; i < 640; ++i)
        welch.add(9.81);
    const auto spectrum = welch.finish();
    REQUIRE(spectrum->density.size() == 33);
    for (const double d : spectrum->density)
        CHECK(d < 1e-25);
}

TEST_CASE("what cannot be is refused")
{
    CHECK(!Welch::make(0, 256));
    CHECK(!Welch::make(NAN, 256));
    CHECK(!Welch::make(100, 7));
    CHECK(!Welch::make(100, (std::size_t{1} << 22) + 1));
    Welch welch = Welch::make(100, 64).value();
    welch.add(1.0);
    CHECK(!welch.finish());
}
