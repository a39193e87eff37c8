// SPDX-License-Identifier: Apache-2.0
// weather sun, uv, heat, dew: one formula each.
#include "base/text.hpp"
#include "base/units.hpp"
#include "cli/weather_options.hpp"
#include "weather/laws/heat_ageing.hpp"
#include "weather/laws/humidity.hpp"
#include "weather/laws/radiation.hpp"
#include "weather/laws/sealant_window.hpp"
#include "weather/laws/ultraviolet.hpp"

#include <cmath>
#include <numbers>

namespace snugwalk::cli {
namespace {

constexpr double radian = std::numbers::pi / 180.0;
constexpr double polarCircle = 66.5;
constexpr double clearSpread = 0.05; // of clear-sky radiation, common practice

struct SunOptions {
    std::string latitude, date, altitude = "0", sunshine;
};

struct UvOptions {
    std::string latitude, longitude, date, altitude = "0", ozone, cloud = "clear", zenith;
};

struct HeatOptions {
    std::string temperature, energy = "0.7", reference = "20";
};

struct DewOptions {
    std::string temperature, humidity, surface;
};

Result<Answer> sun(const SunOptions &o)
{
    const auto latitude = numberOf(o.latitude, "--lat", "35.5, degrees, south negative");
    const auto date = dateOf(o.date, "--date");
    const auto altitude = altitudeOf(o.altitude, "--altitude");
    if (!latitude || !date || !altitude)
        return !latitude ? latitude.error() : !date ? date.error() : altitude.error();
    const Result<SolarDay> day = solarDay(*latitude, dayOfYear(*date));
    if (!day)
        return day.error();
    const double clear = clearSkyRadiation(*day, *altitude);
    Value::List warnings;
    if (std::abs(*latitude) > polarCircle)
        warnings.emplace_back("beyond_polar_circle");
    Value json = Value::Map{{"value", clear},
                            {"unit", "MJ/(m² d)"},
                            {"low", clear * (1.0 - clearSpread)},
                            {"high", clear * (1.0 + clearSpread)},
                            {"basis", "published"},
                            {"source", "FAO-56"},
                            {"warnings", warnings},
                            {"day_of_year", dayOfYear(*date)},
                            {"extraterrestrial", day->extraterrestrial},
                            {"clear_sky", clear},
                            {"day_length", day->dayLength},
                            {"declination", day->declination.si() / radian},
                            {"units", Value::Map{{"extraterrestrial", "MJ/(m² d)"},
                                                 {"clear_sky", "MJ/(m² d)"},
                                                 {"day_length", "h"},
                                                 {"declination", "°"}}}};
    std::string text = "above the air " + fixed(day->extraterrestrial, 1) + ", under a clear sky " +
                       fixed(clear, 1) + " MJ/m² a day; " + fixed(day->dayLength, 1) + " h of daylight\n";
    if (!o.sunshine.empty()) {
        const auto hours = numberOf(o.sunshine, "--sunshine", "7.1, hours");
        const auto light = hours ? sunshineRadiation(*day, *hours) : Result<double>(hours.error());
        if (!light)
            return light.error();
        json.member("radiation") = *light;
        json.member("units").member("radiation") = "MJ/(m² d)";
        text += "with " + o.sunshine + " h of sunshine " + fixed(*light, 1) + " MJ/m²\n";
    }
    return Answer{json, text};
}

Result<double> cloudOf(const std::string &text)
{
    if (const auto share = cloudShare(text))
        return *share;
    return numberOf(text, "--cloud", "clear, scattered, broken, overcast, or a share such as 0.8");
}

Result<UvSky> skyOf(const UvOptions &o, double latitude, int day, std::vector<std::string> &defaulted)
{
    UvSky sky;
    const auto altitude = altitudeOf(o.altitude, "--altitude");
    const auto cloud = cloudOf(o.cloud);
    if (!altitude || !cloud)
        return altitude ? cloud.error() : altitude.error();
    sky.altitude = *altitude;
    sky.cloud = *cloud;
    if (!o.ozone.empty()) {
        const auto ozone = numberOf(o.ozone, "--ozone", "300, Dobson units");
        if (!ozone)
            return ozone.error();
        if (!(*ozone >= 100.0 && *ozone <= 700.0))
            return Error{Errc::OutOfRange, "no sky has that much or little ozone", "--ozone",
                         "give 100 to 700 DU"};
        sky.ozone = *ozone;
        return sky;
    }
    defaulted.emplace_back("ozone");
    if (o.longitude.empty())
        return sky;
    const auto longitude = numberOf(o.longitude, "--lon", "170.1, degrees, west negative");
    if (!longitude)
        return longitude.error();
    if (!(*longitude >= -180.0 && *longitude <= 180.0))
        return Error{Errc::OutOfRange, "no such longitude", "--lon", "give -180 to 180"};
    sky.ozone = ozoneColumn(latitude, *longitude, day);
    return sky;
}

Result<Answer> uv(const UvOptions &o)
{
    const auto latitude = numberOf(o.latitude, "--lat", "35.5, degrees, south negative");
    const auto date = dateOf(o.date, "--date");
    if (!latitude || !date)
        return latitude ? date.error() : latitude.error();
    std::vector<std::string> defaulted;
    const int number = dayOfYear(*date);
    const Result<UvSky> sky = skyOf(o, *latitude, number, defaulted);
    if (!sky)
        return sky.error();
    const Result<UvDay> day = uvDay(*latitude, number, *sky);
    if (!day)
        return day.error();
    Estimate index;
    index.value = day->noonIndex;
    if (!o.zenith.empty()) {
        const auto zenith = numberOf(o.zenith, "--zenith", "30, degrees from overhead");
        if (!zenith)
            return zenith.error();
        if (!(*zenith >= 0.0 && *zenith <= 180.0))
            return Error{Errc::OutOfRange, "no such angle", "--zenith", "give 0 (overhead) to 180"};
        index.value = uvIndex(std::cos(*zenith * radian), *sky);
    }
    index.low = index.value * (1.0 - uvDoubt);
    index.high = index.value * (1.0 + uvDoubt + uvDoubtPerKm * std::max(0.0, sky->altitude.si() / 1000.0));
    index.unit = "1";
    index.basis = "published";
    index.source = "MADRONICH-2007";
    index.inputsDefaulted = defaulted;
    Value json = estimateValue(index);
    json.member("noon_index") = day->noonIndex;
    json.member("index_hours") = day->indexHours;
    json.member("dose") = day->dose;
    json.member("ozone") = sky->ozone;
    json.member("units") = Value::Map{{"index_hours", "h"}, {"dose", "kJ/m²"}, {"ozone", "DU"}};
    const std::string text = "UV index " + fixed(index.value, 1) + (o.zenith.empty() ? " at noon; " : "; ") +
                             "over the day " + fixed(day->indexHours, 1) + " index hours, " +
                             fixed(day->dose, 2) + " kJ/m², at " + fixed(sky->ozone, 0) + " DU of ozone\n";
    return Answer{json, text};
}

Result<Answer> heat(const HeatOptions &o)
{
    const auto at = temperatureOf(o.temperature, "--temperature");
    const auto reference = temperatureOf(o.reference, "--reference");
    const auto energy = numberOf(o.energy, "--energy", "0.7, eV");
    if (!at || !reference || !energy)
        return !at ? at.error() : !reference ? reference.error() : energy.error();
    const auto factor = ageingFactor(*at, *energy, *reference);
    if (!factor)
        return factor.error();
    constexpr double doubt = 0.2; // eV
    const auto weak = ageingFactor(*at, std::max(0.05, *energy - doubt), *reference);
    const auto strong = ageingFactor(*at, std::min(3.0, *energy + doubt), *reference);
    if (!weak || !strong)
        return weak ? strong.error() : weak.error();
    Estimate speed;
    speed.value = *factor;
    speed.low = std::min(*weak, *strong);
    speed.high = std::max(*weak, *strong);
    speed.unit = "1";
    speed.basis = "published";
    speed.source = "ARRHENIUS-1889";
    return Answer{estimateValue(speed), fixed(speed.value, 2) + " times as fast as at " +
                                            fixed(inCelsius(*reference), 0) + " °C (" + fixed(speed.low, 2) +
                                            " to " + fixed(speed.high, 2) + ")\n"};
}

Value windowValue(const SealantWindow &window)
{
    return Value::Map{
        {"within_limits", window.open()}, {"above_dew_point", figure(window.aboveDew.si(), "K")},
        {"too_cold", window.tooCold},     {"too_hot", window.tooHot},
        {"too_damp", window.tooDamp},     {"basis", "common_practice"}};
}

std::string windowWords(const SealantWindow &window)
{
    std::vector<std::string> against;
    for (const auto &[is, words] : {std::pair(window.tooCold, "colder than 4 °C"),
                                    {window.tooHot, "hotter than 32 °C"},
                                    {window.tooDamp, "less than 3 K above the dew point"}}) {
        if (is)
            against.emplace_back(words);
    }
    if (against.empty())
        return "within the usual limits for sealant; the label goes before them\n";
    return "outside the usual limits for sealant: " + join(against, ", ") + "\n";
}

Result<Answer> dew(const DewOptions &o)
{
    const auto air = temperatureOf(o.temperature, "--temperature");
    const auto humidity = numberOf(o.humidity, "--humidity", "60, percent");
    if (!air || !humidity)
        return air ? humidity.error() : air.error();
    std::optional<Temperature> surface;
    if (!o.surface.empty()) {
        const auto read = temperatureOf(o.surface, "--surface");
        if (!read)
            return read.error();
        surface = *read;
    }
    const auto window = sealantWindow(*air, *humidity, surface);
    if (!window)
        return window.error();
    constexpr double lawAccuracy = 0.004; // of the saturation pressure
    Estimate point;
    point.value = inCelsius(window->dewPoint);
    point.low = inCelsius(dewPoint(*air, std::min(*humidity, 100.0) * (1.0 - lawAccuracy)).value());
    point.high = inCelsius(dewPoint(*air, *humidity * (1.0 + lawAccuracy)).value());
    point.unit = "°C";
    point.basis = "published";
    point.source = "ALDUCHOV-ESKRIDGE-1996";
    if (*humidity > 100.0)
        point.warnings.emplace_back("humidity_over_100");
    Value json = estimateValue(point);
    json.member("saturation") = figure(saturationPressure(*air).si(), "Pa");
    json.member("sealant") = windowValue(*window);
    return Answer{json, "dew point " + fixed(point.value, 1) + " °C; " + windowWords(*window)};
}

} // namespace

void addWeatherSunCommands(CLI::App &weather, Registry &registry)
{
    auto s = std::make_shared<SunOptions>();
    CLI::App *sunning = weather.add_subcommand("sun", "light on level ground on a day, and the day's length");
    sunning->add_option("--lat", s->latitude, "latitude, degrees, south negative")->required();
    sunning->add_option("--date", s->date, "the day, such as 2026-06-21")->required();
    sunning->add_option("--altitude", s->altitude, "above the sea, m unless a unit is written (default: 0)");
    sunning->add_option("--sunshine", s->sunshine,
                        "hours of bright sunshine, for the light that came through");
    registry.add(*sunning, "  snugwalk weather sun --lat -20 --date 2001-09-03    (MJ/m² a day, hours)",
                 [s](Session &) { return sun(*s); });

    auto u = std::make_shared<UvOptions>();
    CLI::App *uving = weather.add_subcommand("uv", "UV index at noon and over the day");
    uving->add_option("--lat", u->latitude, "latitude, degrees, south negative")->required();
    uving->add_option("--date", u->date, "the day, such as 2026-06-21")->required();
    uving->add_option("--lon", u->longitude, "longitude, degrees, west negative: tells the usual ozone");
    uving->add_option("--ozone", u->ozone, "ozone, Dobson units (default: by --lon, else 300)");
    uving->add_option("--altitude", u->altitude, "above the sea, m unless a unit is written (default: 0)");
    uving->add_option("--cloud", u->cloud,
                      "clear, scattered, broken, overcast, or the share let through, 0 to 1");
    uving->add_option("--zenith", u->zenith,
                      "the sun's angle from overhead, degrees, for a moment instead of noon");
    registry.add(*uving, "  snugwalk weather uv --lat 35 --date 2026-06-21 --altitude \"1600 m\"",
                 [u](Session &) { return uv(*u); });

    auto h = std::make_shared<HeatOptions>();
    CLI::App *heating = weather.add_subcommand("heat", "how much faster rubber and sealants age when warm");
    heating->add_option("--temperature", h->temperature, "°C unless a unit is written")->required();
    heating->add_option("--energy", h->energy,
                        "activation energy, eV (default: 0.7; the range is 0.2 either way)");
    heating->add_option("--reference", h->reference, "speed 1, °C unless a unit is written (default: 20)");
    registry.add(*heating,
                 "  snugwalk weather heat --temperature 55\n  snugwalk weather heat --temperature \"131 F\" "
                 "--energy 0.9",
                 [h](Session &) { return heat(*h); });

    auto d = std::make_shared<DewOptions>();
    CLI::App *dewing = weather.add_subcommand("dew", "dew point, and whether sealant can go on");
    dewing->add_option("--temperature", d->temperature, "of the air, °C unless a unit is written")
        ->required();
    dewing->add_option("--humidity", d->humidity, "relative, percent")->required();
    dewing->add_option("--surface", d->surface,
                       "of the joint, °C unless a unit is written (default: the air's)");
    registry.add(*dewing,
                 "  snugwalk weather dew --temperature 20 --humidity 65\n  snugwalk weather dew "
                 "--temperature \"68 F\" --humidity 65 --surface \"50 F\"",
                 [d](Session &) { return dew(*d); });
}

} // namespace snugwalk::cli
