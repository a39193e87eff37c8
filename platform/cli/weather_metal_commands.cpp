// SPDX-License-Identifier: Apache-2.0
// weather frost, corrosion, class, coast: files and flags in, counts and classes out.
#include <algorithm>
#include <filesystem>

#include "base/text.hpp"
#include "base/units.hpp"
#include "cli/weather_options.hpp"
#include "data/world_data.hpp"
#include "logbook/files.hpp"
#include "weather/coast.hpp"
#include "weather/laws/climate_class.hpp"
#include "weather/laws/corrosion.hpp"
#include "weather/laws/freeze_thaw.hpp"
#include "weather/records/read_weather.hpp"

namespace snugwalk::cli {
namespace {

constexpr std::size_t mostBytes = std::size_t{64} << 20;

struct FrostOptions {
    std::string file, low = "-1", high = "1";
};

struct CorrosionOptions {
    std::string temperature, humidity, sulfur, chloride, coast, years;
};

struct PlaceOptions {
    std::string latitude, longitude;
};

Result<Answer> frost(const FrostOptions &o)
{
    const auto low = temperatureOf(o.low, "--low");
    const auto high = temperatureOf(o.high, "--high");
    const auto bytes = readFile(o.file, mostBytes);
    if (!low || !high || !bytes)
        return !low ? low.error() : !high ? high.error() : bytes.error();
    const auto days = readDayRanges(*bytes, o.file);
    if (!days)
        return days.error();
    const auto seen = freezeThaw(*days, {*low, *high});
    if (!seen)
        return seen.error();
    Value::List warnings;
    if (seen->missing > 0)
        warnings.emplace_back("missing_days");
    if (seen->swapped > 0)
        warnings.emplace_back("low_above_high");
    const Value json = Value::Map{{"value", seen->cycles},
                                  {"unit", "1"},
                                  {"low", std::min(seen->cycles, seen->highFirst)},
                                  {"high", std::max(seen->cycles, seen->highFirst)},
                                  {"basis", "computed"},
                                  {"source", "CP"},
                                  {"warnings", warnings},
                                  {"cycles", seen->cycles},
                                  {"days", seen->days},
                                  {"missing", seen->missing},
                                  {"swapped", seen->swapped},
                                  {"limits", Value::Map{{"frozen", figure(inCelsius(*low), "°C")},
                                                        {"thawed", figure(inCelsius(*high), "°C")}}}};
    std::string text =
        std::to_string(seen->cycles) + " freeze-thaw cycles in " + std::to_string(seen->days) + " days\n";
    if (seen->missing > 0)
        text += std::to_string(seen->missing) + " days without a reading break the count\n";
    return Answer{json, text};
}

Result<CorrosiveAir> airOf(const CorrosionOptions &o, std::vector<std::string> &defaulted)
{
    const auto temperature = temperatureOf(o.temperature, "--temperature");
    const auto humidity = numberOf(o.humidity, "--humidity", "75, percent");
    if (!temperature || !humidity)
        return temperature ? humidity.error() : temperature.error();
    CorrosiveAir air{*temperature, *humidity, usualSulfur, 0.0};
    if (o.sulfur.empty()) {
        defaulted.emplace_back("so2");
    } else {
        const auto sulfur = numberOf(o.sulfur, "--so2", "5, mg/(m² d)");
        if (!sulfur)
            return sulfur.error();
        air.sulfur = *sulfur;
    }
    if (!o.chloride.empty()) {
        const auto chloride = numberOf(o.chloride, "--chloride", "3, mg/(m² d)");
        if (!chloride)
            return chloride.error();
        air.chloride = *chloride;
        return air;
    }
    defaulted.emplace_back("chloride");
    Distance coast = kilometres(1000.0);
    if (!o.coast.empty()) {
        const Result<double> si = parseSi(Dimension::Distance, o.coast, findUnit(Dimension::Distance, "km"));
        if (!si)
            return Error{si.error().code, si.error().what, "--coast", si.error().act};
        coast = Distance::fromSi(*si);
    }
    air.chloride = chlorideNearCoast(coast).value;
    return air;
}

Result<Answer> corrosion(const CorrosionOptions &o)
{
    std::vector<std::string> defaulted;
    const auto air = airOf(o, defaulted);
    if (!air)
        return air.error();
    std::optional<double> years;
    if (!o.years.empty()) {
        const auto read = numberOf(o.years, "--years", "10");
        if (!read)
            return read.error();
        years = *read;
    }
    Value json = Value::Map{{"basis", "published"},
                            {"source", "ISO-9223-2012"},
                            {"so2", figure(air->sulfur, "mg/(m² d)")},
                            {"chloride", figure(air->chloride, "mg/(m² d)")},
                            {"inputs_defaulted", textList(defaulted)}};
    std::string text;
    for (const Metal metal : metals) {
        const auto rate = corrosionRate(metal, *air);
        if (!rate)
            return rate.error();
        Value one = estimateValue(rate->firstYear);
        one.member("rate") = rate->firstYear.value;
        one.member("category") = corrosivityName(rate->category);
        one.member("category_low") = corrosivityName(rate->lowest);
        one.member("category_high") = corrosivityName(rate->highest);
        text += std::string(metalName(metal)) + ": " + fixed(rate->firstYear.value, 2) + " " +
                rate->firstYear.unit + " in the first year (" + fixed(rate->firstYear.low, 2) + " to " +
                fixed(rate->firstYear.high, 2) + "), " + std::string(corrosivityName(rate->category));
        if (years) {
            const auto loss = corrosionAfter(metal, rate->firstYear.value, *years);
            if (!loss)
                return loss.error();
            one.member("after") = Value::Map{{"years", *years}, {"loss", *loss}};
            text += "; after " + o.years + " years " + fixed(*loss, 1);
        }
        text += "\n";
        json.member(metalName(metal)) = one;
    }
    return Answer{json, text};
}

Result<Answer> classOf(const std::string &file)
{
    const auto bytes = readFile(file, mostBytes);
    if (!bytes)
        return bytes.error();
    const auto months = readClimateMonths(*bytes, file);
    if (!months)
        return months.error();
    const auto found = climateClass(*months);
    if (!found)
        return found.error();
    const bool near = !found->runnerUp.empty();
    const Value json =
        Value::Map{{"value", found->name},
                   {"class", found->name},
                   {"runner_up", near ? Value(found->runnerUp) : Value()},
                   {"nearest_by", near ? Value(found->nearestBy) : Value()},
                   {"margin", near ? figure(found->margin, found->nearestBy == "rain" ? "1" : "K") : Value()},
                   {"mean_temperature", figure(found->mean, "°C")},
                   {"rain", figure(found->rain, "mm")},
                   {"arid_below", figure(found->aridBelow, "mm")},
                   {"basis", "published"},
                   {"source", "PEEL-2007"},
                   {"warnings", near ? Value::List{"near_boundary"} : Value::List{}}};
    std::string text = found->name + "\n";
    if (near)
        text += "next: " + found->runnerUp + ", with " +
                (found->nearestBy == "rain" ? fixed(100.0 * found->margin, 0) + " % of rain"
                                            : fixed(found->margin, 1) + " K") +
                " more\n";
    return Answer{json, text};
}

const char *bandOf(Distance fromCoast)
{
    const double m = fromCoast.si();
    return m < 100.0 ? "under_100_m" : m < 1000.0 ? "under_1_km" : m < 10'000.0 ? "under_10_km" : "inland";
}

Result<Answer> coast(const PlaceOptions &o)
{
    const auto place = placeOf(o.latitude, o.longitude);
    if (!place)
        return place.error();
    const auto bytes = worldData("coast.bin");
    if (!bytes)
        return bytes.error();
    const auto shores = Coast::fromBytes(*bytes);
    if (!shores)
        return shores.error();
    constexpr double accuracy = 3500.0; // m, within which 8 in 10 lie, see Coast::distanceTo
    constexpr double nearest = 1000.0;  // m; below, it only says "near"
    const Distance away = shores->distanceTo(*place);
    const Estimate salt = chlorideNearCoast(away);
    Value::List warnings;
    if (away.si() < nearest)
        warnings.emplace_back("near");
    const Value json = Value::Map{{"value", away.si()},
                                  {"unit", "m"},
                                  {"low", std::max(0.0, away.si() - accuracy)},
                                  {"high", away.si() + accuracy},
                                  {"level", Estimate{}.level},
                                  {"basis", "computed"},
                                  {"source", "NATURAL-EARTH"},
                                  {"warnings", warnings},
                                  {"cell", cellValue(*place)},
                                  {"on_land", shores->isLand(*place)},
                                  {"band", bandOf(away)},
                                  {"chloride", estimateValue(salt)}};
    const std::string text = "about " + fixed(away.si() / 1000.0, away.si() < 20'000.0 ? 1 : 0) +
                             " km to the coast" + (shores->isLand(*place) ? "" : ", at sea") +
                             "; salt in the air roughly " + fixed(salt.value, 0) + " (" + fixed(salt.low, 0) +
                             " to " + fixed(salt.high, 0) + ") mg/m² a day\n";
    return Answer{json, text};
}

} // namespace

void addWeatherMetalCommands(CLI::App &weather, Registry &registry)
{
    auto f = std::make_shared<FrostOptions>();
    CLI::App *freezing = weather.add_subcommand("frost", "freeze-thaw cycles in a table of days");
    freezing
        ->add_option("file", f->file,
                     "CSV with columns tmin, tmax (°C; tmin_f, tmax_f: °F), and date if known")
        ->required();
    freezing->add_option("--low", f->low, "frozen below this, °C unless a unit is written (default: -1)");
    freezing->add_option("--high", f->high, "thawed above this, °C unless a unit is written (default: 1)");
    registry.add(*freezing,
                 "  snugwalk weather frost winter.csv\n  snugwalk weather frost winter.csv --low 0 --high 0",
                 [f](Session &) { return frost(*f); });

    auto c = std::make_shared<CorrosionOptions>();
    CLI::App *rusting =
        weather.add_subcommand("corrosion", "what a year of air takes off four metals, and its class");
    rusting->add_option("--temperature", c->temperature, "mean of the year, °C unless a unit is written")
        ->required();
    rusting->add_option("--humidity", c->humidity, "mean of the year, percent")->required();
    rusting->add_option("--so2", c->sulfur, "sulfur dioxide that comes down, mg/(m² d) (default: 3)");
    rusting->add_option("--chloride", c->chloride, "salt that comes down, mg/(m² d) (default: by --coast)");
    rusting->add_option("--coast", c->coast,
                        "distance to the coast, km unless a unit is written (default: far inland)");
    rusting->add_option("--years", c->years, "also the loss after so many years, up to 20");
    registry.add(*rusting,
                 "  snugwalk weather corrosion --temperature 10 --humidity 75 --so2 5 --chloride 3    (µm/a; "
                 "aluminium g/(m² a))",
                 [c](Session &) { return corrosion(*c); });

    auto file = std::make_shared<std::string>();
    CLI::App *classing = weather.add_subcommand("class", "the Köppen class of twelve months");
    classing->add_option("file", *file, "CSV with columns t (°C) and p (mm), twelve lines, January first")
        ->required();
    registry.add(*classing, "  snugwalk weather class months.csv",
                 [file](Session &) { return classOf(*file); });

    auto p = std::make_shared<PlaceOptions>();
    CLI::App *coasting = weather.add_subcommand("coast", "how far it is to the sea");
    coasting->add_option("lat", p->latitude, "latitude, degrees, south negative")->required();
    coasting->add_option("lon", p->longitude, "longitude, degrees, west negative")->required();
    registry.add(*coasting, "  snugwalk weather coast -44.27 170.10    (m)",
                 [p](Session &) { return coast(*p); });
}

} // namespace snugwalk::cli
