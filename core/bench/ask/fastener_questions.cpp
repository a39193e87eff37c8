// SPDX-License-Identifier: Apache-2.0
// What the bench asks about rivets and screws.
#include <array>

#include "base/text.hpp"
#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/joints/rivet.hpp"
#include "bench/joints/screw.hpp"

namespace snugwalk {
namespace {

constexpr auto rivetInputs = std::to_array<BenchInput>({
    {.name = "sheets",
     .kind = AskKind::List,
     .dimension = Dimension::Length,
     .typical = 0.001,
     .low = 0.0002,
     .high = 0.006,
     .required = true},
    {.name = "head", .kind = AskKind::Word, .usual = "protruding", .words = "protruding flush"},
    {.name = "hole", .dimension = Dimension::Length, .typical = 0.004, .low = 0.001, .high = 0.02},
    {.name = "diameter", .dimension = Dimension::Length, .typical = 0.004, .low = 0.002, .high = 0.007},
});

Result<BenchAnswer> answerRivet(const BenchTyped &typed)
{
    std::vector<Length> sheets;
    for (const double si : typed.list("sheets"))
        sheets.push_back(Length::fromSi(si));
    const auto choice = chooseRivet({sheets, typed.text("head") == "flush", typed.quantity<Length>("hole"),
                                     typed.quantity<Length>("diameter")});
    if (!choice)
        return choice.error();
    Estimate blind = choice->grip;
    blind.value = blind.high = choice->blindGrip.si();
    blind.basis = "common_practice";
    blind.source = "CP";
    BenchAnswer answer{{{"rivet", Dimension::Length, choice->diameter},
                        {"edge", Dimension::Length, choice->edge},
                        {"pitch", Dimension::Length, choice->pitch},
                        {"grip", Dimension::Length, choice->grip},
                        {"blind-grip", Dimension::Length, blind},
                        {"solid-length", Dimension::Length, choice->solidLength}}};
    answer.lines.push_back({"size", {std::string(choice->size.inches), std::string(choice->size.drill)}});
    answer.extra =
        Value::Map{{"size", std::string(choice->size.inches)}, {"drill", std::string(choice->size.drill)}};
    return answer;
}

constexpr auto screwInputs = std::to_array<BenchInput>({
    {.name = "size", .kind = AskKind::Text, .required = true, .positional = true},
    {.name = "thread",
     .dimension = Dimension::Length,
     .typical = 0.016,
     .low = 0.001,
     .high = 0.15,
     .usual = "5/8 in"},
    {.name = "wood", .dimension = Dimension::Count, .low = 0.3, .high = 0.7, .usual = "0.42"},
    {.name = "moisture", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0, .usual = "12 %"},
    {.name = "torque", .dimension = Dimension::Torque, .low = 0.01, .high = 100.0},
});

Result<int> screwNumber(std::string_view text)
{
    std::string_view number = trim(text);
    if (number.starts_with('#'))
        number.remove_prefix(1);
    const auto parsed = parseInteger(trim(number));
    if (!parsed || *parsed < 0 || *parsed > 24)
        return Error{Errc::InvalidInput, "not a screw's number: \"" + std::string(text.substr(0, 40)) + "\"",
                     "size", "give its number, such as 8 or #10"};
    return static_cast<int>(*parsed);
}

Result<BenchAnswer> answerScrew(const BenchTyped &typed)
{
    const auto number = screwNumber(typed.text("size"));
    if (!number)
        return number.error();
    const auto hold = screwHold({*number, typed.the<Length>("thread"), typed.theNumber("wood"),
                                 typed.theNumber("moisture"), typed.quantity<Torque>("torque")});
    if (!hold)
        return Error{hold.error().code, hold.error().what,
                     hold.error().where == "screw" ? "size" : hold.error().where, hold.error().act};
    Estimate longer = hold->design;
    longer.value = longer.low = longer.high = hold->nextThread.si();
    longer.unit = "m";
    longer.source = "CP";
    BenchAnswer answer{{{"snug", Dimension::Torque, hold->snug},
                        {"pull-out", Dimension::Force, hold->pull},
                        {"count-on", Dimension::Force, hold->design},
                        {"longer", Dimension::Length, longer}}};
    const auto next = nextScrew(*number);
    answer.lines.push_back({"turn", {}});
    if (next)
        answer.lines.push_back({"stripped", {std::to_string(*next)}});
    else
        answer.lines.push_back({"plug", {}});
    answer.extra = Value::Map{{"next_size", next ? Value(*next) : Value()}};
    return answer;
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "rivet",
     .subject = "joints",
     .inputs = rivetInputs,
     .cautions = "eyes maker_fastener",
     .example = "--sheets \"0.040; 0.063 in\"",
     .answer = answerRivet},
    {.name = "screw",
     .subject = "joints",
     .inputs = screwInputs,
     .cautions = "behind_wall",
     .example = "\"#8\" --thread \"5/8 in\"",
     .answer = answerScrew},
});

} // namespace

std::span<const BenchQuestion> fastenerQuestions() { return table; }

} // namespace snugwalk
