// SPDX-License-Identifier: Apache-2.0
// weather at: what a place usually brings, on a day or over a year.
#include <algorithm>
#include <array>
#include <cmath>

#include "base/text.hpp"
#include "base/units.hpp"
#include "cli/weather_options.hpp"
#include "cli/weather_rates.hpp"
#include "weather/laws/climate_class.hpp"
#include "weather/laws/freeze_thaw.hpp"
#include "weather/laws/humidity.hpp"
#include "weather/laws/radiation.hpp"
#include "weather/laws/sealant_window.hpp"
#include "weather/laws/ultraviolet.hpp"
#include "weather/laws/wetness.hpp"
#include "weather/weathering.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct AtOptions {
    std::string latitude, longitude, when, altitude;
    bool covered = false;
};

Value estimated(double value, std::string_view unit, double error)
{
    return Value::Map{{"value", value},
                      {"unit", unit},
                      {"low", value - error},
                      {"high", value + error},
                      {"estimated", true}};
}

// A day as told, then with its temperatures, half its range and its humidity off by their usual error, down
// and up.
using DoubtedDay = std::array<DayNormal, 7>;
using DoubtedFigure = std::array<double, 7>;

DoubtedDay doubted(const DayNormal &day)
{
    const auto off = [&](double mean, double halfRange, double humidity) {
        const Temperature middle = day.low + (day.high - day.low) * 0.5 + TemperatureDifference::fromSi(mean);
        const double half = std::max(0.0, (day.high - day.low).si() / 2.0 + halfRange);
        DayNormal other = day;
        other.mean = day.mean + TemperatureDifference::fromSi(mean);
        other.low = middle + TemperatureDifference::fromSi(-half);
        other.high = middle + TemperatureDifference::fromSi(half);
        other.humidity = std::clamp(day.humidity + humidity, 1.0, 100.0);
        return other;
    };
    const NormalError &e = normalError;
    return {day,
            off(-e.meanC, 0, 0),
            off(e.meanC, 0, 0),
            off(0, -e.halfRangeC, 0),
            off(0, e.halfRangeC, 0),
            off(0, 0, -e.humidityPct),
            off(0, 0, e.humidityPct)};
}

template <typename Of>
DoubtedFigure figuresOf(const DoubtedDay &days, Of of)
{
    DoubtedFigure out{};
    std::transform(days.begin(), days.end(), out.begin(), of);
    return out;
}

double dewOf(const DayNormal &d)
{
    const auto dew = dewPoint(d.mean, d.humidity);
    return inCelsius(dew ? *dew : d.low); // colder than the law reaches
}
double wetHoursOf(const DayNormal &d) { return expectedWetHours(d.low, d.high, d.humidity); }
double frostOf(const DayNormal &d) { return expectedFreezeThaw({d.low, d.high}); }
double sealantOf(const DayNormal &d) { return sealantHours(d.low, d.high, d.humidity); }

// The three errors are taken as independent of each other; what the formula itself is off by is not in it.
Value estimated(const DoubtedFigure &f, std::string_view unit, double least, double most)
{
    double down = 0.0;
    double up = 0.0;
    for (std::size_t i = 1; i < f.size(); i += 2) {
        down = std::hypot(down, f[0] - std::min({f[0], f[i], f[i + 1]}));
        up = std::hypot(up, std::max({f[0], f[i], f[i + 1]}) - f[0]);
    }
    return Value::Map{{"value", f[0]},
                      {"unit", unit},
                      {"low", std::max(least, f[0] - down)},
                      {"high", std::min(most, f[0] + up)},
                      {"estimated", true}};
}

Value normalValue(const DayNormal &day)
{
    const DoubtedDay days = doubted(day);
    return Value::Map{
        {"mean", estimated(inCelsius(day.mean), "°C", normalError.meanC)},
        {"low", estimated(inCelsius(day.low), "°C", normalError.meanC + normalError.halfRangeC)},
        {"high", estimated(inCelsius(day.high), "°C", normalError.meanC + normalError.halfRangeC)},
        {"humidity", estimated(day.humidity, "%", normalError.humidityPct)},
        {"dew_point", dewPoint(day.mean, day.humidity)
                          ? estimated(figuresOf(days, dewOf), "°C", -HUGE_VAL, HUGE_VAL)
                          : Value()},
        {"wet_hours", estimated(figuresOf(days, wetHoursOf), "h", 0, 24)},
        {"freeze_thaw", estimated(figuresOf(days, frostOf), "1", 0, 1)},
        {"sealant_hours", estimated(figuresOf(days, sealantOf), "h", 0, 24)}};
}

Value skyValue(const SiteWeather &site, double latitude, CivilDate date, const DayNormal &day)
{
    const SolarDay sun = solarDay(latitude, dayOfYear(date)).value();
    UvSky sky;
    sky.altitude = site.altitude();
    return Value::Map{{"extraterrestrial", sun.extraterrestrial},
                      {"clear_sky", clearSkyRadiation(sun, site.altitude())},
                      {"radiation", rangeRadiation(sun, day.high - day.low, site.altitude())},
                      {"day_length", sun.dayLength},
                      {"uv_index_hours", uvDay(latitude, dayOfYear(date), sky).value().indexHours},
                      {"units", Value::Map{{"extraterrestrial", "MJ/(m² d)"},
                                           {"clear_sky", "MJ/(m² d)"},
                                           {"radiation", "MJ/(m² d)"},
                                           {"day_length", "h"},
                                           {"uv_index_hours", "h"}}}};
}

Value siteValue(const GeoPoint &place, const SiteWeather &site)
{
    return Value::Map{{"latitude", place.latitude},
                      {"longitude", place.longitude},
                      {"cell", cellValue(place)},
                      {"altitude", figure(site.altitude().si(), "m")},
                      {"coast", site.fromCoast() ? figure(site.fromCoast()->si(), "m") : Value()},
                      {"notes", textList(site.notes())}};
}

Answer onDate(const GeoPoint &place, SiteWeather &site, CivilDate date, bool covered)
{
    const DayNormal day = site.normal(date);
    const DayRates rates = covered ? underRoof(site.rates(date)) : site.rates(date);
    Value json = siteValue(place, site);
    json.member("date") = formatDate(date);
    json.member("basis") = "computed";
    json.member("source") = "LEGATES-WILLMOTT-1989, CRU-CL2";
    json.member("normal") = normalValue(day);
    json.member("sky") = skyValue(site, place.latitude, date, day);
    json.member("rates") = ratesValue(rates);
    const std::string text = formatDate(date) + ", estimated: " + fixed(inCelsius(day.low), 0) + " to " +
                             fixed(inCelsius(day.high), 0) + " °C, humidity about " + fixed(day.humidity, 0) +
                             " %\n" + "against the reference of 1: " + rateWords(rates);
    return {json, text};
}

// Sums over a year, day by day.
struct YearSums {
    DoubtedFigure cycles{}, wetHours{};
    double indexHours = 0.0;
    std::array<RateRange, weatherDrivers.size()> mean{};
};

YearSums sumsOf(SiteWeather &site, double latitude, std::chrono::year year, bool covered)
{
    YearSums sums;
    sums.mean.fill({0.0, 0.0, 0.0});
    UvSky sky;
    sky.altitude = site.altitude();
    int days = 0;
    for (CivilDate date{year, std::chrono::January, std::chrono::day{1}}; date.year() == year;
         date = addDays(date, 1)) {
        const DayNormal day = site.normal(date);
        const DoubtedDay others = doubted(day);
        for (std::size_t i = 0; i < others.size(); ++i) {
            sums.cycles.at(i) += frostOf(others.at(i));
            sums.wetHours.at(i) += wetHoursOf(others.at(i));
        }
        sums.indexHours += uvDay(latitude, dayOfYear(date), sky).value().indexHours;
        const DayRates rates = covered ? underRoof(site.rates(date)) : site.rates(date);
        for (std::size_t i = 0; i < sums.mean.size(); ++i) {
            sums.mean.at(i).value += rates.rate.at(i).value;
            sums.mean.at(i).low += rates.rate.at(i).low;
            sums.mean.at(i).high += rates.rate.at(i).high;
        }
        ++days;
    }
    for (RateRange &rate : sums.mean)
        rate = {rate.value / days, rate.low / days, rate.high / days};
    return sums;
}

Value monthsValue(const ClimateNormals &normals)
{
    Value::List months;
    for (std::size_t i = 0; i < normals.months.size(); ++i) {
        const MonthlyNormal &m = normals.months.at(i);
        const Value rain = Value::Map{{"value", m.rainMm},
                                      {"unit", "mm"},
                                      {"low", m.rainMm / normalError.rainFactor},
                                      {"high", m.rainMm * normalError.rainFactor},
                                      {"estimated", true}};
        months.push_back(
            Value::Map{{"month", i + 1},
                       {"mean", estimated(m.meanC, "°C", normalError.meanC)},
                       {"low", estimated(m.lowC, "°C", normalError.meanC + normalError.halfRangeC)},
                       {"high", estimated(m.highC, "°C", normalError.meanC + normalError.halfRangeC)},
                       {"humidity", estimated(m.humidityPct, "%", normalError.humidityPct)},
                       {"rain", rain}});
    }
    return months;
}

std::string monthLines(const ClimateNormals &normals)
{
    std::string out = "month  low  mean  high °C   rain mm  humidity %   (estimated)\n";
    for (std::size_t i = 0; i < normals.months.size(); ++i) {
        const MonthlyNormal &m = normals.months.at(i);
        out += padded(std::to_string(i + 1), 5) + padded(fixed(m.lowC, 0), 3) + padded(fixed(m.meanC, 0), 4) +
               padded(fixed(m.highC, 0), 8) + padded(fixed(m.rainMm, 0), 7) + fixed(m.humidityPct, 0) + "\n";
    }
    return out;
}

ClimateMonths climateMonths(const ClimateNormals &normals)
{
    ClimateMonths months;
    for (std::size_t i = 0; i < normals.months.size(); ++i) {
        months.temperature.at(i) = normals.months.at(i).meanC;
        months.rain.at(i) = normals.months.at(i).rainMm;
    }
    return months;
}

Result<Answer> ofYear(const GeoPoint &place, SiteWeather &site, std::chrono::year year, bool covered)
{
    const YearSums sums = sumsOf(site, place.latitude, year, covered);
    const auto climate = climateClass(climateMonths(*site.months()));
    const auto steel = corrosionRate(Metal::Steel, *site.air());
    if (!climate || !steel)
        return climate ? steel.error() : climate.error();
    DayRates mean;
    mean.rate = sums.mean;
    Value json = siteValue(place, site);
    json.member("year") = static_cast<int>(year);
    json.member("basis") = "computed";
    json.member("source") = "LEGATES-WILLMOTT-1989, CRU-CL2";
    json.member("months") = monthsValue(*site.months());
    json.member("freeze_thaw") = estimated(sums.cycles, "1", 0, 366);
    json.member("wet_hours") = estimated(sums.wetHours, "h", 0, 8784);
    json.member("wetness_class") = wetnessClass(std::min(sums.wetHours[0], 8784.0)).value();
    json.member("uv_index_hours") =
        Value::Map{{"value", sums.indexHours},
                   {"unit", "h"},
                   {"low", sums.indexHours * (1.0 - uvDoubt)},
                   {"high", sums.indexHours * (1.0 + uvDoubt +
                                               uvDoubtPerKm * std::max(0.0, site.altitude().si() / 1000.0))},
                   {"estimated", true}};
    json.member("class") = climate->name;
    json.member("runner_up") = climate->runnerUp.empty() ? Value() : Value(climate->runnerUp);
    json.member("steel") = estimateValue(steel->firstYear);
    json.member("corrosivity") = corrosivityName(steel->category);
    json.member("rates") = ratesValue(mean);
    const std::string text = monthLines(*site.months()) + "class " + climate->name + "; " +
                             fixed(sums.cycles[0], 0) + " freeze-thaw cycles, " + fixed(sums.wetHours[0], 0) +
                             " wet hours, steel " + std::string(corrosivityName(steel->category)) +
                             "\nagainst the reference of 1: " + rateWords(mean);
    return Answer{json, text};
}

Result<Answer> at(const AtOptions &o)
{
    auto place = placeOf(o.latitude, o.longitude);
    if (!place)
        return place.error();
    if (!o.altitude.empty()) {
        const auto altitude = altitudeOf(o.altitude, "--altitude");
        if (!altitude)
            return altitude.error();
        place->altitude = altitude->si();
    }
    const auto number = parseInteger(o.when);
    const auto date = parseDate(o.when);
    if (!date && !(number && *number >= 1900 && *number <= 2200))
        return Error{Errc::InvalidInput, "neither a date nor a year: \"" + o.when + "\"", "WHEN",
                     "write 2026-07-15 for a day, 2026 for a year"};
    const Result<WorldTables> tables = worldTables();
    if (!tables)
        return tables.error();
    SiteWeather site = siteWeatherAt(*place, &tables->climate, &tables->coast);
    if (!site.hasNormals())
        return Error{Errc::NotFound, "the climate table ends there", o.latitude + ", " + o.longitude,
                     "it has land from 60° S to 84° N; give a place on land"};
    if (date)
        return onDate(*place, site, *date, o.covered);
    return ofYear(*place, site, std::chrono::year{static_cast<int>(*number)}, o.covered);
}

} // namespace

void addWeatherPlaceCommands(CLI::App &weather, Registry &registry)
{
    auto a = std::make_shared<AtOptions>();
    CLI::App *place =
        weather.add_subcommand("at", "what a place usually brings on a day or over a year, estimated");
    place->add_option("lat", a->latitude, "latitude, degrees, south negative")->required();
    place->add_option("lon", a->longitude, "longitude, degrees, west negative")->required();
    place->add_option("when", a->when, "a date such as 2026-07-15, or a year")->required();
    place->add_option("--altitude", a->altitude,
                      "above the sea, m unless a unit is written (default: the land's mean height)");
    place->add_flag("--covered", a->covered, "under a roof");
    registry.add(*place,
                 "  snugwalk weather at -44.27 170.10 2026-07-15\n  snugwalk weather at 35.2 -111.6 2026 "
                 "--altitude \"7000 ft\"",
                 [a](Session &) { return at(*a); });

    addWeatherRigCommand(weather, registry);
}

} // namespace snugwalk::cli
