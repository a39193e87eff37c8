// SPDX-License-Identifier: Apache-2.0
// From typed texts to an answer.
#include "bench/ask/ask.hpp"

#include <algorithm>

#include "bench/ask/questions.hpp"

namespace snugwalk {

const std::vector<BenchQuestion> &benchQuestions()
{
    static const std::vector<BenchQuestion> all = [] {
        std::vector<BenchQuestion> table;
        for (const auto &subject :
             {tireQuestions(), tireCareQuestions(), wheelQuestions(), hubQuestions(), weightQuestions(),
              jointQuestions(), fastenerQuestions(), electricQuestions(), lampQuestions(), gasQuestions(),
              waterQuestions(), brakeQuestions()})
            table.insert(table.end(), subject.begin(), subject.end());
        return table;
    }();
    return all;
}

const BenchQuestion *findBenchQuestion(std::string_view name)
{
    const auto &all = benchQuestions();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const BenchQuestion &q) { return q.name == name; });
    return found == all.end() ? nullptr : &*found;
}

BenchTexts exampleOf(const BenchQuestion &question)
{
    std::vector<std::string> words(1);
    bool quoted = false;
    for (const char c : question.example) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ' ' && !quoted)
            words.emplace_back();
        else
            words.back() += c;
    }
    BenchTexts texts;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool isFlag = words[i].starts_with("--");
        const auto input =
            std::find_if(question.inputs.begin(), question.inputs.end(), [&](const BenchInput &in) {
                return isFlag ? words[i].substr(2) == in.name : in.positional;
            });
        SNUG_ASSERT(input != question.inputs.end()); // an example that asks for what is not there
        const bool isAlone = !isFlag || input->kind == AskKind::Flag;
        texts[std::string(input->name)] = isAlone ? words[i] : words.at(++i);
    }
    return texts;
}

Result<BenchAnswer> askBench(const BenchQuestion &question, const BenchTexts &texts, UnitSystem units,
                             CivilDate today)
{
    const Result<BenchTyped> typed = BenchTyped::read(question, texts, units, today);
    if (!typed)
        return typed.error();
    Result<BenchAnswer> answer = question.answer(*typed);
    if (!answer)
        return answer;
    answer->understood = typed->understood();
    const bool assumed = std::any_of(answer->understood.begin(), answer->understood.end(),
                                     [](const BenchUnderstood &u) { return u.unitAssumed; });
    for (BenchFigure &figure : answer->figures) {
        for (const BenchUnderstood &u : answer->understood) {
            if (u.defaulted)
                figure.estimate.inputsDefaulted.emplace_back(u.name);
        }
        if (assumed)
            figure.estimate.warnings.emplace_back("unit_assumed");
    }
    return answer;
}

} // namespace snugwalk
