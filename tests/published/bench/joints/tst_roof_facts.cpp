// SPDX-License-Identifier: Apache-2.0
// What the bench says beside its figures for a roof: common practice, no source, each of them.
#include "../sourced.hpp"

#include <fstream>
#include <iterator>

#include "base/value.hpp"

using namespace snugwalk;

namespace {

const Value &words(const char *language)
{
    static std::map<std::string, Value> read;
    Value &value = read[language];
    if (value.isNull()) {
        std::ifstream file(std::string(SNUGWALK_SOURCE_DIR) + "/core/catalogue/data/texts/bench/" + language +
                           "/joints.json");
        value = parseJson(std::string(std::istreambuf_iterator<char>(file), {})).value();
    }
    return value;
}

bool has(const Value &text, const char *word)
{
    return text.asString().value_or("").find(word) != std::string::npos;
}

} // namespace

// common practice, no source
TEST_CASE("a roof takes no wax: it is slippery, and new sealant does not hold on it")
{
    const Value &caution = words("en")["cautions"]["no_wax"];
    SOURCED("CP", has(caution, "wax"), true, 0);
    SOURCED("CP", has(caution, "slippery"), true, 0);
    SOURCED("CP", has(caution, "does not hold"), true, 0);
    CHECK(has(words("es")["cautions"]["no_wax"], "cera"));
}

// common practice, no source
TEST_CASE("a rubber roof gets its own cleaner")
{
    const Value &line = words("en")["questions"]["window"]["lines"]["roof-cleaner"];
    SOURCED("CP", has(line, "rubber"), true, 0);
    SOURCED("CP", has(line, "its own cleaner"), true, 0);
    CHECK(has(words("es")["questions"]["window"]["lines"]["roof-cleaner"], "goma"));
}

// common practice, no source
TEST_CASE("self-leveling lies on flat roofs only, silicone on nothing but silicone")
{
    const Value &caution = words("en")["cautions"]["match_chemistry"];
    SOURCED("CP", has(caution, "Self-leveling on flat roofs only"), true, 0);
    SOURCED("CP", has(caution, "Silicone on nothing but silicone"), true, 0);
}
