// SPDX-License-Identifier: Apache-2.0
// Printed words: they come back, and a slip is found at its word. Form after [WILKERSON-2009], from memory.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "keys/hash.hpp"
#include "sync/words.hpp"

using namespace snugwalk;

namespace {

std::vector<std::string> list(const std::string &words)
{
    std::vector<std::string> parts;
    for (const std::string_view part : split(words, ' '))
        parts.emplace_back(part);
    return parts;
}

} // namespace

TEST_CASE("32 bytes are 24 words of five letters; every length comes back")
{
    const std::string key = randomBytes(32);
    CHECK(list(wordsFrom(key)).size() == 24);
    for (std::size_t size = 0; size <= 300; ++size) {
        const std::string bytes = randomBytes(size);
        REQUIRE(bytesFromWords(wordsFrom(bytes)).value() == bytes);
    }
    CHECK(bytesFromWords("  " + replaceAll(wordsFrom(key), " ", "-\n") + ".").value() == key);
}

// Seven bytes and their check fill 64 of 66 bits, eight 72 of 77: of each eleven lengths three leave a byte
// free.
TEST_CASE("a free byte in the last word is never taken for one of the row")
{
    for (std::size_t size = 0; size <= 40; ++size) {
        for (int i = 0; i < 3000; ++i) {
            std::string bytes;
            while (bytes.size() < size)
                bytes += blake2b(std::to_string(size) + " " + std::to_string(i) + bytes).view();
            bytes.resize(size);
            REQUIRE(bytesFromWords(wordsFrom(bytes)).value() == bytes);
        }
    }
}

TEST_CASE("one wrong letter is told at its word, nearly always; never taken")
{
    const std::string key(32, 'k');
    const auto words = list(wordsFrom(key));
    int tried = 0;
    int located = 0;
    for (std::size_t at = 0; at < words.size(); ++at) {
        for (std::size_t letter = 0; letter < 5; ++letter) {
            for (const char c : std::string_view("bdfghjklmnprstvzaiou")) {
                auto wrong = words;
                wrong[at][letter] = c;
                if (wrong == words)
                    continue;
                ++tried;
                const auto read = bytesFromWords(join(wrong, " "));
                REQUIRE_FALSE(read);
                located += read.error().where.starts_with("word " + std::to_string(at + 1) + ",") ? 1 : 0;
            }
        }
    }
    MESSAGE(tried, " slips, ", located, " told at their word");
    CHECK(located > tried * 9 / 10);
}

TEST_CASE("two words that changed places, a missing and a doubled word")
{
    auto words = list(wordsFrom(std::string(32, 'w')));
    std::swap(words[3], words[9]);
    CHECK_FALSE(bytesFromWords(join(words, " ")));
    words = list(wordsFrom(std::string(32, 'w')));
    words.pop_back();
    CHECK_FALSE(bytesFromWords(join(words, " ")));
    CHECK_FALSE(bytesFromWords(""));
    CHECK_FALSE(bytesFromWords("only others here"));
}
