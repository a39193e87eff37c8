// SPDX-License-Identifier: Apache-2.0
// Every question of the bench: its worked example answers, every word it can say stands in both languages,
// and whatever is typed, absurd or not, gives finite figures in order or a refusal that names an input.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <random>

#include "base/text.hpp"
#include "bench/ask/ask.hpp"
#include "data/embedded.hpp"

using namespace snugwalk;

namespace {

constexpr CivilDate today{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(24)};

void checkWords(const BenchQuestion &question, const BenchAnswer &answer, const Texts &texts)
{
    const auto known = [&](std::string_view slug, std::string_view group) {
        CAPTURE(slug);
        CHECK(texts.benchWord(question.name, slug, group) != slug);
    };
    for (const BenchFigure &figure : answer.figures) {
        known(figure.name, "figures");
        for (const std::string &warning : figure.estimate.warnings) {
            CAPTURE(warning);
            CHECK(texts.word("bench_warnings", warning) != warning);
        }
        CHECK(texts.phrase("basis_" + figure.estimate.basis) != "basis_" + figure.estimate.basis);
    }
    for (const BenchLine &line : answer.lines)
        known(line.name, "lines");
}

void checkFigures(const BenchAnswer &answer)
{
    REQUIRE(!answer.figures.empty());
    for (const BenchFigure &figure : answer.figures) {
        CAPTURE(figure.name);
        const Estimate &e = figure.estimate;
        REQUIRE(std::isfinite(e.value));
        REQUIRE(std::isfinite(e.low));
        REQUIRE(std::isfinite(e.high));
        const double hair = 1e-9 * std::max(std::fabs(e.low), std::fabs(e.high));
        REQUIRE(e.low <= e.value + hair);
        REQUIRE(e.value <= e.high + hair);
        REQUIRE(!e.unit.empty());
        REQUIRE(!e.basis.empty());
    }
}

std::string anyNumber(std::mt19937 &rng)
{
    static constexpr auto odd = std::to_array<const char *>({"0",
                                                             "-1",
                                                             "1e308",
                                                             "-1e308",
                                                             "1e-308",
                                                             "nan",
                                                             "inf",
                                                             "1/0",
                                                             "1/3",
                                                             "7/32",
                                                             "1,060",
                                                             "4,5",
                                                             "",
                                                             " ",
                                                             "--",
                                                             "½",
                                                             "99999999999999999999",
                                                             "0.0000001",
                                                             "12 3",
                                                             "1.2.3",
                                                             "-0",
                                                             "\xff\xfe",
                                                             "twelve"});
    if (rng() % 4 == 0)
        return odd.at(rng() % odd.size());
    const double size = std::pow(10.0, std::uniform_real_distribution<double>(-3.0, 5.0)(rng));
    return fixed((rng() % 16 == 0 ? -1.0 : 1.0) * size, 3);
}

std::string anyText(const BenchInput &input, const std::string &usual, std::mt19937 &rng)
{
    const auto roll = rng() % 8;
    if (!usual.empty() && roll < 4)
        return usual;
    switch (input.kind) {
    case AskKind::Word: {
        const auto words = split(input.words, ' ');
        return roll == 7 ? anyNumber(rng) : std::string(words[rng() % words.size()]);
    }
    case AskKind::Date:
        return roll == 7 ? anyNumber(rng)
                         : formatDate(addDays(today, static_cast<long long>(rng() % 4000) - 3000));
    case AskKind::Quantity:
    case AskKind::Count:
    case AskKind::List: {
        std::vector<std::string_view> units;
        for (const Unit &unit : allUnits()) {
            if (unit.dimension == input.dimension)
                units.push_back(unit.symbol);
        }
        std::string text;
        for (std::size_t n = input.kind == AskKind::List ? rng() % 5 : 1; n > 0; --n)
            text += anyNumber(rng) + " " + std::string(units[rng() % units.size()]) + (n > 1 ? "; " : "");
        return text;
    }
    default:
        return anyNumber(rng);
    }
}

bool isInput(const BenchQuestion &question, const std::string &where)
{
    return std::any_of(question.inputs.begin(), question.inputs.end(),
                       [&](const BenchInput &input) { return input.name == where; });
}

} // namespace

TEST_CASE("every worked example answers, and its words stand in every language")
{
    for (const BenchQuestion &question : benchQuestions()) {
        CAPTURE(question.name);
        const auto answer = askBench(question, exampleOf(question), UnitSystem::Si, today);
        if (!answer)
            FAIL(answer.error().where << ": " << answer.error().what);
        checkFigures(*answer);
        for (const Language &language : productLanguages()) {
            CAPTURE(language.slug);
            const Texts texts = productTexts(language.slug).value();
            checkWords(question, *answer, texts);
            CHECK(texts.benchWord(question.name, "title") != "title");
            CHECK(texts.benchWord(question.name, "about") != "about");
            CHECK(texts.word("bench_subjects", question.subject) != question.subject);
            for (const BenchInput &input : question.inputs) {
                CAPTURE(input.name);
                // other languages may have the very word; check_bench.py holds their slugs against English
                if (language.slug == "en")
                    CHECK(texts.benchWord(question.name, input.name, "inputs") != input.name);
            }
            for (const std::string_view caution : split(question.cautions, ' ')) {
                if (!caution.empty())
                    CHECK(texts.word("bench_cautions", caution) != caution);
            }
        }
    }
}

// SNUGWALK_BENCH_RUNS asks for more, as the long run does.
TEST_CASE("whatever is typed: figures that are finite and in order, or a refusal that names an input")
{
    const char *more = std::getenv("SNUGWALK_BENCH_RUNS");
    const long long runs = more == nullptr ? 50'000 : parseInteger(more).value_or(50'000);
    const Texts texts = productTexts("es").value();
    std::mt19937 rng(20261124); // fixed: a failure must be repeatable
    const auto &all = benchQuestions();
    std::vector<BenchTexts> examples;
    for (const BenchQuestion &question : all)
        examples.push_back(exampleOf(question));
    long long answered = 0;
    for (long long run = 0; run < runs; ++run) {
        const std::size_t which = rng() % all.size();
        const BenchQuestion &question = all[which];
        BenchTexts typed;
        for (const BenchInput &input : question.inputs) {
            const auto usual = examples[which].find(input.name);
            const bool hasUsual = usual != examples[which].end();
            if (hasUsual || rng() % 3 == 0)
                typed[std::string(input.name)] = anyText(input, hasUsual ? usual->second : "", rng);
        }
        CAPTURE(question.name);
        const auto answer =
            askBench(question, typed, rng() % 2 == 0 ? UnitSystem::Si : UnitSystem::Us, today);
        if (answer) {
            ++answered;
            checkFigures(*answer);
            if (run % 50 == 0)
                checkWords(question, *answer, texts);
        } else {
            CAPTURE(answer.error().what);
            CAPTURE(answer.error().where);
            REQUIRE(isInput(question, answer.error().where));
            REQUIRE(!answer.error().act.empty());
        }
    }
    CHECK(answered > runs / 20);
}

TEST_CASE("one quantity in any unit gives one answer")
{
    for (const BenchQuestion &question : benchQuestions()) {
        CAPTURE(question.name);
        const BenchTexts typed = exampleOf(question);
        const auto answer = askBench(question, typed, UnitSystem::Si, today);
        REQUIRE(answer.has_value());
        for (const BenchInput &input : question.inputs) {
            const auto text = typed.find(input.name);
            if (input.kind != AskKind::Quantity || text == typed.end() || !input.at.empty())
                continue;
            const auto si = parseSi(input.dimension, text->second,
                                    displayUnit(input.dimension, UnitSystem::Si, input.typical));
            REQUIRE(si.has_value());
            for (const Unit &unit : allUnits()) {
                // a bare number of a share is percent, whatever the table says of its factor
                if (unit.dimension != input.dimension ||
                    (unit.symbol.empty() && input.dimension == Dimension::Fraction))
                    continue;
                CAPTURE(input.name);
                CAPTURE(unit.symbol);
                BenchTexts other = typed;
                other[std::string(input.name)] =
                    fixed(fromSi(unit, *si), 12) + " " + std::string(unit.symbol);
                const auto same = askBench(question, other, UnitSystem::Us, today);
                REQUIRE(same.has_value());
                const double value = answer->figures.front().estimate.value;
                CHECK(std::fabs(same->figures.front().estimate.value - value) <=
                      1e-6 * std::fabs(value) + 1e-9);
            }
        }
    }
}
