// SPDX-License-Identifier: Apache-2.0
// Texts as people read them, straight from the catalogue's files: "bench/en/joints", "en/latches-and-doors".
#pragma once

#include <fstream>
#include <iterator>
#include <map>
#include <string>

#include "base/value.hpp"

namespace snugwalk::test {

inline const Value &words(const std::string &name)
{
    static std::map<std::string, Value> read;
    Value &value = read[name];
    if (value.isNull()) {
        std::ifstream file(SNUGWALK_SOURCE_DIR "/core/catalogue/data/texts/" + name + ".json");
        value = parseJson(std::string(std::istreambuf_iterator<char>(file), {})).value();
    }
    return value;
}

inline bool has(const Value &text, const char *word)
{
    return text.asString().value_or("").find(word) != std::string::npos;
}

} // namespace snugwalk::test
