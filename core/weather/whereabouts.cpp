// SPDX-License-Identifier: Apache-2.0
// Arrivals in the order of time, one sweep over the days.
#include "weather/whereabouts.hpp"

#include <algorithm>
#include <utility>

namespace snugwalk {
namespace {

struct Arrival {
    LocalTime at;
    GeoPoint place;
    bool covered = false;
    PlaceBasis basis = PlaceBasis::Trip;
    std::optional<CivilDate> lastDay; ///< of what told the place; without one it goes on
};

CivilDate dayOf(Instant instant, ZoneOffset offset) { return civilDate({instant, offset}); }

void addTrip(const Trip &trip, std::vector<Arrival> &to)
{
    const auto arrive = [&](Instant at, const std::optional<GeoPoint> &place) {
        if (place && isValid(*place))
            to.push_back(
                {{at, trip.start.offset}, *place, false, PlaceBasis::Trip, dayOf(at, trip.start.offset)});
    };
    arrive(trip.start.instant, trip.summary.first);
    for (const StopOver &stop : trip.summary.stops)
        arrive(stop.from, stop.place);
    arrive(std::max(trip.start.instant, trip.end.instant), trip.summary.last);
}

void addStay(const Stay &stay, std::vector<Arrival> &to)
{
    if (!isValid(stay.place))
        return;
    std::optional<CivilDate> last;
    if (stay.to)
        last = civilDate(*stay.to);
    to.push_back({stay.from, stay.place, stay.covered, PlaceBasis::Stay, last});
}

std::vector<Arrival> arrivals(std::span<const Trip> trips, std::span<const Stay> stays)
{
    std::vector<Arrival> all;
    for (const Trip &trip : trips)
        addTrip(trip, all);
    for (const Stay &stay : stays)
        addStay(stay, all);
    std::stable_sort(all.begin(), all.end(), [](const Arrival &a, const Arrival &b) {
        return std::pair(civilDate(a.at), a.at.instant) < std::pair(civilDate(b.at), b.at.instant);
    });
    return all;
}

// The arrival that tells a day's place: the latest that still holds; else, of those with a last day, the
// latest of which that day is not over, such as a summer in a yard with a weekend away in it.
class Sweep {
public:
    explicit Sweep(std::vector<Arrival> all) : m_all(std::move(all)) {}

    DayPlace on(CivilDate date)
    {
        for (; m_next < m_all.size() && civilDate(m_all[m_next].at) <= date; ++m_next) {
            if (m_all[m_next].lastDay)
                m_bounded.push_back(m_next);
        }
        if (m_next == 0)
            return m_all.empty() ? DayPlace{}
                                 : DayPlace{m_all.front().place, false, PlaceBasis::BeforeFirst, false};
        while (!m_bounded.empty() && *m_all[m_bounded.back()].lastDay < date)
            m_bounded.pop_back();
        const Arrival &latest = m_all[m_next - 1];
        if (latest.lastDay && m_bounded.empty())
            return {latest.place, false, PlaceBasis::Inherited, false};
        const Arrival &here = latest.lastDay ? m_all[m_bounded.back()] : latest;
        return {here.place, here.covered, here.basis, false};
    }

private:
    std::vector<Arrival> m_all;
    std::size_t m_next = 0;
    std::vector<std::size_t> m_bounded;
};

void markDriven(std::span<const Trip> trips, CivilDate from, std::vector<DayPlace> &days)
{
    const auto count = static_cast<long long>(days.size());
    for (const Trip &trip : trips) {
        const long long first = std::max(0LL, daysBetween(from, civilDate(trip.start)));
        const long long last = std::min(count - 1, daysBetween(from, civilDate(trip.end)));
        for (long long i = first; i <= last; ++i)
            days[static_cast<std::size_t>(i)].driven = true;
    }
}

} // namespace

std::vector<DayPlace> whereabouts(std::span<const Trip> trips, std::span<const Stay> stays, CivilDate from,
                                  CivilDate until)
{
    std::vector<DayPlace> days;
    if (!(from <= until))
        return days;
    Sweep sweep(arrivals(trips, stays));
    days.resize(static_cast<std::size_t>(daysBetween(from, until)) + 1);
    CivilDate date = from;
    for (DayPlace &day : days) {
        day = sweep.on(date);
        date = addDays(date, 1);
    }
    markDriven(trips, from, days);
    return days;
}

} // namespace snugwalk
