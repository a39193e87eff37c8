// SPDX-License-Identifier: Apache-2.0
// What holds of any log: split or whole, in any unit, at any speed with the root of it.
#include <cmath>
#include <numbers>
#include <random>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "base/text.hpp"
#include "base/units.hpp"
#include "road/accel/roughness_meter.hpp"
#include "road/profile/iri.hpp"
#include "road/profile/iso8608.hpp"
#include "road/shake.hpp"

using namespace snugwalk;

namespace {

// Noise of a body on changing roads, at changing speed.
std::vector<AccelSample> drive(unsigned seed, double seconds, double rate = 100)
{
    std::mt19937 rng(seed);
    std::normal_distribution<double> normal;
    std::vector<AccelSample> samples;
    double shake = 0.0;
    for (int i = 0; i < static_cast<int>(seconds * rate); ++i) {
        const double t = i / rate;
        shake = 0.7 * shake + (0.4 + 0.3 * std::sin(t / 40)) * normal(rng);
        samples.push_back({t, {0.3 * normal(rng), 0.2, 9.80665 + shake}, 18 + 4 * std::sin(t / 60)});
    }
    return samples;
}

RoughnessResult measured(const std::vector<AccelSample> &samples, RoughnessOptions options = {})
{
    RoughnessMeter meter = RoughnessMeter::make(options).value();
    for (const AccelSample &s : samples)
        meter.add(s);
    return meter.finish();
}

std::string csv(const std::vector<AccelSample> &samples, double gravity, const char *unit)
{
    std::string text = std::string("time,x (") + unit + "),y (" + unit + "),z (" + unit + "),speed\n";
    for (const AccelSample &s : samples) {
        text += fixed(s.time, 3);
        for (const double a : s.a)
            text += "," + fixed(a / gravity, 12);
        text += "," + fixed(s.speed, 12) + "\n";
    }
    return text;
}

// One meter over texts that follow each other, as files of one log.
RoughnessResult ofTexts(const std::vector<std::string> &texts)
{
    RoughnessMeter meter = RoughnessMeter::make({}).value();
    for (const std::string &text : texts) {
        AccelReader reader(AccelUnit::Unknown, [&](const AccelSample &s) {
            meter.add(s);
            return done();
        });
        REQUIRE(reader.feed(text));
        REQUIRE(reader.finish());
    }
    return meter.finish();
}

Trip tripOf(const RoughnessResult &r)
{
    Trip trip;
    trip.summary.length = r.driven;
    trip.measured = measureOf(r, {});
    return trip;
}

} // namespace

TEST_CASE("a log in two files read as one gives the very same shake, wherever it is cut")
{
    const auto samples = drive(1, 200);
    const RoughnessResult whole = ofTexts({csv(samples, 1, "m/s2")});
    for (const std::size_t cut : {1000U, 7777U, 12'345U, 19'500U}) {
        const auto at = samples.begin() + static_cast<std::ptrdiff_t>(cut);
        const RoughnessResult parts =
            ofTexts({csv({samples.begin(), at}, 1, "m/s2"), csv({at, samples.end()}, 1, "m/s2")});
        CHECK(parts.dose == whole.dose);
        CHECK(parts.median == whole.median);
        CHECK(parts.analysed == whole.analysed);
        CHECK(shakeOf(tripOf(parts), {}).equivalent == shakeOf(tripOf(whole), {}).equivalent);
    }
}

TEST_CASE("two trips made of one log shake as much as the one, but for the stretch at the cut")
{
    const auto samples = drive(2, 1200);
    const Trip whole = tripOf(measured(samples));
    const auto at = samples.begin() + 60'000;
    const Trip first = tripOf(measured({samples.begin(), at}));
    const Trip second = tripOf(measured({at, samples.end()}));
    const TripShake w = shakeOf(whole, {});
    const TripShake a = shakeOf(first, {});
    const TripShake b = shakeOf(second, {});
    CHECK(std::abs((a.driven + b.driven) / w.driven - 1.0) < 1e-9);
    CHECK(std::abs((a.equivalent + b.equivalent) / w.equivalent - 1.0) < 0.05);
    const double used = a.driven.si() * a.consumption + b.driven.si() * b.consumption;
    CHECK(std::abs(used / (w.driven.si() * w.consumption) - 1.0) < 0.05);
}

TEST_CASE("trips told by hand add up exactly")
{
    for (const RoadClass road : {RoadClass::Unknown, RoadClass::Smooth, RoadClass::Gravel}) {
        Trip whole;
        whole.road = road;
        whole.summary.length = kilometres(100);
        Trip part = whole;
        part.summary.length = kilometres(25);
        const RoadHabit habit{3.5};
        CHECK(std::abs(4 * shakeOf(part, habit).equivalent.si() / shakeOf(whole, habit).equivalent.si() -
                       1.0) < 1e-12);
        CHECK(shakeOf(part, habit).consumption == shakeOf(whole, habit).consumption);
    }
}

TEST_CASE("units change nothing: m/s2 or g")
{
    const auto samples = drive(3, 120);
    const RoughnessResult si = ofTexts({csv(samples, 1, "m/s2")});
    const RoughnessResult g = ofTexts({csv(samples, 9.80665, "g")});
    CHECK(si.windows == g.windows);
    CHECK(std::abs(si.median / g.median - 1.0) < 1e-9);
    CHECK(std::abs(si.dose[1] / g.dose[1] - 1.0) < 1e-9);
}

TEST_CASE("shaking that grows with the root of speed gives the same index at any speed, to 1e-9")
{
    // the same number of waves in each window: windows of 5 s, told by an unknown speed, then by hand
    const auto at = [](double speed) {
        auto samples = drive(4, 300);
        for (AccelSample &s : samples) {
            const double factor = std::sqrt(speed / referenceSpeed);
            s.a = {0, 0, 9.80665 + factor * (s.a[2] - 9.80665)};
            s.speed = NAN;
        }
        RoughnessOptions options;
        options.scale = goldenScale * std::sqrt(referenceSpeed / speed);
        return measured(samples, options);
    };
    const RoughnessResult reference = at(referenceSpeed);
    for (const double speed : {7.0, 12.5, 30.0}) {
        const RoughnessResult other = at(speed);
        CHECK(other.windows == reference.windows);
        CHECK(std::abs(other.median / reference.median - 1.0) < 1e-9);
        CHECK(std::abs(other.dose[2] / reference.dose[2] - 1.0) < 1e-9);
    }
}

TEST_CASE("rougher is never less: index, dose and consumption grow with the shaking")
{
    double before = 0.0;
    double used = 0.0;
    double dose = 0.0;
    for (const double factor : {0.2, 0.5, 1.0, 2.0, 4.0}) {
        auto samples = drive(5, 200);
        for (AccelSample &s : samples)
            s.a[2] = 9.80665 + factor * (s.a[2] - 9.80665);
        const RoughnessResult r = measured(samples);
        CHECK(r.median > before);
        CHECK(r.dose[1] > dose);
        CHECK(r.consumption >= used);
        before = r.median;
        dose = r.dose[1];
        used = r.consumption;
    }
}

TEST_CASE("an index grows in proportion with a profile, and does not know its sign or its grade")
{
    SynthPlan plan;
    plan.points = 2000;
    const auto road = synthesise(plan)->elevations;
    const double index = iriOf(road, metres(0.25))->iri;
    auto changed = road;
    for (std::size_t i = 0; i < road.size(); ++i)
        changed[i] = -3.0 * road[i] + 0.03 * static_cast<double>(i) * 0.25 + 640;
    CHECK(std::abs(iriOf(changed, metres(0.25))->iri / (3.0 * index) - 1.0) < 1e-9);
}
