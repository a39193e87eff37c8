// SPDX-License-Identifier: Apache-2.0
// Laws of bearings and hubs over random inputs, absurd ones too.
#include <doctest/doctest.h>

#include <vector>

#include "base/units.hpp"
#include "bench/hubs/bearing_life.hpp"
#include "bench/hubs/bearing_service.hpp"
#include "bench/hubs/end_play.hpp"
#include "bench/hubs/hub_stop.hpp"
#include "random_inputs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

HubStop randomStop(Absurd &random)
{
    HubStop stop;
    const int hubs = random.count(1, 6);
    for (int i = 0; i < hubs; ++i)
        stop.hubs.push_back(random.quantity<Temperature>(250.0, 420.0));
    stop.air = random.maybe<Temperature>(240.0, 320.0);
    stop.driven = random.maybe<Duration>(0.0, 20'000.0);
    stop.stood = random.maybe<Duration>(0.0, 5'000.0);
    if (random.chance(0.5))
        stop.sunny = random.chance(0.5) ? HubSide::Left : HubSide::Right;
    stop.descent = random.chance(0.2);
    return stop;
}

} // namespace

TEST_CASE("no input makes a hub's figure nonsense; each refusal names its input")
{
    Absurd random(31);
    Laws laws;
    for (int i = 0; i < trials(); ++i) {
        laws.judge(hubsAtStop(randomStop(random)), "hub stop",
                   [](const HubRound &r) { return sane(r.overMates) && sane(r.hottestAt); });
        std::vector<PlayTrial> dial(static_cast<std::size_t>(random.count(0, 4)));
        for (PlayTrial &t : dial)
            t = {random.quantity<Length>(-1e-4, 1e-4), random.quantity<Length>(-1e-4, 6e-4)};
        laws.judge(endPlay(dial), "end play", [](const EndPlay &p) { return sane(p.play); });
        const RollingElement kind = random.chance(0.5) ? RollingElement::Ball : RollingElement::Roller;
        const auto rating = random.quantity<Force>(1e3, 1e5);
        const auto load = random.quantity<Force>(1e2, 5e4);
        laws.judge(bearingDistance({kind, rating, load}, random.quantity<Length>(0.4, 5.0)), "life",
                   [](const Estimate &e) { return sane(e); });
        laws.judge(bearingReliability(kind, rating, load, random.number(0.1, 1e4)), "reliability",
                   [](double r) { return r >= 0.0 && r <= 1.0; });
        BearingClock clock{CivilDate{}, CivilDate{}, random.maybe<Distance>(0.0, 2e7), random.chance(0.2)};
        clock.served = std::chrono::sys_days{std::chrono::days{random.count(18'000, 21'000)}};
        clock.today = std::chrono::sys_days{std::chrono::days{random.count(18'000, 21'000)}};
        if (random.chance(0.3))
            clock.makerMonths = random.count(-2, 130);
        laws.judge(bearingDue(clock), "service",
                   [](const BearingDue &d) { return sane(d.share) && sane(d.time) && sane(d.distance); });
    }
    CHECK(laws.broken == "");
    CHECK(laws.answered > trials());
    CHECK(laws.refused > trials() / 10);
}

TEST_CASE("a warmer hub never calls for less; all hubs warmer alike change no comparison")
{
    Absurd random(32);
    Laws laws;
    for (int i = 0; i < 20'000; ++i) {
        HubStop stop;
        for (int hub = 0; hub < 4; ++hub)
            stop.hubs.push_back(Temperature::fromSi(random.between(290.0, 380.0)));
        stop.driven = Duration::fromSi(3600.0);
        const HubRound before = hubsAtStop(stop).value();
        HubStop warmer = stop;
        for (Temperature &t : warmer.hubs)
            t = t + TemperatureDifference::fromSi(3.0);
        const HubRound alike = hubsAtStop(warmer).value();
        laws.hold(std::abs(alike.overMates.value - before.overMates.value) < 1e-9, "shifted comparison");
        HubStop hotter = stop;
        hotter.hubs[before.hottest] = hotter.hubs[before.hottest] + TemperatureDifference::fromSi(8.0);
        laws.hold(hubsAtStop(hotter).value().call >= before.call, "monotone call");
    }
    CHECK(laws.broken == "");
}

TEST_CASE("more load, less life; rating and reliability are each other's inverse")
{
    Absurd random(33);
    for (int i = 0; i < 20'000; ++i) {
        const RollingElement kind = random.chance(0.5) ? RollingElement::Ball : RollingElement::Roller;
        const Force load = Force::fromSi(random.between(100.0, 20'000.0));
        const double million = random.between(1.0, 5'000.0);
        const double wanted = random.between(0.5, 0.999);
        const Force rating = bearingRatingFor(kind, load, million, wanted).value();
        if (rating > Force::fromSi(1e7))
            continue;
        CHECK(bearingReliability(kind, rating, load, million).value() ==
              doctest::Approx(wanted).epsilon(1e-9));
        CHECK(bearingReliability(kind, rating, load * 1.1, million).value() < wanted);
    }
}
