// SPDX-License-Identifier: Apache-2.0
// Hubs at a stop. Common practice, no source. Two papers of the trade disagree: one flags 25 °F (14 K) over
// the warmest mate after 20 minutes, the other 20 K or 70 K above the air after 30. The stricter of each won:
// 14 K, and 30 minutes before a stop may say that all are alike; the air is shown, never judged by.
#include "../sourced.hpp"

#include <algorithm>
#include <vector>

#include "base/units.hpp"
#include "bench/hubs/hub_stop.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

Temperature fahrenheit(double v) { return Temperature::fromSi((v + 459.67) * 5.0 / 9.0); }
Duration minutes(double v) { return Duration::fromSi(60.0 * v); }
HubStop stopOf(const std::vector<double> &degF)
{
    HubStop stop;
    for (const double t : degF)
        stop.hubs.push_back(fahrenheit(t));
    stop.air = fahrenheit(78);
    stop.driven = minutes(60);
    return stop;
}
bool warns(const HubRound &r, const char *slug)
{
    const auto &w = r.overMates.warnings;
    return std::find(w.begin(), w.end(), slug) != w.end();
}
double inFahrenheitSteps(TemperatureDifference d) { return d.si() * 9.0 / 5.0; }

} // namespace

TEST_CASE("the trade's example: air 78 °F, hubs 112, 118, 109 and 151 °F: the last is 33 °F over its mates")
{
    const HubRound r = hubsAtStop(stopOf({112, 118, 109, 151})).value();
    CHECK(r.hottest == 3);
    SOURCED("CP", r.overMates.value * 9.0 / 5.0, 33, half(1));
    CHECK(r.call == HubCall::OverMates);
    CHECK(warns(r, "over_mates"));
    SOURCED("CP", inFahrenheitSteps(r.rise[3]), 73, half(1));
    SOURCED("CP", inFahrenheitSteps(r.rise[0]), 34, half(1));
}

TEST_CASE("it becomes a stop above 170 °F, and above 200 °F (93 °C) by itself")
{
    CHECK(hubsAtStop(stopOf({112, 118, 109, 171})).value().call == HubCall::HotOverMates);
    CHECK(hubsAtStop(stopOf({150, 150, 150, 170})).value().call == HubCall::Alike); // 20 °F over, 170 itself
    CHECK(hubsAtStop(stopOf({190, 190, 190, 201})).value().call == HubCall::TooHot);
    HubStop limit;
    limit.hubs = {celsius(90), celsius(93)};
    limit.driven = minutes(45);
    CHECK(hubsAtStop(limit).value().call == HubCall::Alike); // over 93 °C, not at it
}

TEST_CASE("25 °F over its mates is not over 25 °F")
{
    CHECK(hubsAtStop(stopOf({100, 100, 100, 125})).value().call == HubCall::Alike);
    CHECK(hubsAtStop(stopOf({100, 100, 100, 125.1})).value().call == HubCall::OverMates);
    CHECK(hubsAtStop(stopOf({100, 100, 100, 134})).value().call == HubCall::OverMates); // 19 K: 20 K lost
}

TEST_CASE("after a long downhill all hot alike is no fault of one; one alone still is")
{
    HubStop stop = stopOf({205, 198, 210, 207});
    stop.descent = true;
    const HubRound alike = hubsAtStop(stop).value();
    CHECK(alike.call == HubCall::Alike);
    CHECK(warns(alike, "hot_alike"));
    stop.hubs[0] = fahrenheit(150);
    CHECK(hubsAtStop(stop).value().call == HubCall::TooHot);
}

TEST_CASE("a short drive cannot tell that hubs are alike, but a hot one counts at once")
{
    HubStop stop = stopOf({100, 101, 102, 103});
    stop.driven = minutes(29);
    CHECK(hubsAtStop(stop).value().call == HubCall::CannotTell);
    CHECK(warns(hubsAtStop(stop).value(), "driven_too_short"));
    stop.hubs[1] = fahrenheit(180);
    CHECK(hubsAtStop(stop).value().call == HubCall::HotOverMates);
    stop.driven.reset();
    CHECK(warns(hubsAtStop(stop).value(), "driven_unknown"));
}

TEST_CASE("sun widens the range downwards and never changes the call; late readings carry drum heat")
{
    HubStop stop = stopOf({112, 118, 109, 151});
    const HubRound shade = hubsAtStop(stop).value();
    stop.sunny = HubSide::Right;
    stop.stood = minutes(12);
    const HubRound sun = hubsAtStop(stop).value();
    CHECK(sun.call == shade.call);
    CHECK(shade.overMates.low - sun.overMates.low == doctest::Approx(5.0));
    CHECK(sun.overMates.high == shade.overMates.high);
    CHECK(warns(sun, "sunny_side"));
    CHECK(warns(sun, "heat_soak"));
    stop.sunny = HubSide::Left; // the hottest stands in the shade
    CHECK_FALSE(warns(hubsAtStop(stop).value(), "sunny_side"));
}

TEST_CASE("from stop to stop: the hub that grows warmer than its mates is told, one that stays warm is not")
{
    const std::vector<HubStop> day{stopOf({110, 100, 100, 100}), stopOf({112, 104, 101, 108}),
                                   stopOf({113, 102, 103, 122})};
    const auto trends = hubTrends(day).value();
    CHECK_FALSE(trends[0].growing);
    CHECK(trends[3].growing);
    SOURCED("CP", inFahrenheitSteps(trends[3].last), 122 - (113 + 102 + 103) / 3.0, half(0.001));
    CHECK(hubTrends(std::vector<HubStop>{day[0]}).error().where == "stops");
}

TEST_CASE("a hub at no temperature is refused by name")
{
    CHECK(hubsAtStop(stopOf({100})).error().where == "hubs");
    CHECK(hubsAtStop(stopOf({100, 900})).error().where == "hubs");
    HubStop stop = stopOf({100, 100});
    stop.air = celsius(78);
    CHECK(hubsAtStop(stop).error().where == "air");
}
