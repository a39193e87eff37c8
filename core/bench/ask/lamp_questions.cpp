// SPDX-License-Identifier: Apache-2.0
// What the bench asks about lamps: which should be there, and which circuit is short of one.
#include <array>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/electric/lamps.hpp"

namespace snugwalk {
namespace {

constexpr auto lampInputs = std::to_array<BenchInput>({
    {.name = "width",
     .dimension = Dimension::Length,
     .typical = 2.4,
     .low = 0.5,
     .high = 3.0,
     .required = true},
    {.name = "length",
     .dimension = Dimension::Length,
     .typical = 8.0,
     .low = 1.0,
     .high = 25.0,
     .required = true},
    {.name = "rating", .dimension = Dimension::Mass, .typical = 3000.0, .low = 0.0, .high = 20000.0},
    {.name = "running-lit", .kind = AskKind::Count, .low = 0, .high = 60},
    {.name = "stop-lit", .kind = AskKind::Count, .low = 0, .high = 60},
    {.name = "left-lit", .kind = AskKind::Count, .low = 0, .high = 60},
    {.name = "right-lit", .kind = AskKind::Count, .low = 0, .high = 60},
});

Estimate counted(int count)
{
    Estimate e;
    e.value = e.low = e.high = count;
    e.unit = "1";
    e.level = 1.0;
    e.basis = "published";
    e.source = "49-CFR-393.11";
    return e;
}

Result<BenchAnswer> answerLamps(const BenchTyped &typed)
{
    const auto list = lampsFor({typed.the<Length>("width"), typed.the<Length>("length"),
                                typed.quantity<Mass>("rating").value_or(Mass())});
    if (!list)
        return list.error();
    BenchAnswer answer{{{"lamps", Dimension::Count, counted(list->lamps())}}};
    using enum LampCircuit;
    for (const LampCircuit circuit : {Running, Stop, Left, Right}) {
        const std::string name(slug(circuit));
        const int count = list->onCircuit(circuit);
        answer.figures.push_back({slug(circuit), Dimension::Count, counted(count)});
        const auto lit = typed.number(name + "-lit");
        if (lit && *lit < count) {
            answer.figures.front().estimate.warnings.push_back("dark_" + name);
            answer.figures.back().estimate.warnings.push_back("dark_" + name);
        }
    }
    answer.figures.push_back({"reflectors", Dimension::Count, counted(list->reflectors())});
    Value::List rows;
    for (const LampRow &row : list->rows) {
        answer.lines.push_back({row.lamp, {std::to_string(row.count)}});
        rows.push_back(Value::Map{{"lamp", std::string(row.lamp)},
                                  {"count", row.count},
                                  {"color", std::string(row.color)},
                                  {"circuit", std::string(slug(row.circuit))}});
    }
    if (list->tape)
        answer.lines.push_back({"tape", {}});
    answer.extra = Value::Map{{"rows", rows}, {"tape", list->tape}};
    return answer;
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "lamps",
     .subject = "electric",
     .inputs = lampInputs,
     .cautions = "local_law traffic_side",
     .example = "--width \"96 in\" --length \"28 ft\" --running-lit 13",
     .answer = answerLamps},
});

} // namespace

std::span<const BenchQuestion> lampQuestions() { return table; }

} // namespace snugwalk
