// SPDX-License-Identifier: Apache-2.0
// What the weather did to the rig, day by day and driver by driver, in units of a reference year.
#pragma once

#include <array>
#include <functional>
#include <span>
#include <string>
#include <vector>

#include "base/time.hpp"
#include "trip/trip.hpp"
#include "trip/weather_record.hpp"
#include "weather/climate.hpp"
#include "weather/coast.hpp"
#include "weather/day_rates.hpp"
#include "weather/site_weather.hpp"

namespace snugwalk {

struct Weathering {
    CivilDate first{};          ///< day of `days.front()`
    std::vector<DayRates> days; ///< one a civil day up to `until`
    /// What the calendar months bring where the rig stands now, under its cover of now; once it has a year of
    /// known days, month by month the mean of where it stood in that month.
    std::array<DayRates, 12> usual{};
    std::vector<CivilDate> winterRoads; ///< days driven at a mean under 3 °C: roads may have been salted
    /// `no_place`, `before_first` (days before the first known place), `no_climate`, `no_coast`,
    /// `beyond_data` (no normals there), `winter_roads`, and what the climate's tables say of themselves.
    std::vector<std::string> notes;
};

/// Rates by day from `from` to `until`, both included. A record replaces the normals of a day when it was
/// taken within 50 km of the rig (common practice); the nearest one counts, the later one of two as near.
///
/// Roads in winter: a day driven at a mean under 3 °C and the 13 after it count as salt of C4 at least, up to
/// C5; common practice: no dose law is published, and washing is not known.
///
/// \param climate, coast null where their tables are not at hand
/// Accuracy: each rate carries its range; places within 0.01 degrees and 50 m are taken as one, distances to
/// the
///           coast within 10 %
/// Tests:    tests/unit/weather/tst_weathering.cpp
[[nodiscard]] Weathering weatheringOf(std::span<const Trip> trips, std::span<const Stay> stays,
                                      std::span<const WeatherRecord> records, const Climate *climate,
                                      const Coast *coast, CivilDate from, CivilDate until);

/// Tells the weather of a place; asked once a place.
using SiteSource = std::function<SiteWeather(const GeoPoint &)>;

/// The same from any source of normals.
[[nodiscard]] Weathering weatheringOf(std::span<const Trip> trips, std::span<const Stay> stays,
                                      std::span<const WeatherRecord> records, const SiteSource &sites,
                                      CivilDate from, CivilDate until);

/// Normals and distance to the coast of a place, as `weatheringOf` takes them.
[[nodiscard]] SiteWeather siteWeatherAt(const GeoPoint &place, const Climate *climate, const Coast *coast);
/// The same where the distance is known; nothing: inland, with the range of any coast.
[[nodiscard]] SiteWeather siteWeatherAt(const GeoPoint &place, const Climate *climate,
                                        std::optional<Distance> fromCoast);

} // namespace snugwalk
