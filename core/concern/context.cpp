// SPDX-License-Identifier: Apache-2.0
// Index, usage and length of a trip.
#include "concern/context.hpp"

#include <algorithm>

#include "base/month.hpp"

namespace snugwalk {
namespace {

constexpr double mostMonths = 12.0;
constexpr double usualTripDays = 3.0; // common practice, no source

} // namespace

double tripDays(const RigHistory &history, LocalTime now)
{
    std::vector<double> days;
    for (const Trip &trip : history.trips) {
        const auto length = trip.end.instant - trip.start.instant;
        if (trip.end.instant <= now.instant && length.count() > 0)
            days.push_back(std::chrono::duration<double, std::chrono::days::period>(length).count());
    }
    if (days.empty())
        return usualTripDays;
    std::sort(days.begin(), days.end());
    const std::size_t middle = days.size() / 2;
    return days.size() % 2 == 1 ? days[middle] : (days[middle - 1] + days[middle]) / 2.0;
}

ConcernContext::ConcernContext(const Catalogue &ofCatalogue, const RigHistory &ofHistory, LocalTime at)
    : catalogue(ofCatalogue),
      history(ofHistory),
      now(at),
      index(ofHistory, at),
      usage(forecastUsage(ofHistory, at)),
      clock(ofHistory, at),
      tripMonths(std::min(tripDays(ofHistory, at) / daysPerMonth, mostMonths))
{}

} // namespace snugwalk
