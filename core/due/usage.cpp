// SPDX-License-Identifier: Apache-2.0
// Distance behind and ahead, from the trips of the log.
#include "due/usage.hpp"

#include <algorithm>
#include <cmath>

#include "base/month.hpp"

namespace snugwalk {
namespace {

using std::chrono::days;

constexpr double daysPerYear = 365.25;
constexpr double monthsForSeason = 12.0;
constexpr double leastLogDays = 30.0; // three trips in one week do not make a year of such weeks
constexpr Distance commonYearly = kilometres(10'000.0); // common practice, no source
constexpr double hundredYears = 36'525.0;

double daysFrom(Instant a, Instant b) { return std::chrono::duration<double, days::period>(b - a).count(); }

// The part of a trip's distance that falls between two moments.
Distance within(const Trip &trip, Instant from, Instant to)
{
    const Instant a = std::max(trip.start.instant, from);
    const Instant b = std::min(trip.end.instant, to);
    if (trip.end.instant <= trip.start.instant) // no length in time: it counts whole or not at all
        return trip.start.instant > from && trip.start.instant <= to ? trip.summary.length : Distance();
    if (b <= a)
        return Distance();
    return trip.summary.length * (daysFrom(a, b) / daysFrom(trip.start.instant, trip.end.instant));
}

// Trips that began by `now` and covered some ground, oldest first whatever order they came in.
std::vector<const Trip *> driven(const RigHistory &history, Instant now)
{
    std::vector<const Trip *> trips;
    for (const Trip &trip : history.trips) {
        if (trip.start.instant <= now && trip.summary.length > Distance())
            trips.push_back(&trip);
    }
    const auto before = [](const Trip *a, const Trip *b) {
        return a->start.instant != b->start.instant ? a->start.instant < b->start.instant : a->id < b->id;
    };
    if (!std::is_sorted(trips.begin(), trips.end(), before)) // asked for every point, sorted as a rule
        std::sort(trips.begin(), trips.end(), before);
    return trips;
}

struct TripStatistics {
    double total = 0.0;
    double mean = 0.0;
    double variance = 0.0;
};

TripStatistics statistics(const std::vector<const Trip *> &trips)
{
    TripStatistics s;
    for (const Trip *trip : trips)
        s.total += trip->summary.length.si();
    s.mean = s.total / static_cast<double>(trips.size());
    for (const Trip *trip : trips)
        s.variance += (trip->summary.length.si() - s.mean) * (trip->summary.length.si() - s.mean);
    if (trips.size() > 1)
        s.variance /= static_cast<double>(trips.size() - 1);
    return s;
}

std::size_t monthIndex(CivilDate date) { return static_cast<unsigned>(date.month()) - 1; }

// Days that the log spends in each calendar month, both ends included.
std::array<double, 12> exposure(CivilDate first, CivilDate last)
{
    std::array<double, 12> spent{};
    for (CivilDate date = first; date <= last; date = addDays(date, 1))
        spent[monthIndex(date)] += 1.0;
    return spent;
}

void fillSeason(UsageForecast &f, const std::vector<const Trip *> &trips, LocalTime now)
{
    std::array<double, 12> metres{};
    for (const Trip *trip : trips)
        metres[monthIndex(civilDate(trip->start))] += trip->summary.length.si();
    const auto spent = exposure(civilDate(trips.front()->start), civilDate(now));
    double yearly = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        f.shares[m] = spent[m] > 0.0 ? metres[m] / spent[m] * daysPerMonth : 0.0;
        yearly += f.shares[m];
    }
    const double even = 6.0 / (6.0 + f.months);
    for (double &share : f.shares)
        share = even / 12.0 + (1.0 - even) * share / yearly;
    f.yearly = Distance::fromSi(yearly);
}

void fillRate(UsageForecast &f, const TripStatistics &s)
{
    // A year's sum of n trips spreads by (1 + cv^2) / n; the log's own mean is uncertain the same way.
    const double years = f.months / 12.0;
    const double perYear = static_cast<double>(f.trips) / years;
    const double lumpy = 1.0 + s.variance / (s.mean * s.mean);
    const double spread = std::sqrt(lumpy * (1.0 / perYear + 1.0 / static_cast<double>(f.trips)));
    const double mean = f.yearly.si() / daysPerYear;
    f.rate = lognormalFromMean(mean, mean * std::clamp(spread, 0.15, 1.0));
}

void fillTrips(UsageForecast &f, const TripStatistics &s, double logDays)
{
    const double rate = static_cast<double>(f.trips) / std::max(logDays, leastLogDays);
    const double meanSquare = s.mean * s.mean + s.variance;
    f.lumps = {rate * s.mean, rate * meanSquare};
    f.overshoot = Distance::fromSi(meanSquare / (2.0 * s.mean));
    f.yearly = Distance::fromSi(f.lumps.drift * daysPerYear);
}

void fillStated(UsageForecast &f, const Rig &rig)
{
    f.level = rig.yearly ? UsageLevel::Stated : UsageLevel::Default;
    f.yearly = rig.yearly.value_or(commonYearly);
    if (!(f.yearly > Distance())) {
        f.level = UsageLevel::Standing;
        return;
    }
    f.rate = {std::log(f.yearly.si() / daysPerYear), std::log(2.0) / normalQuantile(0.9)};
}

// Days from `from` until the season's weights have added up to `even` days of an even year.
std::optional<double> seasonDays(const std::array<double, 12> &shares, CivilDate from, double even)
{
    double gone = 0.0;
    for (CivilDate date = from; gone < hundredYears;) {
        const CivilDate next = addMonths(date.year() / date.month() / 1, 1);
        const double length = static_cast<double>(daysBetween(date, next));
        const double weight = shares[monthIndex(date)] * 12.0;
        if (weight * length >= even)
            return gone + even / weight;
        even -= weight * length;
        gone += length;
        date = next;
    }
    return std::nullopt;
}

} // namespace

Distance distanceBetween(const RigHistory &history, Instant from, Instant to)
{
    Distance sum;
    for (const Trip *trip : driven(history, to))
        sum = sum + within(*trip, from, to);
    return sum;
}

Distance distanceSince(const RigHistory &history, Instant since)
{
    return distanceBetween(history, since, Instant::max());
}

std::optional<LocalTime> reachedAt(const RigHistory &history, Instant since, Distance wanted, LocalTime now)
{
    Distance sum;
    for (const Trip *trip : driven(history, now.instant)) {
        const Distance part = within(*trip, since, now.instant);
        if (part > Distance() && sum + part >= wanted) {
            const Instant from = std::max(trip->start.instant, since);
            const Instant to = std::min(std::max(trip->end.instant, trip->start.instant), now.instant);
            const double share = std::clamp((wanted - sum) / part, 0.0, 1.0);
            const auto into = std::chrono::duration<double, std::milli>(to - from) * share;
            return LocalTime{from + std::chrono::floor<std::chrono::milliseconds>(into), trip->start.offset};
        }
        sum = sum + part;
    }
    return std::nullopt;
}

std::string_view slug(UsageLevel level)
{
    switch (level) {
    case UsageLevel::Season:
        return "season";
    case UsageLevel::Trips:
        return "trips";
    case UsageLevel::Stated:
        return "stated";
    case UsageLevel::Default:
        return "default";
    case UsageLevel::Standing:
        return "standing";
    }
    return "default";
}

UsageForecast forecastUsage(const RigHistory &history, LocalTime now)
{
    UsageForecast f;
    f.shares.fill(1.0 / 12.0);
    const auto trips = driven(history, now.instant);
    f.trips = static_cast<int>(trips.size());
    const double logDays = trips.empty() ? 0.0 : daysFrom(trips.front()->start.instant, now.instant);
    f.months = logDays / daysPerMonth;
    if (!trips.empty() && f.months >= monthsForSeason) {
        f.level = UsageLevel::Season;
        fillSeason(f, trips, now);
        fillRate(f, statistics(trips));
    } else if (trips.size() >= 3) {
        f.level = UsageLevel::Trips;
        fillTrips(f, statistics(trips), logDays);
    } else {
        fillStated(f, history.rig);
    }
    return f;
}

std::optional<double> daysToDrive(const UsageForecast &f, Distance left, CivilDate from, double p)
{
    if (f.level == UsageLevel::Standing)
        return std::nullopt;
    if (left <= Distance())
        return 0.0;
    const bool lumpy = f.level == UsageLevel::Trips;
    const double even =
        lumpy ? daysUntil(f.lumps, (left + f.overshoot).si(), p) : daysUntil(f.rate, left.si(), p);
    if (!(even < hundredYears))
        return std::nullopt;
    return seasonDays(f.shares, from, even);
}

} // namespace snugwalk
