// SPDX-License-Identifier: Apache-2.0
// What the bench asks about tires.
#include <array>

#include "base/text.hpp"
#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/tires/tire_load.hpp"

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
    return answer;
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
});

} // namespace

std::span<const BenchQuestion> tireQuestions() { return table; }

} // namespace snugwalk
