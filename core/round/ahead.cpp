// SPDX-License-Identifier: Apache-2.0
// A plan day by day: its legs, and the usual between them.
#include <algorithm>
#include <span>

#include "due/aging/exposure.hpp"
#include "due/usage.hpp"
#include "road/shake.hpp"
#include "round/plan.hpp"
#include "weather/weathering.hpp"

namespace snugwalk {
namespace {

/// Driving as it usually goes: how far, and how rough.
struct UsualDriving {
    UsageForecast usage;
    double equivalent = 0.0; ///< smooth-road distance over distance
    double consumption = 1.0;
    double least = 1.0; ///< the ends of what the log's trips may have shaken, over `equivalent`
    double most = 1.0;
    bool driven = false;
};

UsualDriving usualDriving(const RigHistory &history, LocalTime now)
{
    UsualDriving usual;
    usual.usage = forecastUsage(history, now);
    const RoadHabit habit = roadHabitOf(history.trips);
    double whole = 0.0;
    double equivalent = 0.0;
    double consumed = 0.0;
    double low = 0.0;
    double high = 0.0;
    for (const Trip &trip : history.trips) {
        if (trip.start.instant > now.instant || !(trip.summary.length > Distance()))
            continue;
        const TripShake shake = shakeOf(trip, habit);
        whole += trip.summary.length.si();
        equivalent += shake.equivalent.si();
        low += shake.low.si();
        high += shake.high.si();
        consumed += shake.consumption * trip.summary.length.si();
    }
    usual.driven = whole > 0.0;
    if (usual.driven) {
        usual.equivalent = equivalent / whole;
        usual.consumption = consumed / whole;
        usual.least = low / equivalent;
        usual.most = high / equivalent;
    }
    return usual;
}

constexpr double daysPerYear = 365.25;

// Days [from, until] of one calendar month, driven as usual. Where no trip is known the shake is the
// reference, as without a plan (see `exposureOf`).
PlannedDrive usualDrive(const UsualDriving &usual, CivilDate from, CivilDate until)
{
    const double days = static_cast<double>(daysBetween(from, until) + 1);
    const double share = usual.usage.shares[static_cast<unsigned>(from.month()) - 1] * 12.0;
    const double years = days / daysPerYear;
    PlannedDrive drive{from, until, usual.usage.yearly * (share * years), {}, usual.consumption};
    drive.least = usual.least;
    drive.most = usual.most;
    drive.equivalent = usual.driven ? drive.distance * usual.equivalent : referenceYearly() * years;
    return drive;
}

PlannedDrive legDrive(const PlanLeg &leg, CivilDate from, const RoadHabit &habit)
{
    const double share = static_cast<double>(daysBetween(from, leg.until) + 1) /
                         static_cast<double>(daysBetween(leg.from, leg.until) + 1);
    Trip trip;
    trip.road = leg.road;
    trip.summary.length = leg.distance * share;
    const TripShake shake = shakeOf(trip, habit);
    PlannedDrive drive{from, leg.until, trip.summary.length, shake.equivalent, shake.consumption};
    if (shake.equivalent > Distance()) {
        drive.least = shake.low / shake.equivalent;
        drive.most = shake.high / shake.equivalent;
    }
    return drive;
}

std::vector<DayRates> legDays(const PlanLeg &leg, CivilDate from, const World *world)
{
    Stay stay; // longer by a day on either side, so that no time zone cuts one off
    stay.place = leg.place;
    stay.covered = leg.covered;
    stay.from.instant = startOfDay(addDays(from, -1));
    stay.to = LocalTime{startOfDay(addDays(leg.until, 2)), {}};
    const Climate *climate = world != nullptr && world->climate ? &*world->climate : nullptr;
    const Coast *coast = world != nullptr && world->coast ? &*world->coast : nullptr;
    return weatheringOf({}, std::span(&stay, 1), {}, climate, coast, from, leg.until).days;
}

// Days [from, until] as usual, month by month.
void addUsual(const RigHistory &history, const UsualDriving &usual, CivilDate from, CivilDate until,
              Ahead &ahead)
{
    while (from <= until) {
        const CivilDate last = std::min(addDays(addMonths(from.year() / from.month() / 1, 1), -1), until);
        const DayRates &month = history.weathering.usual[static_cast<unsigned>(from.month()) - 1];
        ahead.days.insert(ahead.days.end(), static_cast<std::size_t>(daysBetween(from, last) + 1), month);
        ahead.drives.push_back(usualDrive(usual, from, last));
        from = addDays(last, 1);
    }
}

} // namespace

Ahead aheadOf(const std::vector<PlanLeg> &plan, const RigHistory &history, const World *world, LocalTime now)
{
    const UsualDriving usual = usualDriving(history, now);
    const RoadHabit habit = roadHabitOf(history.trips);
    Ahead ahead;
    ahead.from = civilDate(now);
    CivilDate next = ahead.from;
    for (const PlanLeg &leg : plan) {
        if (leg.until < next)
            continue;
        const CivilDate from = std::max(leg.from, next);
        addUsual(history, usual, next, addDays(from, -1), ahead);
        const std::vector<DayRates> days = legDays(leg, from, world);
        ahead.days.insert(ahead.days.end(), days.begin(), days.end());
        ahead.drives.push_back(legDrive(leg, from, habit));
        next = addDays(leg.until, 1);
    }
    return ahead;
}

} // namespace snugwalk
