// SPDX-License-Identifier: Apache-2.0
// Even steps from uneven ones.
#include <cmath>
#include <vector>

#include <doctest/doctest.h>

#include "road/accel/resampler.hpp"

using namespace snugwalk;

namespace {

struct Even {
    std::vector<AccelSample> samples;
    int gaps = 0;
};

Even laid(const std::vector<AccelSample> &samples, double rate)
{
    Even even;
    Resampler resampler(rate);
    for (const AccelSample &s : samples)
        resampler.add(
            s, [&](const AccelSample &e) { even.samples.push_back(e); }, [&] { ++even.gaps; });
    return even;
}

AccelSample at(double time, double z, double speed = NAN) { return {time, {0, 0, z}, speed}; }

} // namespace

TEST_CASE("even samples come through as they are, also with times since 1970")
{
    for (const double from : {0.0, 1.764e9}) {
        std::vector<AccelSample> in;
        for (int i = 0; i < 1000; ++i)
            in.push_back(at(from + i / 100.0, std::sin(i)));
        const Even even = laid(in, 100);
        REQUIRE(even.samples.size() == in.size());
        for (std::size_t i = 0; i < in.size(); ++i)
            CHECK(std::abs(even.samples[i].a[2] - in[i].a[2]) < (from > 0 ? 1e-4 : 1e-12));
    }
}

TEST_CASE("a straight line stays one, however the clock jitters")
{
    std::vector<AccelSample> in;
    for (int i = 0; i < 500; ++i) {
        const double t = i / 80.0 + 0.004 * std::sin(i * 7.0);
        in.push_back(at(t, 3.0 * t, 10.0 + t));
    }
    const Even even = laid(in, 50);
    CHECK(even.gaps == 0);
    for (std::size_t i = 1; i < even.samples.size(); ++i) {
        CHECK(std::abs(even.samples[i].time - even.samples[i - 1].time - 0.02) < 1e-9);
        CHECK(std::abs(even.samples[i].a[2] - 3.0 * even.samples[i].time) < 1e-9);
        CHECK(std::abs(even.samples[i].speed - 10.0 - even.samples[i].time) < 1e-9);
    }
}

TEST_CASE("half a second without samples is a gap, and nothing is made up in it")
{
    const Even even = laid({at(0, 1), at(0.5, 2), at(1.1, 3), at(1.2, 4)}, 10);
    CHECK(even.gaps == 1);
    REQUIRE(even.samples.size() == 8);
    CHECK(std::abs(even.samples[5].time - 0.5) < 1e-12);
    CHECK(std::abs(even.samples[6].time - 1.1) < 1e-12);
}

TEST_CASE("beside an unknown speed the speed is unknown")
{
    const Even even = laid({at(0, 1, 7), at(0.12, 1), at(0.24, 1, 7), at(0.36, 1, 9)}, 10);
    REQUIRE(even.samples.size() == 4);
    CHECK(even.samples[0].speed == 7.0);
    CHECK(std::isnan(even.samples[1].speed));
    CHECK(std::isnan(even.samples[2].speed));
    CHECK(std::abs(even.samples[3].speed - 8.0) < 1e-12);
}
