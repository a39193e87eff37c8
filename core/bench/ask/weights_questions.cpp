// SPDX-License-Identifier: Apache-2.0
// What the bench asks about weights.
#include <array>

#include "bench/ask/questions.hpp"
#include "bench/ask/weights_answers.hpp"

namespace snugwalk {
namespace {

constexpr double mostTicket = 50'000.0; // kg

constexpr BenchInput massInput(std::string_view name, double typical = 1000.0, double high = mostTicket)
{
    return {.name = name, .dimension = Dimension::Mass, .typical = typical, .low = 0.0, .high = high};
}
constexpr BenchInput ratingInput(std::string_view name)
{
    return {.name = name, .dimension = Dimension::Mass, .typical = 1000.0, .low = 1.0, .high = mostTicket};
}
constexpr BenchInput placeInput(std::string_view name)
{
    return {.name = name, .dimension = Dimension::Length, .typical = 5.0, .low = -5.0, .high = 30.0};
}
constexpr BenchInput required(BenchInput input)
{
    input.required = true;
    return input;
}
constexpr BenchInput ticket(std::string_view name)
{
    return {.name = name,
            .kind = AskKind::List,
            .dimension = Dimension::Mass,
            .typical = 1000.0,
            .low = 0.0,
            .high = mostTicket};
}
constexpr BenchInput axleInput = {.name = "axle",
                                  .dimension = Dimension::Length,
                                  .typical = 5.0,
                                  .low = 0.5,
                                  .high = 20.0,
                                  .required = true};
constexpr BenchInput kindInput = {
    .name = "kind", .kind = AskKind::Word, .usual = "travel", .words = "travel fifth light"};

constexpr auto weighInputs = std::to_array<BenchInput>({
    required(ticket("solo")),
    required(ticket("coupled")),
    ticket("bars"),
    massInput("trailer-alone"),
    {.name = "division", .dimension = Dimension::Mass, .typical = 10.0, .low = 0.1, .high = 500.0},
    kindInput,
    {.name = "low", .dimension = Dimension::Fraction, .low = 0.0, .high = 0.5},
    {.name = "high", .dimension = Dimension::Fraction, .low = 0.0, .high = 0.5},
    ratingInput("gvwr"),
    ratingInput("axles"),
    ratingInput("tire"),
    {.name = "tires", .kind = AskKind::Count, .low = 1.0, .high = 24.0, .usual = "4"},
    ratingInput("hitch"),
    ratingInput("coupler"),
    ratingInput("tow"),
    ratingInput("front-axle"),
    ratingInput("rear-axle"),
    ratingInput("vehicle"),
    ratingInput("combination"),
});

constexpr auto sidesInputs = std::to_array<BenchInput>({
    required(massInput("left")),
    required(massInput("right")),
    {.name = "tires", .kind = AskKind::Count, .low = 1.0, .high = 12.0, .usual = "2"},
    {.name = "division", .dimension = Dimension::Mass, .typical = 10.0, .low = 0.1, .high = 500.0},
});

constexpr auto shiftInputs = std::to_array<BenchInput>({
    required(massInput("mass", 50.0, 10'000.0)),
    placeInput("from"),
    placeInput("to"),
    axleInput,
    massInput("tongue", 200.0, 10'000.0),
    ratingInput("gross"),
    kindInput,
});

constexpr auto packingInputs = std::to_array<BenchInput>({
    {.name = "items", .kind = AskKind::Text, .required = true},
    axleInput,
    massInput("empty-tongue", 200.0, 10'000.0),
    massInput("empty-axles", 2000.0, 10'000.0),
    kindInput,
    ratingInput("gvwr"),
});

constexpr auto liquidInputs = std::to_array<BenchInput>({
    {.name = "what", .kind = AskKind::Word, .usual = "water", .words = "water propane gasoline diesel"},
    {.name = "volume",
     .dimension = Dimension::Volume,
     .typical = 0.1,
     .low = 0.0,
     .high = 5.0,
     .required = true},
    placeInput("to"),
    {.name = "axle", .dimension = Dimension::Length, .typical = 5.0, .low = 0.5, .high = 20.0},
});

constexpr auto leverInputs = std::to_array<BenchInput>({
    required(massInput("reading", 50.0, 300.0)),
    {.name = "tare", .dimension = Dimension::Mass, .typical = 5.0, .low = 0.0, .high = 50.0, .usual = "0 kg"},
    {.name = "to-tongue",
     .dimension = Dimension::Length,
     .typical = 1.0,
     .low = 0.1,
     .high = 5.0,
     .required = true},
    {.name = "to-scale",
     .dimension = Dimension::Length,
     .typical = 1.0,
     .low = 0.1,
     .high = 5.0,
     .required = true},
    kindInput,
});

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "weigh",
     .subject = "weights",
     .inputs = weighInputs,
     .cautions = "same_load_level",
     .point = "nose-weight",
     .reading = "nose-weight",
     .kept = "tongue",
     .example = "--solo \"3,520 lb; 2,980 lb\" --coupled \"3,180 lb; 4,100 lb; 6,140 lb\" --bars \"3,400 lb; "
                "3,770 lb; 6,250 lb\" --gvwr \"7,400 lb\" --vehicle \"7,100 lb\"",
     .answer = answerWeigh},
    {.name = "side-to-side",
     .subject = "weights",
     .inputs = sidesInputs,
     .cautions = "same_load_level",
     .point = "wheel-loads",
     .reading = "side-difference",
     .kept = "imbalance",
     .example = "--left \"3,350 lb\" --right \"2,900 lb\"",
     .answer = answerSides},
    {.name = "shift-load",
     .subject = "weights",
     .inputs = shiftInputs,
     .cautions = "weigh_after",
     .example = "--mass \"150 lb\" --to \"30 ft\" --axle \"18 ft\" --tongue \"780 lb\" --gross \"6,920 lb\"",
     .answer = answerShift},
    {.name = "packing",
     .subject = "weights",
     .inputs = packingInputs,
     .cautions = "weigh_after",
     .example =
         "--items \"2400 kg@4.6 m; 180 kg@3 m; 60 kg@0.6 m; 120 kg@7.5 m; 150 kg@1.5 m\" --axle \"5.1 m\"",
     .answer = answerPacking},
    {.name = "liquid",
     .subject = "weights",
     .inputs = liquidInputs,
     .cautions = "weigh_after",
     .example = "--what water --volume \"45 gal\"",
     .answer = answerLiquid},
    {.name = "tongue-scale",
     .subject = "weights",
     .inputs = leverInputs,
     .cautions = "lever_limits lever_feet",
     .point = "nose-weight",
     .reading = "nose-weight",
     .kept = "tongue",
     .example = "--reading \"90 lb\" --tare \"6 lb\" --to-tongue \"1 ft\" --to-scale \"3 ft\"",
     .answer = answerLever},
});

} // namespace

std::span<const BenchQuestion> weightQuestions() { return table; }

} // namespace snugwalk
