// SPDX-License-Identifier: Apache-2.0
// Lines, columns and boxes of plain text.
#include <doctest/doctest.h>

#include "papers/plain_text.hpp"
#include "papers/text_lines.hpp"
#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::papers;
using namespace snugwalk::test;

TEST_CASE("text breaks at blanks, within a word only where it must, never within a character")
{
    CHECK(wrapped("one two three", 7) == std::vector<std::string>{"one two", "three"});
    CHECK(wrapped("", 7) == std::vector<std::string>{""});
    CHECK(wrapped("abcdefghij", 4) == std::vector<std::string>{"abcd", "efgh", "ij"});
    CHECK(wrapped("ññññññ", 4) == std::vector<std::string>{"ññññ", "ññ"});
    CHECK(wrapped("380\u00a0kPa cold", 9) == std::vector<std::string>{"380\u00a0kPa", "cold"});
}

TEST_CASE("numbers stand to the right, cells wrap beside each other")
{
    CHECK(tableLines({{"What", "No."}, {false, true}, {{"señal", "7"}, {"bolt", "12"}}}, 40) ==
          "What   No.\n"
          "----------\n"
          "señal    7\n"
          "bolt    12\n");
    CHECK(tableLines({{"A", "B"}, {false, false}, {{"one two", "three four"}}}, 12) == "A      B\n"
                                                                                       "------------\n"
                                                                                       "one    three\n"
                                                                                       "two    four\n");
}

TEST_CASE("boxes, blanks and signatures are as wide as the page")
{
    Document document;
    document.title = "T";
    document.subtitle = "s";
    document.footer = "f";
    document.blocks = {TickBlock{{"level"}}, BlankBlock{"Key", 2}, SignatureBlock{"Owner"},
                       CautionBlock{{"Off."}}, FindingBlock{3, Call::Hold, "Hose: worn", {"do not move it"}}};
    CHECK(plainText(document, realTexts(), 40) == "T\n"
                                                  "=\n"
                                                  "s\n"
                                                  "\n"
                                                  "[ ] level\n"
                                                  "Key: ___________________________________\n"
                                                  "________________________________________\n"
                                                  "\n"
                                                  "Owner: _________________________________\n"
                                                  "Place and date: ________________________\n"
                                                  "\n"
                                                  "|| Off.\n"
                                                  "\n"
                                                  "3. Hose: worn\n"
                                                  "   - do not move it\n"
                                                  "\n"
                                                  "f\n");
}
