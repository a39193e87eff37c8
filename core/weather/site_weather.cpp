// SPDX-License-Identifier: Apache-2.0
// Laws applied to a place.
#include "weather/site_weather.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "base/units.hpp"
#include "weather/laws/freeze_thaw.hpp"
#include "weather/laws/heat_ageing.hpp"
#include "weather/laws/radiation.hpp"
#include "weather/laws/ultraviolet.hpp"
#include "weather/laws/wetness.hpp"

namespace snugwalk {
namespace {

constexpr std::array<std::string_view, weatherDrivers.size()> slugs = {"sun", "heat", "wetness", "frost",
                                                                       "salt"};

constexpr double sunSpread = 0.2;
constexpr double altitudeSpreadPerKm = 0.04;
constexpr double cloudPower = 0.8;  // ultraviolet passes clouds more easily than the rest of the light
constexpr double leastCloud = 0.31; // overcast
constexpr double heatLikely = 0.7, heatWeak = 0.5, heatStrong = 0.9; // eV
constexpr double wetSpread = 0.25;
constexpr double frostSpread = 0.5;
constexpr Distance farInland = kilometres(1000.0);
constexpr double roofSun = 0.1, roofWet = 0.5, roofSalt = 0.5;
// where nothing tells: the reference, half to double
constexpr RateRange untold{1.0, 0.5, 2.0};

unsigned slotOf(CivilDate date)
{
    return static_cast<unsigned>(date.month()) * 32 + static_cast<unsigned>(date.day());
}

RateRange scaled(const RateRange &r, double by) { return {r.value * by, r.low * by, r.high * by}; }

RateRange around(double value, double spread)
{
    return {value, value * (1.0 - spread), value * (1.0 + spread)};
}

double referenceUv()
{
    static const double mean = clearYearMeanUv(referenceLatitude);
    return mean;
}

RateRange heat(Temperature low, Temperature high)
{
    const double weak = dayAgeing(low, high, heatWeak);
    const double likely = dayAgeing(low, high, heatLikely);
    const double strong = dayAgeing(low, high, heatStrong);
    return {likely, std::min({weak, likely, strong}), std::max({weak, likely, strong})};
}

double meanOf(const ClimateNormals &normals, double MonthlyNormal::*part)
{
    const auto sum = std::accumulate(normals.months.begin(), normals.months.end(), 0.0,
                                     [&](double s, const MonthlyNormal &m) { return s + m.*part; });
    return sum / 12.0;
}

// Steel at the salt of a distance, over the middle of C3.
RateRange saltOf(CorrosiveAir air, const Estimate &chloride)
{
    const auto steel = [&](double salt) {
        air.chloride = salt;
        return corrosionRate(Metal::Steel, air);
    };
    const auto value = steel(chloride.value);
    const auto low = steel(chloride.low);
    const auto high = steel(chloride.high);
    if (!value || !low || !high) // normals outside what air can be: nothing is told
        return untold;
    return {value->firstYear.value / referenceSteel, low->firstYear.low / referenceSteel,
            high->firstYear.high / referenceSteel};
}

} // namespace

std::string_view slug(WeatherDriver driver) { return slugs.at(static_cast<std::size_t>(driver)); }

std::optional<WeatherDriver> findWeatherDriver(std::string_view text)
{
    const auto found = std::find(slugs.begin(), slugs.end(), text);
    if (found == slugs.end())
        return std::nullopt;
    return static_cast<WeatherDriver>(found - slugs.begin());
}

DayRates underRoof(DayRates open)
{
    for (const auto &[driver, share] : {std::pair(WeatherDriver::Sun, roofSun),
                                        {WeatherDriver::Wetness, roofWet},
                                        {WeatherDriver::Salt, roofSalt}})
        open[driver] = scaled(open[driver], share);
    return open;
}

SiteWeather::SiteWeather(const GeoPoint &place, std::optional<ClimateNormals> normals,
                         std::optional<Distance> fromCoast)
    : m_latitude(place.latitude), m_months(std::move(normals)), m_fromCoast(fromCoast)
{
    m_altitude = metres(place.altitude.value_or(m_months ? m_months->elevation : 0.0));
    m_salt = untold;
    if (m_months) {
        m_normals.emplace(*m_months);
        m_notes = m_months->notes;
        Estimate chloride = chlorideNearCoast(m_fromCoast.value_or(farInland));
        if (!m_fromCoast) // it may stand anywhere from there to the surf
            chloride.high = chlorideNearCoast(Distance()).high;
        m_salt = saltOf(*air(), chloride);
    } else {
        m_notes.emplace_back("beyond_data");
    }
}

DayNormal SiteWeather::normal(CivilDate date) const
{
    SNUG_ASSERT(m_normals.has_value());
    return m_normals->on(date);
}

std::optional<CorrosiveAir> SiteWeather::air() const
{
    if (!m_months)
        return std::nullopt;
    return CorrosiveAir{celsius(meanOf(*m_months, &MonthlyNormal::meanC)),
                        std::clamp(meanOf(*m_months, &MonthlyNormal::humidityPct), 1.0, 100.0), usualSulfur,
                        chlorideNearCoast(m_fromCoast.value_or(farInland)).value};
}

double SiteWeather::clearUv(CivilDate date)
{
    const auto kept = m_clearUv.find(slotOf(date));
    if (kept != m_clearUv.end())
        return kept->second;
    UvSky sky;
    sky.altitude = m_altitude;
    return m_clearUv[slotOf(date)] = uvDay(m_latitude, dayOfYear(date), sky).value().indexHours;
}

RateRange SiteWeather::sun(CivilDate date, const Air &air)
{
    const SolarDay day = solarDay(m_latitude, dayOfYear(date)).value();
    const double clear = clearSkyRadiation(day, m_altitude);
    const double light = air.radiation.value_or(rangeRadiation(day, air.high - air.low, m_altitude));
    const double through = clear > 0.0 ? std::pow(std::clamp(light / clear, 0.0, 1.0), cloudPower) : 1.0;
    RateRange rate = around(clearUv(date) * std::max(leastCloud, through) / referenceUv(), sunSpread);
    rate.high *= 1.0 + altitudeSpreadPerKm * std::max(0.0, m_altitude.si() / 1000.0);
    return rate;
}

DayRates SiteWeather::ratesOf(CivilDate date, const Air &air)
{
    DayRates out;
    out[WeatherDriver::Sun] = sun(date, air);
    out[WeatherDriver::Heat] = heat(air.low, air.high);
    out[WeatherDriver::Wetness] = untold;
    if (air.wetHours)
        out[WeatherDriver::Wetness] = around(*air.wetHours / referenceWetHours, 0.0);
    else if (air.humidity)
        out[WeatherDriver::Wetness] =
            around(expectedWetHours(air.low, air.high, *air.humidity) / referenceWetHours, wetSpread);
    out[WeatherDriver::Frost] =
        air.cycles ? around(*air.cycles / referenceCycles, 0.0)
                   : around(expectedFreezeThaw({air.low, air.high}) / referenceCycles, frostSpread);
    out[WeatherDriver::Salt] = m_salt;
    return out;
}

const DayRates &SiteWeather::rates(CivilDate date)
{
    const auto [kept, isNew] = m_rates.try_emplace(slotOf(date));
    if (isNew && !m_normals) {
        kept->second.known = false;
    } else if (isNew) {
        const DayNormal normal = m_normals->on(date);
        kept->second = ratesOf(date, {normal.low, normal.high, normal.humidity, {}, {}, {}});
    }
    return kept->second;
}

DayRates SiteWeather::recordedRates(const WeatherDay &day, int cycles)
{
    Air air{day.low, day.high, day.humidity, day.radiation, {}, cycles};
    if (!air.humidity && m_normals)
        air.humidity = m_normals->on(day.date).humidity;
    if (day.wet)
        air.wetHours = day.wet->si() / 3600.0;
    DayRates out = ratesOf(day.date, air);
    out.recorded = true;
    return out;
}

} // namespace snugwalk
