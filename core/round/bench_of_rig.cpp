// SPDX-License-Identifier: Apache-2.0
// Plates and the week's air as texts, exactly enough that no figure comes out under its plate.
#include "round/bench_of_rig.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "weather/recorded_days.hpp"
#include "weather/whereabouts.hpp"

namespace snugwalk {
namespace {

constexpr int week = 7;
constexpr double recordWithin = 0.05; // common practice, no source

std::string exactly(Dimension dimension, double si, UnitSystem units)
{
    const Unit unit = displayUnit(dimension, units, si);
    const double value = fromSi(unit, si);
    int decimals = 0;
    const auto off = [&] {
        const double scale = std::pow(10.0, decimals);
        return std::fabs(std::round(value * scale) / scale - value);
    };
    while (decimals < 4 && off() > 1e-6 * std::fabs(value))
        ++decimals;
    return fixed(value, decimals) + (unit.symbol.empty() ? "" : " " + std::string(unit.symbol));
}

struct Air {
    double kelvin, humidity;
    bool recorded;
};

std::optional<Air> recordedAir(const RecordedDays &days, const GeoPoint &place, CivilDate date)
{
    const WeatherDay *day = days.near(date, place);
    if (day == nullptr || !day->humidity)
        return std::nullopt;
    return Air{(day->low.si() + day->high.si()) / 2.0, *day->humidity / 100.0, true};
}

std::optional<Air> normalAir(const World *world, const GeoPoint &place, CivilDate date)
{
    const auto normals =
        world != nullptr && world->climate ? world->climate->normalsAt(place, place.altitude) : std::nullopt;
    if (!normals)
        return std::nullopt;
    const DayNormal day = DayNormals(*normals).on(date);
    return Air{day.mean.si(), day.humidity / 100.0, false};
}

void putPlates(BenchTexts &of, const BenchQuestion &question, const Rig &rig, UnitSystem units)
{
    const auto put = [&](const char *name, Dimension dimension, const auto &figure) {
        if (figure)
            of[name] = exactly(dimension, figure->si(), units);
    };
    put("placard", Dimension::Pressure, rig.tires.placard);
    put("max-pressure", Dimension::Pressure, rig.tires.maxPressure);
    put("max-load", Dimension::Mass, rig.tires.maxLoad);
    if (question.subject == "weights")
        put("gvwr", Dimension::Mass, rig.ratings.gross);
    if (question.subject != "wheels")
        return;
    put("torque", Dimension::Torque, rig.wheels.torque);
    if (rig.wheels.studs)
        of["studs"] = std::to_string(*rig.wheels.studs);
}

void putAir(BenchTexts &of, const WeekAir &air, UnitSystem units)
{
    of["air"] = exactly(Dimension::Temperature, celsius(std::round(air.mean.si() - 273.15)).si(), units);
    of["humidity"] = fixed(100.0 * std::clamp(air.humidity, 0.05, 0.95), 0) + " %";
    of["humidity-within"] = fixed(100.0 * air.humidityWithin, 0) + " %";
}

} // namespace

std::optional<WeekAir> weekAir(const RigHistory &history, const World *world, CivilDate today)
{
    const auto places = whereabouts(history.trips, history.stays, addDays(today, 1 - week), today);
    const RecordedDays days(history.weather);
    double kelvin = 0.0;
    double humidity = 0.0;
    bool recorded = true;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (places[i].basis == PlaceBasis::Nowhere)
            return std::nullopt;
        const CivilDate date = addDays(today, 1 - week + static_cast<int>(i));
        auto air = recordedAir(days, places[i].place, date);
        if (!air)
            air = normalAir(world, places[i].place, date);
        if (!air)
            return std::nullopt;
        kelvin += air->kelvin / week;
        humidity += air->humidity / week;
        recorded = recorded && air->recorded;
    }
    return WeekAir{Temperature::fromSi(kelvin), humidity,
                   recorded ? recordWithin : normalError.humidityPct / 100.0};
}

BenchTexts withTextsOfRig(const BenchQuestion &question, BenchTexts typed, const RigHistory &history,
                          const World *world, UnitSystem units, CivilDate today)
{
    BenchTexts of;
    putPlates(of, question, history.rig, units);
    const bool isAirTyped = typed.contains("air") || typed.contains("humidity");
    if (question.name == "moisture" && !isAirTyped) {
        const auto air = weekAir(history, world, today);
        if (air && air->mean >= celsius(0.0)) // the law of wood ends there
            putAir(of, *air, units);
    }
    for (const BenchInput &input : question.inputs) {
        if (const auto found = of.find(input.name); found != of.end())
            typed.insert(*found);
    }
    return typed;
}

} // namespace snugwalk
