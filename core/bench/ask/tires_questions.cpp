// SPDX-License-Identifier: Apache-2.0
// What the bench asks about tires.
#include <array>

#include "base/text.hpp"
#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/tires/axle_tires.hpp"
#include "bench/tires/load_index.hpp"
#include "bench/tires/passenger_size.hpp"
#include "bench/tires/tire_load.hpp"
#include "bench/tires/tire_pressure.hpp"

namespace snugwalk {
namespace {

constexpr double onePsi = pascalsPerPsi;

constexpr auto pressureInputs = std::to_array<BenchInput>({
    {.name = "class", .kind = AskKind::Word, .required = true, .words = "lt st p"},
    {.name = "max-load",
     .dimension = Dimension::Mass,
     .typical = 1000.0,
     .low = 50.0,
     .high = 5000.0,
     .required = true},
    {.name = "max-pressure",
     .dimension = Dimension::Pressure,
     .low = 20.0 * onePsi,
     .high = 145.0 * onePsi,
     .required = true},
    {.name = "load",
     .dimension = Dimension::Mass,
     .typical = 1000.0,
     .low = 1.0,
     .high = 5000.0,
     .required = true},
    {.name = "placard", .dimension = Dimension::Pressure, .low = 20.0 * onePsi, .high = 145.0 * onePsi},
    {.name = "table", .kind = AskKind::Text},
    {.name = "size", .kind = AskKind::Text},
});

constexpr auto temperatureInputs = std::to_array<BenchInput>({
    {.name = "pressure", .dimension = Dimension::Pressure, .low = 1.0, .high = 1e6, .required = true},
    {.name = "from", .dimension = Dimension::Temperature, .low = 233.15, .high = 363.15, .required = true},
    {.name = "from-altitude",
     .dimension = Dimension::Length,
     .typical = 1000.0,
     .low = -500.0,
     .high = 6000.0,
     .usual = "0 m"},
    {.name = "to", .dimension = Dimension::Temperature, .low = 233.15, .high = 363.15, .required = true},
    {.name = "to-altitude",
     .dimension = Dimension::Length,
     .typical = 1000.0,
     .low = -500.0,
     .high = 6000.0,
     .usual = "0 m"},
    {.name = "placard", .dimension = Dimension::Pressure, .low = 20.0 * onePsi, .high = 145.0 * onePsi},
    {.name = "max-pressure", .dimension = Dimension::Pressure, .low = 20.0 * onePsi, .high = 145.0 * onePsi},
    {.name = "warm", .kind = AskKind::Flag},
});

constexpr auto indexInputs = std::to_array<BenchInput>({
    {.name = "index", .kind = AskKind::Text, .required = true, .positional = true},
    {.name = "class", .kind = AskKind::Word, .words = "lt st p"},
});

constexpr auto axleInputs = std::to_array<BenchInput>({
    {.name = "class", .kind = AskKind::Word, .required = true, .words = "lt st p"},
    {.name = "max-load",
     .dimension = Dimension::Mass,
     .typical = 1000.0,
     .low = 50.0,
     .high = 5000.0,
     .required = true},
    {.name = "tires", .kind = AskKind::Count, .low = 2.0, .high = 12.0, .required = true},
    {.name = "axle-load",
     .dimension = Dimension::Mass,
     .typical = 1000.0,
     .low = 1.0,
     .high = 40e3,
     .required = true},
    {.name = "heavier-side", .dimension = Dimension::Mass, .typical = 1000.0, .low = 1.0, .high = 40e3},
    {.name = "axle-rating", .dimension = Dimension::Mass, .typical = 1000.0, .low = 1.0, .high = 40e3},
});

// "65 psi=2335 lb; 80 psi=2680 lb".
Result<std::vector<LoadRow>> tableFrom(std::string_view text)
{
    std::vector<LoadRow> rows;
    if (text.empty())
        return rows;
    for (const std::string_view part : split(text, ';')) {
        const auto sides = split(part, '=');
        const auto pressure = parseQuantity<Pressure>(sides.front());
        const auto load = parseQuantity<Mass>(sides.back());
        if (sides.size() != 2 || !pressure || !load)
            return Error{Errc::InvalidInput,
                         "not a row of a table: \"" + std::string(trim(part)).substr(0, 40) + "\"", "table",
                         "write pressure=load with units, such as \"65 psi=2335 lb; 80 psi=2680 lb\""};
        rows.push_back({*pressure, *load});
    }
    return rows;
}

// A passenger tire's size says what it carries; a figure far from it was misread.
Status addBySize(BenchAnswer &answer, const TireRating &tire, const std::string &size)
{
    if (size.empty())
        return done();
    const Result<Mass> load = passengerLoad(size, tire.maxPressure);
    if (!load)
        return load.error();
    Estimate e{load->si(), load->si() * 0.98, load->si() * 1.02, 0.8, "kg", "computed", "TRA", {}, {}};
    if (!(*load >= tire.maxLoad * 0.95 && *load <= tire.maxLoad * 1.05)) // common practice, no source
        e.warnings.emplace_back("size_disagrees");
    answer.figures.push_back({"load-by-size", Dimension::Mass, e});
    return done();
}

Result<BenchAnswer> answerPressure(const BenchTyped &typed)
{
    const auto table = tableFrom(typed.text("table"));
    if (!table)
        return table.error();
    const TireRating tire{parseTireClass(typed.text("class")).value_or(TireClass::LightTruck),
                          typed.the<Mass>("max-load"), typed.the<Pressure>("max-pressure"), *table};
    const auto load = typed.the<Mass>("load");
    const auto placard = typed.quantity<Pressure>("placard");
    Result<Estimate> least = leastPressure(tire, load);
    if (!least)
        return least.error();
    const auto set = pressureForLoad(tire, load, placard);
    if (!set)
        return set.error();
    if (!*set)
        least->warnings.emplace_back("not_a_setting");
    BenchAnswer answer{{{"least", Dimension::Pressure, *least}}};
    if (*set) {
        answer.figures.push_back({"set", Dimension::Pressure, **set});
        answer.extra = Value::Map{{"set", (*set)->value}};
    }
    const Result<Estimate> carried =
        loadCarried(tire, *set ? Pressure::fromSi((*set)->value) : tire.maxPressure);
    if (!carried)
        return carried.error();
    answer.figures.push_back({*set ? "load-at-set" : "load-at-maximum", Dimension::Mass, *carried});
    Estimate reserve = *carried;
    for (double *part : {&reserve.value, &reserve.low, &reserve.high})
        *part = *part / load.si() - 1.0;
    reserve.unit = "1";
    if (reserve.value < 0.10) // common practice, no source
        reserve.warnings.emplace_back("small_reserve");
    answer.figures.push_back({"reserve", Dimension::Fraction, reserve});
    SNUG_TRY(addBySize(answer, tire, typed.text("size")));
    return answer;
}

Result<BenchAnswer> answerTemperature(const BenchTyped &typed)
{
    const TirePlace from{typed.the<Temperature>("from"), typed.the<Length>("from-altitude")};
    const TirePlace to{typed.the<Temperature>("to"), typed.the<Length>("to-altitude")};
    const auto pressure = typed.the<Pressure>("pressure");
    const bool warm = typed.flag("warm");
    Result<Estimate> there = pressureEstimate(pressure, from, to, warm);
    if (!there)
        return there.error();
    BenchAnswer answer;
    const auto placard = typed.quantity<Pressure>("placard");
    const auto maximum = typed.quantity<Pressure>("max-pressure");
    if (placard && warm)
        there->warnings.emplace_back("hot_against_cold");
    answer.figures.push_back({"pressure", Dimension::Pressure, *there});
    if (!placard)
        return answer;
    const Result<Estimate> set = pressureToSet({*placard, maximum, from, to});
    if (!set) {
        const bool isMaximum = set.error().where == "maximum";
        return Error{set.error().code, set.error().what, isMaximum ? "max-pressure" : set.error().where,
                     set.error().act};
    }
    answer.figures.push_back({"set", Dimension::Pressure, *set});
    const PressureCall call = judge(pressure, warm, *placard, maximum);
    answer.lines.push_back({slug(call), {}});
    answer.extra = Value::Map{{"set", set->value}, {"call", slug(call)}};
    return answer;
}

Estimate published(double value, const char *unit, const char *source)
{
    return {value, value, value, 1.0, unit, "published", source, {}, {}};
}

Result<BenchAnswer> answerIndex(const BenchTyped &typed)
{
    const Result<ServiceCode> code = parseServiceCode(typed.text("index"));
    if (!code)
        return code.error();
    const auto single = loadOfIndex(code->single);
    const auto dual = code->dual ? loadOfIndex(*code->dual) : single;
    if (!single || !dual)
        return single ? dual.error() : single.error();
    if (*dual > *single)
        return Error{Errc::InvalidInput, "a tire of a pair carries no more than a single one", "index",
                     "write the single index first, such as 115/112"};
    BenchAnswer answer{{{"load", Dimension::Mass, published(single->si(), "kg", "ISO-4000-1")}}};
    if (code->dual)
        answer.figures.push_back({"load-dual", Dimension::Mass, published(dual->si(), "kg", "ISO-4000-1")});
    if (code->symbol)
        answer.figures.push_back(
            {"speed", Dimension::Speed, published(speedOfSymbol(*code->symbol)->si(), "m/s", "ISO-4000-1")});
    else if (typed.text("class") == "st")
        answer.figures.push_back(
            {"speed", Dimension::Speed, published(65.0 * 1609.344 / 3600.0, "m/s", "TRA")});
    if (typed.text("class") == "p") {
        Estimate less = published(single->si() / passengerOnTrailer, "kg", "49CFR571");
        less.warnings.emplace_back("passenger_on_trailer");
        answer.figures.push_back({"load-on-trailer", Dimension::Mass, less});
    }
    return answer;
}

Result<BenchAnswer> answerAxles(const BenchTyped &typed)
{
    const auto tires = tiresUnderAxles(
        {parseTireClass(typed.text("class")).value_or(TireClass::LightTruck), typed.the<Mass>("max-load"),
         static_cast<int>(typed.theNumber("tires")), typed.the<Mass>("axle-load"),
         typed.quantity<Mass>("heavier-side"), typed.quantity<Mass>("axle-rating")});
    if (!tires)
        return tires.error();
    return BenchAnswer{{{"share", Dimension::Fraction, tires->share},
                        {"per-tire", Dimension::Mass, tires->perTire},
                        {"capacity", Dimension::Mass, tires->capacity}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "tire-pressure",
     .subject = "tires",
     .inputs = pressureInputs,
     .cautions = "cold_tires checked_gauge",
     .point = "tire-pressure",
     .reading = "cold-pressure",
     .kept = "set",
     .example = "--class lt --max-load \"2680 lb\" --max-pressure \"80 psi\" --load \"2000 lb\" --placard "
                "\"65 psi\"",
     .answer = answerPressure},
    {.name = "tire-temperature",
     .subject = "tires",
     .inputs = temperatureInputs,
     .cautions = "cold_tires checked_gauge",
     .point = "tire-pressure",
     .reading = "cold-pressure",
     .kept = "pressure",
     .example = "--pressure \"65 psi\" --from \"20 °C\" --to \"-10 °C\" --placard \"65 psi\" --max-pressure "
                "\"80 psi\"",
     .answer = answerTemperature},
    {.name = "load-index",
     .subject = "tires",
     .inputs = indexInputs,
     .point = "tire-load-ratings",
     .reading = "tire-rating",
     .kept = "load",
     .example = "115/112Q",
     .answer = answerIndex},
    {.name = "axle-tires",
     .subject = "tires",
     .inputs = axleInputs,
     .cautions = "over_is_a_hold",
     .point = "tire-load-ratings",
     .reading = "share-of-rating",
     .kept = "share",
     .example =
         "--class lt --max-load \"2680 lb\" --tires 4 --axle-load \"6250 lb\" --heavier-side \"3350 lb\" "
         "--axle-rating \"7000 lb\"",
     .answer = answerAxles},
});

} // namespace

std::span<const BenchQuestion> tireQuestions() { return table; }

} // namespace snugwalk
