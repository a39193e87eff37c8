// SPDX-License-Identifier: Apache-2.0
// Which recorded day stands for a place.
#pragma once

#include <span>
#include <vector>

#include "base/geo.hpp"
#include "trip/weather_record.hpp"

namespace snugwalk {

/// Recorded days by date, each with where it was recorded. Points into the records, which must outlive it.
class RecordedDays {
public:
    explicit RecordedDays(std::span<const WeatherRecord> records);

    /// The day's record nearest to `place` within 50 km (common practice, no source), the later one of two as
    /// near; null without one.
    [[nodiscard]] const WeatherDay *near(CivilDate date, const GeoPoint &place) const;

private:
    struct Row {
        CivilDate date;
        const GeoPoint *place;
        const WeatherDay *day;
    };
    std::vector<Row> m_days;
};

} // namespace snugwalk
