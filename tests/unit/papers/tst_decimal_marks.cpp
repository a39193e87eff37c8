// SPDX-License-Identifier: Apache-2.0
// Which points become commas, and which never.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "papers/decimal_marks.hpp"

using namespace snugwalk;
using namespace snugwalk::papers;

TEST_CASE("a quantity takes the mark of the language, whatever its unit")
{
    const std::string length = format(metres(6.4), UnitSystem::Si);
    REQUIRE(length.find('.') != std::string::npos);
    CHECK(withDecimalMark(length, "en") == length);
    for (const char *language : {"de", "es", "fr"}) {
        const std::string written = withDecimalMark(length, language);
        CHECK(written.find('.') == std::string::npos);
        CHECK(written.find(',') != std::string::npos);
    }
    CHECK(withDecimalMark("from 6.4\u00a0m to 21.0\u00a0ft.", "fr") == "from 6,4\u00a0m to 21,0\u00a0ft.");
}

TEST_CASE("what is no quantity stays as it was written")
{
    for (const char *text : {"ISO 6433.2", "version 2.4.1\u00a0m", "08.10 h", "wheel.1\u00a0m",
                             "10:08.5\u00a0s", ".5\u00a0m", "ST225/75R15", "see page 3.\u00a0Then"})
        CHECK(withDecimalMark(text, "de") == text);
}

TEST_CASE("every block of a document, but the words on a photo")
{
    Document document{"de", "Bericht", "6.4\u00a0m", {}, ""};
    document.blocks = {TextBlock{"380.5\u00a0kPa", TextTone::Plain},
                       TableBlock{{"1.5\u00a0m"}, {true}, {{"1.5\u00a0m"}}}, TickBlock{{"1.5\u00a0m"}},
                       CautionBlock{{"1.5\u00a0m"}}};
    putDecimalMarks(document);
    CHECK(document.subtitle == "6,4\u00a0m");
    CHECK(std::get<TextBlock>(document.blocks[0]).text == "380,5\u00a0kPa");
    CHECK(std::get<TableBlock>(document.blocks[1]).rows[0][0] == "1,5\u00a0m");
    CHECK(std::get<TickBlock>(document.blocks[2]).lines[0] == "1,5\u00a0m");
    CHECK(std::get<CautionBlock>(document.blocks[3]).lines[0] == "1,5\u00a0m");
}
