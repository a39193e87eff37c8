// SPDX-License-Identifier: Apache-2.0
// From two months of a table to the twelve of a year.
#include "weather/climate.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/units.hpp"
#include "weather/laws/humidity.hpp"
#include "weather/laws/radiation.hpp"

namespace snugwalk {
namespace {

constexpr std::array<double, 12> middleDay{15.5,  45.0,  74.5,  105.0, 135.5, 166.0,
                                           196.5, 227.5, 258.0, 288.5, 319.0, 349.5};
constexpr std::size_t july = 6;
constexpr std::size_t december = 11;
constexpr double turningDay = 201.0;
constexpr double shoreWidth = 100.0;   // km
constexpr double shoreHeight = 1000.0; // m
constexpr double farAltitude = 1000.0; // m
constexpr double latentHeat = 2.45;    // MJ/kg
constexpr double driestShare = 0.0937; // where Kimball's cubic turns

double season(std::size_t month)
{
    return std::cos(2.0 * std::numbers::pi * (middleDay[month] - turningDay) / 365.25);
}

/// The year's cosine through July and December.
double inMonth(std::size_t month, double atJuly, double atDecember)
{
    const double swing = (atJuly - atDecember) / (season(july) - season(december));
    return atJuly + swing * (season(month) - season(july));
}

/// Rain against what a warm year would dry up, the sea, and the sun where no snow throws it back.
double halfRange(double aridity, double meanC, double radiation, double seaDistance)
{
    const double half = 7.46 - 1.32 * std::log(aridity) + 0.68 * std::log1p(seaDistance / 10.0) +
                        0.062 * radiation / (1.0 + std::exp(-meanC / 4.0));
    return std::clamp(half, 2.5, 9.0);
}

/// Evaporation of a wet surface in mm a day, [FAO-56] equation 52.
double evaporation(const MonthlyNormal &month, double radiation)
{
    return 0.0023 * std::max(0.0, month.meanC + 17.8) * std::sqrt(month.highC - month.lowC) * radiation /
           latentHeat;
}

} // namespace

double inlandDewPoint(double lowC, double highC, double dailyEvaporation, double yearlyRain)
{
    const double e =
        yearlyRain > 0.0 ? std::clamp(dailyEvaporation / yearlyRain, 0.0, driestShare) : driestShare;
    const double low = celsius(lowC).si();
    const double dew =
        low * (-0.127 + 1.121 * (1.003 + e * (-1.444 + e * (12.312 - 32.766 * e))) + 0.0006 * (highC - lowC));
    return (Temperature::fromSi(dew) - celsius(0.0)).si();
}

Result<Climate> Climate::fromBytes(std::string_view bytes)
{
    auto table = ClimateTable::fromBytes(bytes);
    if (!table)
        return table.error();
    return Climate(std::move(*table));
}

std::optional<ClimateNormals> Climate::normalsAt(const GeoPoint &place, std::optional<double> altitude) const
{
    const auto cell = m_table.at(place);
    if (!cell)
        return std::nullopt;
    ClimateNormals normals;
    normals.elevation = altitude && std::isfinite(*altitude) ? *altitude : cell->elevation;
    normals.landData = cell->land;
    normals.notes = {"estimated"};
    if (!cell->land)
        normals.notes.emplace_back("sea_cell");
    if (std::abs(normals.elevation - cell->elevation) > farAltitude)
        normals.notes.emplace_back("altitude_far");

    double yearlyRain = 0.0;
    double yearlyMean = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        normals.months[m].meanC =
            inMonth(m, cell->julyAtSeaLevel, cell->decemberAtSeaLevel) - lapseKelvin * normals.elevation;
        yearlyMean += normals.months[m].meanC / 12.0;
        normals.months[m].rainMm = std::max(0.0, inMonth(m, cell->julyRain, cell->decemberRain));
        yearlyRain += normals.months[m].rainMm;
    }
    const double aridity = (yearlyRain + 100.0) / (std::max(yearlyMean, -5.0) + 15.0);
    const double shore =
        std::exp(-cell->seaDistance / shoreWidth - std::max(0.0, normals.elevation) / shoreHeight);
    for (std::size_t m = 0; m < 12; ++m) {
        MonthlyNormal &month = normals.months[m];
        // the day of the year is whole and within 1..366, the latitude was checked with the place
        const double radiation = solarDay(place.latitude, static_cast<int>(middleDay[m]))->extraterrestrial;
        const double half = halfRange(aridity, month.meanC, radiation, cell->seaDistance);
        month.lowC = month.meanC - half;
        month.highC = month.meanC + half;
        const double dew = inlandDewPoint(month.lowC, month.highC, evaporation(month, radiation), yearlyRain);
        const double inland = relativeHumidity(celsius(month.meanC), celsius(dew));
        const double sea = cell->seaHumidity[m] ? shore : 0.0;
        month.humidityPct = (1.0 - sea) * inland + sea * cell->seaHumidity[m].value_or(0.0);
    }
    return normals;
}

} // namespace snugwalk
