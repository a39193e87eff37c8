// SPDX-License-Identifier: Apache-2.0
// What the bench says beside its figures for a roof: common practice, no source, each of them.
#include "../bench_words.hpp"
#include "../sourced.hpp"

using namespace snugwalk;
using snugwalk::test::has;
using snugwalk::test::words;

// common practice, no source
TEST_CASE("a roof takes no wax: it is slippery, and new sealant does not hold on it")
{
    const Value &caution = words("bench/en/joints")["cautions"]["no_wax"];
    SOURCED("CP", has(caution, "wax"), true, 0);
    SOURCED("CP", has(caution, "slippery"), true, 0);
    SOURCED("CP", has(caution, "does not hold"), true, 0);
    CHECK(has(words("bench/es/joints")["cautions"]["no_wax"], "cera"));
}

// common practice, no source
TEST_CASE("a rubber roof gets its own cleaner")
{
    const Value &line = words("bench/en/joints")["questions"]["window"]["lines"]["roof-cleaner"];
    SOURCED("CP", has(line, "rubber"), true, 0);
    SOURCED("CP", has(line, "its own cleaner"), true, 0);
    CHECK(has(words("bench/es/joints")["questions"]["window"]["lines"]["roof-cleaner"], "goma"));
}

// common practice, no source
TEST_CASE("self-leveling lies on flat roofs only, silicone on nothing but silicone")
{
    const Value &caution = words("bench/en/joints")["cautions"]["match_chemistry"];
    SOURCED("CP", has(caution, "Self-leveling on flat roofs only"), true, 0);
    SOURCED("CP", has(caution, "Silicone on nothing but silicone"), true, 0);
}
