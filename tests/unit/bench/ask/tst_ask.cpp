// SPDX-License-Identifier: Apache-2.0
// Reading what people type, by a question made for it: forms of numbers, what is told back, what is refused.
#include <doctest/doctest.h>

#include <array>

#include "bench/ask/ask.hpp"
#include "bench/ask/show.hpp"

using namespace snugwalk;

namespace {

constexpr CivilDate today{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(24)};

constexpr auto inputs = std::to_array<BenchInput>({
    {.name = "volts", .dimension = Dimension::Voltage, .required = true, .at = "temperature"},
    {.name = "temperature", .dimension = Dimension::Temperature, .usual = "20 °C"},
    {.name = "bead", .dimension = Dimension::Length, .typical = 0.006, .low = 0.001, .high = 0.1},
    {.name = "load", .dimension = Dimension::Mass, .typical = 1000.0},
    {.name = "torque", .dimension = Dimension::Torque},
    {.name = "studs", .kind = AskKind::Count},
    {.name = "scale", .kind = AskKind::List, .dimension = Dimension::Mass, .typical = 1000.0},
    {.name = "chemistry", .kind = AskKind::Word, .words = "flooded lithium_iron"},
    {.name = "on", .kind = AskKind::Date},
    {.name = "warm", .kind = AskKind::Flag},
});

Result<BenchAnswer> echo(const BenchTyped &typed)
{
    Estimate e;
    e.value = typed.theNumber("volts");
    e.unit = "V";
    e.basis = "measured";
    return BenchAnswer{{{"volts", Dimension::Voltage, e}}};
}

constexpr BenchQuestion question{.name = "echo",
                                 .subject = "tires",
                                 .inputs = inputs,
                                 .example = "--volts \"12.4 V\" --warm",
                                 .answer = echo};

Result<BenchTyped> read(BenchTexts texts, UnitSystem units = UnitSystem::Si)
{
    texts.emplace("volts", "12.4");
    return BenchTyped::read(question, texts, units, today);
}

double number(const char *name, const char *text, UnitSystem units = UnitSystem::Si)
{
    return read({{name, text}}, units).value().theNumber(name);
}

std::string understood(const char *name, const char *text)
{
    const BenchTyped typed = read({{name, text}}).value();
    for (const BenchUnderstood &u : typed.understood()) {
        if (u.name == name)
            return u.text;
    }
    return "";
}

} // namespace

TEST_CASE("forms that people type")
{
    CHECK(number("bead", "1/4 in") == doctest::Approx(0.00635));
    CHECK(number("bead", "7/32") == doctest::Approx(7.0 / 32.0 * 0.0254));
    CHECK(number("load", "2,450 lb") == doctest::Approx(2450 * 0.45359237));
    CHECK(number("torque", "100 lb·ft") == doctest::Approx(135.5817948));
    CHECK(number("temperature", "−10 °C") == doctest::Approx(263.15));
    CHECK(number("studs", " 8 ") == 8.0);
}

TEST_CASE("two figures in one: volts at a temperature")
{
    for (const char *text : {"12.45 V at 5 °C", "12.45 V @ 5 °C", "12,45 V a 5 °C", "12.45@5 C"}) {
        CAPTURE(text);
        const BenchTyped typed = read({{"volts", text}}).value();
        CHECK(typed.theNumber("volts") == doctest::Approx(12.45));
        CHECK(typed.theNumber("temperature") == doctest::Approx(278.15));
    }
    CHECK(read({{"volts", "12.45 V at 5 °C"}, {"temperature", "6 °C"}}).error().where == "temperature");
    // a field of the app that was emptied is not typed
    const BenchTyped emptied = read({{"volts", "12.45 V at 5 °C"}, {"temperature", " "}}).value();
    CHECK(emptied.theNumber("temperature") == doctest::Approx(278.15));
}

TEST_CASE("a bare number is read in the person's units, and told so where the units differ")
{
    CHECK(number("load", "100") == 100.0);
    CHECK(number("load", "100", UnitSystem::Us) == doctest::Approx(45.359237));
    CHECK(number("bead", "6") == doctest::Approx(0.006)); // millimetres, by its usual size
    const BenchTexts bare{{"volts", "12.4"}, {"load", "100"}};
    const auto answer = askBench(question, bare, UnitSystem::Si, today).value();
    CHECK(answer.figures.front().estimate.warnings == std::vector<std::string>{"unit_assumed"});
    const auto plain = askBench(question, {{"volts", "12.4"}}, UnitSystem::Si, today).value();
    CHECK(plain.figures.front().estimate.warnings.empty()); // volts are volts
    CHECK(plain.figures.front().estimate.inputsDefaulted == std::vector<std::string>{"temperature"});
}

TEST_CASE("lists: semicolons or commas, a unit after the last for all")
{
    const auto list = [](const char *text) { return read({{"scale", text}}).value().list("scale"); };
    CHECK(list("1240,1480") == std::vector<double>{1240, 1480});
    CHECK(list("1240, 1480 kg") == std::vector<double>{1240, 1480});
    for (const char *text :
         {"3,520 lb; 2,980 lb", "3,520, 2,980 lb", "3520 lb,2980 lb", "3,520 lb, 2,980 lb"}) {
        CAPTURE(text);
        const auto pounds = list(text);
        REQUIRE(pounds.size() == 2);
        CHECK(pounds[0] == doctest::Approx(3520 * 0.45359237));
    }
    CHECK(list("100,200,300 lb").back() == doctest::Approx(300 * 0.45359237));
    CHECK(list("100,200,300 lb").front() == doctest::Approx(100 * 0.45359237));
    CHECK(read({{"scale", "1240,,1480"}}).error().where == "scale");
}

TEST_CASE("what was understood is told in both systems")
{
    CHECK(understood("load", "2,450 lb") == "2450\u00a0lb = 1111\u00a0kg");
    CHECK(understood("bead", "5 mm") != "5\u00a0mm");
    CHECK(showBoth(*findUnit(Dimension::Length, "m"), 0.0) == "0\u00a0m"); // not 0 in as well
    CHECK(understood("bead", "1/4 in") == "0.25\u00a0in = 6.35\u00a0mm");
    CHECK(understood("volts", "12.45 V") == "12.45\u00a0V");
    CHECK(understood("torque", "140 N·m") == "140\u00a0N·m = 103.3\u00a0lb·ft");
    CHECK(showIn(*findUnit(Dimension::Pressure, "psi"), 448159.0) == "65\u00a0psi");
}

TEST_CASE("words, dates and flags")
{
    const BenchTyped typed =
        read({{"chemistry", "Lithium-Iron"}, {"on", "2026-11-24"}, {"warm", "yes"}}).value();
    CHECK(typed.text("chemistry") == "lithium_iron");
    CHECK(typed.date("on") == today);
    CHECK(typed.flag("warm"));
    CHECK(!read({}).value().flag("warm"));
}

TEST_CASE("what cannot be read is refused with the input's name")
{
    const struct {
        const char *name, *text;
        Errc code;
    } rows[] = {
        {"bead", "wide", Errc::InvalidInput},
        {"bead", "2 kg", Errc::InvalidInput},
        {"bead", "2 m", Errc::OutOfRange},
        {"studs", "5.5", Errc::InvalidInput},
        {"chemistry", "gas", Errc::InvalidInput},
        {"on", "tomorrow", Errc::InvalidInput},
        {"temperature", "-300 °C", Errc::OutOfRange},
        {"load", "1e400 kg", Errc::InvalidInput},
        {"nobody", "1", Errc::Usage},
        {"load", "\xff", Errc::InvalidInput},
    };
    for (const auto &row : rows) {
        CAPTURE(row.text);
        const auto typed = read({{row.name, row.text}});
        CHECK(typed.error().where == row.name);
        CHECK(typed.error().code == row.code);
        CHECK(!typed.error().act.empty());
    }
    const auto missing = BenchTyped::read(question, {}, UnitSystem::Si, today);
    CHECK(missing.error().where == "volts");
    CHECK(missing.error().code == Errc::Usage);
}

TEST_CASE("the worked example as typed; every question is found by its name")
{
    const BenchTexts typed = exampleOf(question);
    CHECK(typed.at("volts") == "12.4 V");
    CHECK(typed.contains("warm"));
    for (const BenchQuestion &q : benchQuestions())
        CHECK(findBenchQuestion(q.name) == &q);
    CHECK(findBenchQuestion("nobody") == nullptr);
}

TEST_CASE("a figure is shown to a fifth of its doubt, and never with more than four digits")
{
    const auto shown = [](double value, double half, Dimension dimension) {
        Estimate e;
        e.value = value;
        e.low = value - half;
        e.high = value + half;
        const BenchFigure figure{"figure", dimension, e};
        return showFigure(figure, e.value, UnitSystem::Si) + " " + showFigure(figure, e.low, UnitSystem::Si);
    };
    CHECK(shown(54166.7, 16250.0, Dimension::Force) == "54000\u00a0N 38000\u00a0N");
    CHECK(shown(180.0, 23.1, Dimension::Mass) == "180\u00a0kg 157\u00a0kg");
    CHECK(shown(0.02103, 0.0417, Dimension::Fraction) == "2.1\u00a0% -2.1\u00a0%");
    CHECK(shown(2118.31, 0.01, Dimension::Mass) == "2118\u00a0kg 2118\u00a0kg");
    CHECK(shown(700.0, 0.0, Dimension::Mass) == "700\u00a0kg 700\u00a0kg");
    CHECK(shown(0.0, 1.0, Dimension::Mass) == "0\u00a0kg -1\u00a0kg");
}
