// SPDX-License-Identifier: Apache-2.0
// A list by date, searched by halves.
#include "weather/recorded_days.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

constexpr Distance recordReach = kilometres(50.0);

} // namespace

RecordedDays::RecordedDays(std::span<const WeatherRecord> records)
{
    for (const WeatherRecord &record : records) {
        for (const WeatherDay &day : record.days)
            m_days.push_back({day.date, &record.place, &day});
    }
    std::stable_sort(m_days.begin(), m_days.end(),
                     [](const Row &a, const Row &b) { return a.date < b.date; });
}

const WeatherDay *RecordedDays::near(CivilDate date, const GeoPoint &place) const
{
    const auto first = std::lower_bound(m_days.begin(), m_days.end(), date,
                                        [](const Row &row, CivilDate d) { return row.date < d; });
    const WeatherDay *best = nullptr;
    Distance nearest = recordReach;
    for (auto row = first; row != m_days.end() && row->date == date; ++row) {
        const Distance away = *row->place == place ? Distance() : distanceBetween(*row->place, place);
        if (away <= nearest) {
            nearest = away;
            best = row->day;
        }
    }
    return best;
}

} // namespace snugwalk
