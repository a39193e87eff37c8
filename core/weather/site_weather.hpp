// SPDX-License-Identifier: Apache-2.0
// The weather of one place as doses: of a normal day, or of a day that was recorded.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/geo.hpp"
#include "trip/weather_record.hpp"
#include "weather/climate.hpp"
#include "weather/day_normals.hpp"
#include "weather/day_rates.hpp"
#include "weather/laws/corrosion.hpp"

namespace snugwalk {

/// Share of each dose that reaches a rig under a roof: of light 0.1, of wetness and salt 0.5, of heat and
/// frost all. Common practice.
[[nodiscard]] DayRates underRoof(DayRates open);

/// Keeps what it has worked out for each day of the year; not for use by two threads at once.
class SiteWeather {
public:
    /// \param normals nothing where the tables end
    /// \param fromCoast nothing where it is not known: the value is that of inland, the range reaches to
    ///        the surf
    SiteWeather(const GeoPoint &place, std::optional<ClimateNormals> normals,
                std::optional<Distance> fromCoast);

    [[nodiscard]] bool hasNormals() const { return m_normals.has_value(); }
    [[nodiscard]] const std::optional<ClimateNormals> &months() const { return m_months; }
    [[nodiscard]] std::optional<Distance> fromCoast() const { return m_fromCoast; }
    [[nodiscard]] Length altitude() const { return m_altitude; }
    [[nodiscard]] const std::vector<std::string> &notes() const { return m_notes; }
    /// Asks for normals.
    [[nodiscard]] DayNormal normal(CivilDate date) const;
    /// A year of this place's air, with salt by the distance from the coast and usual SO2.
    [[nodiscard]] std::optional<CorrosiveAir> air() const;

    /// Rates of a normal day in the open.
    ///
    /// Sun:     index hours of the clear day at 300 DU (what weathers polymers is mostly UV-A, which ozone
    /// lets
    ///          through) times what clouds let through, c^0.8, c = Rs / Rso told by the day's range of
    ///          temperature; 20 % either way, and 4 % a kilometre more at altitude
    /// Heat:    Arrhenius over the day's swing at 0.7 eV; range by 0.5 and 0.9 eV
    /// Wetness: expected hours, 25 % either way
    /// Frost:   expected cycles, half to one and a half
    /// Salt:    first year of steel by the place's annual means; range by those of salt and of the law
    /// Source:  [FAO-56], [MADRONICH-2007], [ISO-9223-2012]; the power 0.8 and the ranges: common practice
    [[nodiscard]] const DayRates &rates(CivilDate date);
    /// The same from a record, which tells range, light, humidity and wet hours where it has them.
    /// \param cycles freeze-thaw cycles that ended that day, counted from the record
    [[nodiscard]] DayRates recordedRates(const WeatherDay &day, int cycles);

private:
    struct Air {
        Temperature low, high;
        std::optional<double> humidity, radiation, wetHours, cycles;
    };
    [[nodiscard]] DayRates ratesOf(CivilDate date, const Air &air);
    [[nodiscard]] RateRange sun(CivilDate date, const Air &air);
    double clearUv(CivilDate date);

    double m_latitude;
    Length m_altitude;
    std::optional<ClimateNormals> m_months;
    std::optional<DayNormals> m_normals;
    std::optional<Distance> m_fromCoast;
    RateRange m_salt;
    std::vector<std::string> m_notes;
    // by day of a leap year: many places are stood at for a day or two only
    std::map<unsigned, DayRates> m_rates;
    std::map<unsigned, double> m_clearUv;
};

} // namespace snugwalk
