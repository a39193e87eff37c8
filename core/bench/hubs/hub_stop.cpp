// SPDX-License-Identifier: Apache-2.0
// The hottest hub against the next, and each against the mean of the others over a day.
#include "bench/hubs/hub_stop.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/units.hpp"
#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr auto callSlugs =
    std::to_array<std::string_view>({"alike", "cannot_tell", "over_mates", "hot_over_mates", "too_hot"});
// Common practice, no source; the figures of the hold list.
constexpr double mateLimit = 25.0 * 5.0 / 9.0; // K
constexpr Temperature warmLimit = Temperature::fromSi((170.0 + 459.67) * 5.0 / 9.0);
constexpr Temperature hotLimit = celsius(93.0);
constexpr double readingDoubt = 3.0; // K, an infrared thermometer
constexpr double sunAllowance = 5.0; // K
constexpr Duration warmUp = Duration::fromSi(30.0 * 60.0);
constexpr Duration soakAfter = Duration::fromSi(5.0 * 60.0);
constexpr double growth = 2.0 * readingDoubt; // of two differences of two readings
constexpr double rounding = 1e-9;             // 93 °C and 200 °F typed must meet the limit from below
constexpr std::size_t leastHubs = 2;
constexpr std::size_t mostHubs = 12;

Status checkMinutes(const std::optional<Duration> &d, const char *where)
{
    if (!d)
        return done();
    return within(0.0, d->si(), 86400.0,
                  {Errc::OutOfRange, "no day is that long", where, "give minutes or hours, such as 45 min"});
}

Status checkStop(const HubStop &stop)
{
    if (stop.hubs.size() < leastHubs || stop.hubs.size() > mostHubs)
        return Error{Errc::OutOfRange, "two to 12 hubs can be compared", "hubs",
                     "give every hub of the rig, left then right, axle by axle from the front"};
    const Error cold{Errc::OutOfRange, "no hub has that temperature", "hubs",
                     "give each with its unit, -50 to 400 degC"};
    for (const Temperature t : stop.hubs)
        SNUG_TRY(within(celsius(-50.0).si(), t.si(), celsius(400.0).si(), cold));
    if (stop.air)
        SNUG_TRY(within(celsius(-60.0).si(), stop.air->si(), celsius(60.0).si(),
                        {Errc::OutOfRange, "no air has that temperature", "air",
                         "give it with its unit, such as 78 degF"}));
    SNUG_TRY(checkMinutes(stop.driven, "driven"));
    return checkMinutes(stop.stood, "stood");
}

Temperature warmestMate(const HubStop &stop, std::size_t hub)
{
    Temperature warmest;
    for (std::size_t i = 0; i < stop.hubs.size(); ++i) {
        if (i != hub)
            warmest = std::max(warmest, stop.hubs[i]);
    }
    return warmest;
}

TemperatureDifference overMean(const HubStop &stop, std::size_t hub)
{
    double others = 0.0;
    for (std::size_t i = 0; i < stop.hubs.size(); ++i)
        others += i == hub ? 0.0 : stop.hubs[i].si();
    const double mean = others / static_cast<double>(stop.hubs.size() - 1);
    return TemperatureDifference::fromSi(stop.hubs[hub].si() - mean);
}

bool isOver(double value, double limit) { return value > limit + rounding; }

// All within the mates' limit of the hottest, after a descent.
bool hotAlike(const HubStop &stop, Temperature hottest)
{
    return stop.descent && std::all_of(stop.hubs.begin(), stop.hubs.end(),
                                       [&](Temperature t) { return !isOver((hottest - t).si(), mateLimit); });
}

HubCall callOf(const HubStop &stop, Temperature hottest, double excess)
{
    if (isOver(hottest.si(), hotLimit.si()) && !hotAlike(stop, hottest))
        return HubCall::TooHot;
    if (isOver(excess, mateLimit))
        return isOver(hottest.si(), warmLimit.si()) ? HubCall::HotOverMates : HubCall::OverMates;
    const bool warmedUp = stop.driven && *stop.driven >= warmUp;
    return warmedUp ? HubCall::Alike : HubCall::CannotTell;
}

bool facesSun(const HubStop &stop, std::size_t hub)
{
    return stop.sunny && (hub % 2 == 0 ? HubSide::Left : HubSide::Right) == *stop.sunny;
}

void addWarnings(const HubStop &stop, HubRound &round)
{
    auto &warnings = round.overMates.warnings;
    if (round.call >= HubCall::OverMates)
        warnings.emplace_back(slug(round.call));
    const Temperature hottest = stop.hubs[round.hottest];
    if (isOver(hottest.si(), hotLimit.si()) && hotAlike(stop, hottest))
        warnings.emplace_back("hot_alike");
    if (!stop.driven)
        warnings.emplace_back("driven_unknown");
    else if (*stop.driven < warmUp)
        warnings.emplace_back("driven_too_short");
    if (stop.stood && *stop.stood > soakAfter)
        warnings.emplace_back("heat_soak");
    if (facesSun(stop, round.hottest))
        warnings.emplace_back("sunny_side");
}

} // namespace

std::string_view slug(HubCall call) { return callSlugs.at(static_cast<std::size_t>(call)); }

Result<HubRound> hubsAtStop(const HubStop &stop)
{
    SNUG_TRY(checkStop(stop));
    HubRound round;
    const auto hottest = std::max_element(stop.hubs.begin(), stop.hubs.end());
    round.hottest = static_cast<std::size_t>(hottest - stop.hubs.begin());
    const double excess = (*hottest - warmestMate(stop, round.hottest)).si();
    const double doubt = readingDoubt * std::sqrt(2.0);
    const double sun = facesSun(stop, round.hottest) ? sunAllowance : 0.0;
    round.overMates = between(excess - doubt - sun, excess, excess + doubt, {"K", "measured", "CP"});
    round.hottestAt = around(hottest->si(), readingDoubt, {"K", "measured", "CP"});
    if (stop.air) {
        for (const Temperature t : stop.hubs)
            round.rise.push_back(t - *stop.air);
    }
    round.call = callOf(stop, *hottest, excess);
    addWarnings(stop, round);
    return round;
}

Result<std::vector<HubTrend>> hubTrends(std::span<const HubStop> stops)
{
    if (stops.size() < 2)
        return Error{Errc::InvalidInput, "one stop shows no trend", "stops", "give the stops of the day"};
    for (const HubStop &stop : stops) {
        SNUG_TRY(checkStop(stop));
        if (stop.hubs.size() != stops.front().hubs.size())
            return Error{Errc::InvalidInput, "the stops have another number of hubs", "stops",
                         "read every hub at every stop"};
    }
    std::vector<HubTrend> trends;
    for (std::size_t i = 0; i < stops.front().hubs.size(); ++i) {
        HubTrend t{overMean(stops.front(), i), overMean(stops.back(), i)};
        t.growing = (t.last - t.first).si() > growth;
        trends.push_back(t);
    }
    return trends;
}

} // namespace snugwalk
