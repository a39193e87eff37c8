// SPDX-License-Identifier: Apache-2.0
// Words of a command line, and which field each is for.
#include "bench_example.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace snugwalk {
namespace {

std::vector<std::string> wordsOf(std::string_view line)
{
    std::vector<std::string> words;
    std::string word;
    char quote = '\0';
    bool begun = false;
    for (const char c : line) {
        if (quote != '\0' ? c == quote : c == '"' || c == '\'') {
            quote = quote == '\0' ? c : '\0';
            begun = true;
        } else if (c == ' ' && quote == '\0') {
            if (begun)
                words.push_back(std::exchange(word, {}));
            begun = false;
        } else {
            word += c;
            begun = true;
        }
    }
    if (begun)
        words.push_back(word);
    return words;
}

} // namespace

BenchTexts benchExample(const BenchQuestion &question)
{
    BenchTexts texts;
    const auto &inputs = question.inputs;
    const auto named = [&](std::string_view name) {
        return std::find_if(inputs.begin(), inputs.end(),
                            [&](const BenchInput &i) { return i.name == name; });
    };
    const std::vector<std::string> words = wordsOf(question.example);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool isFlag = words[i].starts_with("--");
        const auto input = isFlag ? named(std::string_view(words[i]).substr(2))
                                  : std::find_if(inputs.begin(), inputs.end(), [&](const BenchInput &one) {
                                        return one.positional && !texts.contains(one.name);
                                    });
        if (input == inputs.end())
            continue;
        const bool takesNext = isFlag && input->kind != AskKind::Flag && i + 1 < words.size();
        if (takesNext)
            ++i;
        texts[std::string(input->name)] = words[i];
    }
    return texts;
}

} // namespace snugwalk
