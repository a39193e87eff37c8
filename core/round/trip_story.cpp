// SPDX-License-Identifier: Apache-2.0
// Days of weather and a way of road, summed up for one trip.
#include "round/trip_story.hpp"

#include <algorithm>

#include "due/aging/age_line.hpp"

namespace snugwalk {
namespace {

constexpr double leastRate = 0.25; // as the months of the due clock
constexpr double mostRate = 4.0;

RateRange held(const RateRange &sum, int days)
{
    const auto hold = [days](double v) { return std::clamp(v / days, leastRate, mostRate); };
    return {hold(sum.value), hold(sum.low), hold(sum.high)};
}

} // namespace

TripStory tripStory(const RigHistory &history, const Trip &trip, const AgeWeights &ages)
{
    TripStory story;
    story.shake = shakeOf(trip, roadHabitOf(history.trips));
    const CivilDate from = civilDate(trip.start);
    const CivilDate to = std::max(from, civilDate(trip.end));
    story.days = static_cast<int>(daysBetween(from, to)) + 1;
    const Weathering &weather = history.weathering;
    DriverRates sums;
    for (RateRange &sum : sums)
        sum = {0.0, 0.0, 0.0};
    int known = 0;
    for (int day = 0; day < story.days; ++day) {
        const long long at = daysBetween(weather.first, addDays(from, day));
        if (weather.days.empty() || at < 0 || at >= static_cast<long long>(weather.days.size()))
            break;
        const DayRates &rates = weather.days[static_cast<std::size_t>(at)];
        known += rates.known ? 1 : 0;
        for (std::size_t k = 0; k < rates.rate.size(); ++k) {
            sums[k].value += rates.rate[k].value;
            sums[k].low += rates.rate[k].low;
            sums[k].high += rates.rate[k].high;
        }
    }
    story.weatherKnown = known == story.days;
    if (!story.weatherKnown)
        return story;
    AgeWeights weights = ages;
    weights.gamma[static_cast<std::size_t>(AgeDriver::Shake)] = 0.0;
    DriverRates rates; // the road's stays 1
    for (std::size_t k = 0; k < DayRates().rate.size(); ++k)
        rates[k] = held(sums[k], story.days);
    story.aged = story.days * agingRate(rates, weights, Doubt::Middle);
    story.agedLow = story.days * agingRate(rates, weights, Doubt::Slow);
    story.agedHigh = story.days * agingRate(rates, weights, Doubt::Fast);
    return story;
}

} // namespace snugwalk
