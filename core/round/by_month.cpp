// SPDX-License-Identifier: Apache-2.0
// Cutting lines and trips at the ends of months.
#include "round/by_month.hpp"

#include <algorithm>

#include "due/aging/age_line.hpp"
#include "due/aging/exposure.hpp"
#include "road/shake.hpp"

namespace snugwalk {
namespace {

constexpr int yearsAtMost = 60; // a date mistyped by a century makes no thousand months

CivilDate monthOf(CivilDate date) { return date.year() / date.month() / 1; }

// Days of the log alone: a month of an exposure also goes back to trips before any weather is known.
void countDays(const Weathering &weather, MonthOfWeather &month)
{
    for (CivilDate date = month.from; date < month.until; date = addDays(date, 1)) {
        const long long at = daysBetween(weather.first, date);
        const bool isThere = at >= 0 && at < static_cast<long long>(weather.days.size());
        const DayRates *day = isThere ? &weather.days[static_cast<std::size_t>(at)] : nullptr;
        month.recorded += day != nullptr && day->recorded;
        month.unknown += day == nullptr || !day->known;
    }
}

// Share of a trip's time within a month; one without length in time lies in the month of its start.
double shareWithin(double start, double end, double from, double until)
{
    if (end <= start)
        return start >= from && start < until ? 1.0 : 0.0;
    return std::max(0.0, std::min(end, until) - std::max(start, from)) / (end - start);
}

} // namespace

std::vector<MonthOfWeather> weatherByMonth(const RigHistory &history, const AgeWeights &ages, LocalTime now)
{
    std::vector<MonthOfWeather> months;
    const Weathering &weather = history.weathering;
    const CivilDate today = civilDate(now);
    if (weather.days.empty() || weather.first >= today)
        return months;
    AgeWeights weights = ages;
    weights.gamma[static_cast<std::size_t>(AgeDriver::Shake)] = 0.0;
    const Exposure exposure = exposureOf(history, forecastUsage(history, now), now);
    const AgeLine slow(exposure, weights, Doubt::Slow);
    const AgeLine middle(exposure, weights, Doubt::Middle);
    const AgeLine fast(exposure, weights, Doubt::Fast);
    for (CivilDate from = weather.first; from < today;) {
        MonthOfWeather month;
        month.from = from;
        month.until = std::min(addMonths(monthOf(from), 1), today);
        month.days = static_cast<int>(daysBetween(from, month.until));
        const auto within = [&](const AgeLine &line) {
            return line.at(dayNumber(month.until)) - line.at(dayNumber(from));
        };
        month.aged = within(middle);
        // one exponent for the whole year can turn the ends of a single month round
        const double one = within(slow);
        const double other = within(fast);
        month.low = std::min({month.aged, one, other});
        month.high = std::max({month.aged, one, other});
        countDays(weather, month);
        months.push_back(month);
        from = month.until;
    }
    return months;
}

std::vector<MonthOfRoad> roadByMonth(const RigHistory &history, LocalTime now)
{
    std::vector<MonthOfRoad> months;
    std::vector<const Trip *> trips;
    for (const Trip &trip : history.trips) {
        if (trip.start.instant <= now.instant && trip.summary.length > Distance())
            trips.push_back(&trip);
    }
    if (trips.empty())
        return months;
    const CivilDate today = civilDate(now);
    CivilDate first = today;
    CivilDate last = today;
    for (const Trip *trip : trips) {
        first = std::min(first, civilDate(trip->start));
        last = std::max(last, civilDate(trip->end)); // one under way counts whole, as it does elsewhere
    }
    first = std::max(first, addMonths(today, -12 * yearsAtMost));
    last = std::min(last, addMonths(today, 12));
    for (CivilDate from = monthOf(first); from <= last; from = addMonths(from, 1)) {
        MonthOfRoad month;
        month.from = from;
        month.until = addMonths(from, 1);
        months.push_back(month);
    }
    const RoadHabit habit = roadHabitOf(history.trips);
    for (const Trip *trip : trips) {
        const TripShake shake = shakeOf(*trip, habit);
        const double start = momentOf(trip->start);
        const double end = momentOf(trip->end);
        for (MonthOfRoad &month : months) {
            const double share = shareWithin(start, end, dayNumber(month.from), dayNumber(month.until));
            month.driven = month.driven + trip->summary.length * share;
            month.equivalent = month.equivalent + shake.equivalent * share;
            month.low = month.low + shake.low * share;
            month.high = month.high + shake.high * share;
            month.trips += monthOf(civilDate(trip->start)) == month.from;
        }
    }
    return months;
}

} // namespace snugwalk
