// SPDX-License-Identifier: Apache-2.0
// What the weather usually is at a place, month by month, for days that nobody recorded.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "base/result.hpp"
#include "weather/climate_table.hpp"

namespace snugwalk {

/// One calendar month of an average year, 1961 to 1990. Every member is estimated; see `normalError`.
struct MonthlyNormal {
    double meanC = 0.0;
    double lowC = 0.0;  ///< mean of the daily minima
    double highC = 0.0; ///< mean of the daily maxima
    double rainMm = 0.0;
    double humidityPct = 0.0; ///< relative humidity of the month's mean vapor at its mean temperature
};

struct ClimateNormals {
    std::array<MonthlyNormal, 12> months;
    double elevation = 0.0; ///< m above the sea that the temperatures are for
    bool landData = false;  ///< false: the table knows sea there, or a strip of shore that it holds as sea
    /// Slugs: `estimated` always; `sea_cell`; `altitude_far`: over 1,000 m from the height of the table.
    std::vector<std::string> notes;
};

/// How far a normal lies from stations, as the root of the mean square: the table that
/// tests/reference/weather/climate_stations.py prints (United States, Canada, France, United Kingdom; other
/// continents are not checked).
struct NormalError {
    double meanC = 0.0;
    double halfRangeC = 0.0;  ///< of (high - low) / 2
    double rainFactor = 0.0;  ///< times or divided by, for a month
    double humidityPct = 0.0; ///< percentage points
};
inline constexpr NormalError normalError{1.6, 1.4, 1.45, 15.0};

/// The world's land by 20 minutes of arc.
///
/// Method:   July and December from the table, brought to the altitude by 6.5 K/km; other months on the
/// cosine of
///           a year through both with its turn on day 201 (20 July), which is the coldest day where December
///           is the warmer one; rain likewise, never below 0. Half the daily range =
///           7.46 - 1.32 ln((P + 100) / (max(T, -5) + 15)) + 0.68 ln(1 + d/10) + 0.062 Ra / (1 + exp(-t/4)),
///           held to 2.5 .. 9 K: P mm and T °C of the year, d km to the sea, Ra MJ m⁻² d⁻¹ above the air and
///           t °C of the month; fitted to 209 stations in Colorado, Seattle, New York and 759 stations of the
///           United States and Canada on one day. Vapor by `inlandDewPoint`, blended with the humidity over
///           the sea by exp(-d/100 km - z/1,000 m).
/// Source:   [LEGATES-WILLMOTT-1989], [CRU-CL2], [COADS], [ETOPO5]; [FAO-56] equation 52 for evaporation
/// Accuracy: `normalError`
/// Limits:   two months carry the year: a double rainy season, a monsoon that breaks in spring, fog coasts
/// and
///           the warming since 1990 (about 1 K) are not seen
/// Tests:    tests/unit/weather/tst_climate.cpp, tests/reference/weather/climate_stations.py
class Climate {
public:
    [[nodiscard]] static Result<Climate> fromBytes(std::string_view bytes);

    /// Nothing where the table ends: at sea, north of 84° N, south of 60° S, and for what is no place.
    /// \param altitude m above the sea; without it the land's mean height there
    [[nodiscard]] std::optional<ClimateNormals> normalsAt(const GeoPoint &place,
                                                          std::optional<double> altitude = {}) const;

private:
    explicit Climate(ClimateTable table) : m_table(std::move(table)) {}

    ClimateTable m_table;
};

/// Dew point of a day from its minimum, lower where the air is dry the year round:
/// Td = Tn (-0.127 + 1.121 (1.003 - 1.444 E + 12.312 E² - 32.766 E³) + 0.0006 (Tx - Tn)), kelvin,
/// E = evaporation of the day / rain of the year, held to 0 .. 0.094, where the cubic is lowest.
///
/// \param dailyEvaporation, yearlyRain in mm
/// Source:   [KIMBALL-1997], from memory
/// Accuracy: 2.7 K for one day's own minimum at 770 North American stations; humid ones come out 0.7 K high
[[nodiscard]] double inlandDewPoint(double lowC, double highC, double dailyEvaporation, double yearlyRain);

} // namespace snugwalk
