// SPDX-License-Identifier: Apache-2.0
// Logs with a known answer through the whole pipeline, and what is left out of them.
#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

#include <doctest/doctest.h>

#include "road/accel/roughness_meter.hpp"
#include "road/shake.hpp"

using namespace snugwalk;

namespace {

using Shape = std::function<AccelSample(double t)>;
constexpr double g = 9.80665;

// A level sensor on a road that shakes it by `amplitude` at 5 Hz.
Shape shaking(double amplitude, double speed)
{
    return [=](double t) {
        return AccelSample{t, {0, 0, g + amplitude * std::sin(2 * std::numbers::pi * 5 * t)}, speed};
    };
}

struct Run {
    RoughnessResult result;
    std::vector<RoughnessWindow> windows;
};

Run run(const Shape &shape, double seconds, double rate = 100, RoughnessOptions options = {})
{
    options.rate = rate;
    Run out;
    RoughnessMeter meter = RoughnessMeter::make(options).value();
    meter.onWindow = [&](const RoughnessWindow &w) { out.windows.push_back(w); };
    for (int i = 0; i < static_cast<int>(seconds * rate); ++i)
        meter.add(shape(i / rate));
    out.result = meter.finish();
    return out;
}

} // namespace

TEST_CASE("a steady sine has its rms, and the index follows from speed and scale")
{
    for (const double rate : {50.0, 100.0, 200.0}) {
        const Run r = run(shaking(1.0, 20.0), 300, rate);
        REQUIRE(r.windows.size() == 60); // 298 s of 5 s, the last of 3 s
        CHECK(std::abs(r.windows.back().distance - 60.0) < 0.5);
        for (std::size_t i = 2; i < 59; ++i) {
            CHECK(std::abs(r.windows[i].rms - std::sqrt(0.5)) < 0.005);
            CHECK(std::abs(r.windows[i].distance - 100.0) < 0.5);
        }
        const double wanted = goldenScale * std::sqrt(0.5) * std::sqrt(80 / 72.0);
        CHECK(std::abs(r.result.median / wanted - 1.0) < 0.005);
        CHECK(r.result.coverage() > 0.95);
        CHECK(std::abs(r.result.dose[1] / std::pow(wanted / 2, 4) - 1.0) < 0.03);
        CHECK(r.result.consumption == 2.0);
        CHECK(r.result.speedKnown);
        CHECK(!r.result.clipped);
    }
}

TEST_CASE("however the sensor lies, the vertical is the same")
{
    const Run level = run(shaking(1.0, 20.0), 60);
    const std::vector<std::array<double, 3>> ups = {
        {1, 0, 0}, {0, -1, 0}, {0.48, 0.6, 0.64}, {-0.6, 0.0, 0.8}};
    for (const auto &up : ups) {
        const Run turned = run(
            [&](double t) {
                AccelSample s = shaking(1.0, 20.0)(t);
                const double a = s.a[2];
                s.a = {a * up[0], a * up[1], a * up[2]};
                return s;
            },
            60);
        REQUIRE(turned.windows.size() == level.windows.size());
        for (std::size_t i = 0; i < level.windows.size(); ++i)
            CHECK(std::abs(turned.windows[i].rms - level.windows[i].rms) < 1e-9);
    }
}

TEST_CASE("shaking across gravity is not counted")
{
    const Run r = run(
        [](double t) {
            return AccelSample{t, {2.0 * std::sin(2 * std::numbers::pi * 5 * t), 0, g}, 20.0};
        },
        60);
    for (const RoughnessWindow &w : r.windows)
        CHECK(w.rms < 0.05);
}

TEST_CASE("too slow, of uneven speed, standing: left out and counted")
{
    const Run slow = run(shaking(1, 5.5), 200);
    CHECK(slow.result.windows == 0);
    CHECK(slow.result.slow > 5);
    CHECK(!measureOf(slow.result, {}));
    const Run standing = run(shaking(0.01, 0.0), 200);
    CHECK(standing.result.windows == 0);
    CHECK(standing.result.coverage() == 0.0);
    const Run stopAndGo = run([](double t) { return shaking(1, 15 + 5 * std::sin(t))(t); }, 200);
    CHECK(stopAndGo.result.windows == 0);
    CHECK(stopAndGo.result.uneven > 10);
}

TEST_CASE("a hand on the phone, and a single knock, take their windows out; a rough road knocks again")
{
    const Run picked = run(
        [](double t) {
            AccelSample s = shaking(1, 20)(t);
            if (t > 60)
                s.a = {s.a[2], 0, 0};
            return s;
        },
        120);
    CHECK(picked.result.handled >= 1);
    CHECK(picked.result.windows >= 15);
    const Run knocked = run(
        [](double t) {
            AccelSample s = shaking(1, 20)(t);
            if (std::abs(t - 30.0) < 0.004)
                s.a[2] = 40;
            return s;
        },
        60);
    CHECK(knocked.result.handled == 1);
    const Run rough = run(
        [](double t) {
            AccelSample s = shaking(1, 20)(t);
            if (std::fmod(t, 1.0) < 0.009)
                s.a[2] = 40;
            return s;
        },
        60);
    CHECK(rough.result.handled == 0);
}

TEST_CASE("without a speed: windows of 5 s as at 80 km/h, and it is said")
{
    const Run r = run(shaking(1, NAN), 60);
    CHECK(r.result.speedUnknown);
    CHECK(!r.result.speedKnown);
    CHECK(std::abs(r.result.median / (goldenScale * std::sqrt(0.5)) - 1.0) < 0.01);
    CHECK(r.result.analysed == Distance{});
    CHECK(std::abs(r.result.coverage() - 58.0 / 60.0) < 0.01);
    CHECK(!measureOf(r.result, {}));
}

TEST_CASE("a sensor at its rails gives a lower bound")
{
    const Run clipped = run(
        [](double t) {
            AccelSample s = shaking(15, 20)(t);
            s.a[2] = std::min(s.a[2], 2 * g);
            return s;
        },
        60);
    CHECK(clipped.result.clipped);
    const Run loud = run(shaking(15, 20), 60);
    CHECK(!loud.result.clipped);
}

TEST_CASE("a gap begins anew and settles anew")
{
    const Run r = run(
        [](double t) {
            AccelSample s = shaking(1, 20)(t);
            s.time += t >= 30 ? 10 : 0;
            return s;
        },
        60);
    CHECK(r.result.gaps == 1);
    CHECK(std::abs(r.result.seconds - 60) < 0.1);
    for (const RoughnessWindow &w : r.windows)
        CHECK((w.to <= 30.1 || w.from >= 41.9));
}

TEST_CASE("the roughest tenth, and quantiles weighed by distance")
{
    const Run r = run([](double t) { return shaking(t < 200 ? 0.3 : 1.2, 20)(t); }, 250);
    const double smooth = goldenScale * 0.3 * std::sqrt(0.5) * std::sqrt(80 / 72.0);
    CHECK(std::abs(r.result.median / smooth - 1.0) < 0.02);
    CHECK(std::abs(r.result.p90 / (4 * smooth) - 1.0) < 0.02);
    CHECK(r.result.dose[2] > r.result.dose[1]);
}

TEST_CASE("roughness along the way: 4 km of one road, a gap in the log, 1 km of a worse one")
{
    const Run r = run(
        [](double t) {
            AccelSample s = shaking(t < 200 ? 0.3 : 1.2, 20)(t);
            s.time += t >= 200 ? 10 : 0;
            return s;
        },
        250);
    const double smooth = goldenScale * 0.3 * std::sqrt(0.5) * std::sqrt(80 / 72.0);
    CHECK(r.result.alongStep.si() == 100.0);
    REQUIRE(r.result.along.size() == 50);
    int known = 0;
    for (std::size_t i = 0; i < 50; ++i) {
        if (!r.result.along[i])
            continue;
        ++known;
        CHECK(std::abs(*r.result.along[i] / (i < 40 ? smooth : 4 * smooth) - 1.0) < 0.05);
    }
    CHECK(known >= 46); // two settling times of 40 m, and bits at the gap
}

TEST_CASE("what cannot be is refused")
{
    const auto refused = [](auto change) {
        RoughnessOptions options;
        change(options);
        return !RoughnessMeter::make(options);
    };
    CHECK(refused([](RoughnessOptions &o) { o.rate = 45; }));
    CHECK(refused([](RoughnessOptions &o) { o.rate = NAN; }));
    CHECK(refused([](RoughnessOptions &o) { o.scale = 0; }));
    CHECK(refused([](RoughnessOptions &o) { o.exponent = -1; }));
    RoughnessMeter empty = RoughnessMeter::make({}).value();
    CHECK(empty.finish().windows == 0);
}
