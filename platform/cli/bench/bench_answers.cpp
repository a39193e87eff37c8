// SPDX-License-Identifier: Apache-2.0
// Figures, what was understood, warnings, cautions.
#include "cli/bench/bench_answers.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "bench/ask/show.hpp"
#include "cli/answers.hpp"

namespace snugwalk::cli {
namespace {

std::vector<std::string> cautionsOf(const BenchQuestion &question)
{
    std::vector<std::string> slugs;
    for (const std::string_view slug : split(question.cautions, ' ')) {
        if (!slug.empty())
            slugs.emplace_back(slug);
    }
    return slugs;
}

std::string basisWords(const Estimate &e, const Texts &texts)
{
    const std::string basis = texts.phrase("basis_" + e.basis);
    const std::string sources = texts.benchSources(e.source);
    return sources.empty() ? basis : basis + ", " + sources;
}

std::string figureLine(const BenchQuestion &question, const BenchFigure &figure, const Texts &texts,
                       UnitSystem units)
{
    const Estimate &e = figure.estimate;
    std::string line =
        texts.benchWord(question.name, figure.name, "figures") + ": " + showFigure(figure, e.value, units);
    if (e.low < e.high)
        line += " (" +
                texts.phrase("bench_range",
                             {showFigure(figure, e.low, units), showFigure(figure, e.high, units)}) +
                ")";
    return line + "  [" + basisWords(e, texts) + "]\n";
}

// "cold pressure on the placard: the maker's figure" names it and says what is meant; here the name will do.
std::string nameOf(const std::string &words) { return words.substr(0, words.find(": ")); }

} // namespace

Value benchJson(const BenchQuestion &question, const BenchAnswer &answer)
{
    Value json = estimateValue(answer.figures.front().estimate);
    json.member("name") = question.name;
    Value::Map figures;
    for (const BenchFigure &figure : answer.figures)
        figures[std::string(figure.name)] = estimateValue(figure.estimate);
    json.member("figures") = figures;
    Value::List understood;
    for (const BenchUnderstood &u : answer.understood)
        understood.push_back(Value::Map{{"input", u.name},
                                        {"text", u.text},
                                        {"unit_assumed", u.unitAssumed},
                                        {"defaulted", u.defaulted}});
    json.member("understood") = understood;
    const auto cautions = cautionsOf(question);
    json.member("cautions") = Value::List(cautions.begin(), cautions.end());
    for (const auto &[key, value] : answer.extra.map())
        json.member(key) = value;
    return json;
}

std::string benchWords(const BenchQuestion &question, const BenchAnswer &answer, const Texts &texts,
                       UnitSystem units)
{
    std::string out = texts.phrase("bench_understood") + "\n";
    for (const BenchUnderstood &u : answer.understood)
        out += "  " + nameOf(texts.benchWord(question.name, u.name, "inputs")) + ": " + u.text + "\n";
    std::vector<std::string> warnings;
    for (const BenchFigure &figure : answer.figures) {
        out += figureLine(question, figure, texts, units);
        for (const std::string &slug : figure.estimate.warnings) {
            if (std::find(warnings.begin(), warnings.end(), slug) == warnings.end())
                warnings.push_back(slug);
        }
    }
    for (const BenchLine &line : answer.lines) {
        std::string words = texts.benchWord(question.name, line.name, "lines");
        for (std::size_t i = line.values.size(); i > 0; --i)
            words = replaceAll(std::move(words), "%" + std::to_string(i), line.values[i - 1]);
        out += words + "\n";
    }
    for (const std::string &slug : warnings)
        out += texts.word("bench_warnings", slug) + "\n";
    for (const std::string &slug : cautionsOf(question))
        out += texts.word("bench_cautions", slug) + "\n";
    return out;
}

} // namespace snugwalk::cli
