// SPDX-License-Identifier: Apache-2.0
// Text helpers: splitting, numbers without a locale, UTF-8, hexadecimal.
#include <doctest/doctest.h>

#include <array>
#include <clocale>

#include "base/id.hpp"
#include "base/text.hpp"

using namespace snugwalk;

TEST_CASE("trims blanks at both ends only")
{
    CHECK(trim("  a b\t\r\n") == "a b");
    CHECK(trim(" \n ").empty());
    CHECK(trim("").empty());
}

TEST_CASE("splits at every separator")
{
    CHECK(split("a,,b", ',') == std::vector<std::string_view>{"a", "", "b"});
    CHECK(split("", ',') == std::vector<std::string_view>{""});
    CHECK(split("a,", ',') == std::vector<std::string_view>{"a", ""});
    CHECK(join({"a", "b", "c"}, ", ") == "a, b, c");
    CHECK(join({}, ", ").empty());
}

TEST_CASE("replaces each occurrence once, also where the new text holds the old")
{
    CHECK(replaceAll("a-b-c", "-", "--") == "a--b--c");
    CHECK(replaceAll("abc", "x", "y") == "abc");
}

TEST_CASE("lower case touches ASCII letters only") { CHECK(lowerAscii("PSI Ü 9") == "psi Ü 9"); }

TEST_CASE("reads decimals in full or not at all")
{
    CHECK(parseDouble("1.5") == 1.5);
    CHECK(parseDouble("+1.5") == 1.5);
    CHECK(parseDouble("-0.25") == -0.25);
    CHECK(parseDouble("2e3") == 2000.0);
    for (const std::string refused : {"", "+", "-", "1x", "1 ", " 1", "nan", "inf", "-inf", "1e999", "1,5",
                                      "0x10", "+-1", "++1", "1.2.3"}) {
        CAPTURE(refused);
        CHECK_FALSE(parseDouble(refused));
    }
}

TEST_CASE("reads integers in full or not at all")
{
    CHECK(parseInteger("-42") == -42);
    CHECK(parseInteger("9223372036854775807") == 9223372036854775807LL);
    for (const std::string refused : {"", "-", "1.0", "9223372036854775808", "1 ", "abc"}) {
        CAPTURE(refused);
        CHECK_FALSE(parseInteger(refused));
    }
}

TEST_CASE("numbers are written with a point and no sign on nothing")
{
    CHECK(fixed(65.04, 1) == "65.0");
    CHECK(fixed(-0.04, 1) == "0.0");
    CHECK(fixed(-0.06, 1) == "-0.1");
    CHECK(fixed(1e6, 0) == "1000000");
    CHECK(fixed(2.5, 0) == "2"); // to even, as IEEE 754 rounds
}

TEST_CASE("a locale with a comma changes neither reading nor writing")
{
    // the locale may be absent on this machine, in which case the check still holds
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    CHECK(parseDouble("1.5") == 1.5);
    CHECK(fixed(1.5, 1) == "1.5");
    std::setlocale(LC_ALL, "C");
}

TEST_CASE("hexadecimal both ways")
{
    const std::string bytes("\x00\x01\xfe\xff", 4);
    CHECK(toHex(bytes) == "0001feff");
    CHECK(fromHex("0001FEff") == bytes);
    CHECK(fromHex("") == "");
    for (const std::string refused : {"0", "0g", "+1", "-1", "0x", " 1"}) {
        CAPTURE(refused);
        CHECK_FALSE(fromHex(refused));
    }
}

// Source: [RFC3629] section 3 (ranges), section 4 (grammar), section 10 (overlong forms refused).
TEST_CASE("UTF-8 is told from what only looks like it")
{
    const std::array<std::string_view, 9> formed = {
        "", "plain", "ü", "水", "\U00010151", "\xC2\x80", "\xED\x9F\xBF", "\xEE\x80\x80", "\xF4\x8F\xBF\xBF"};
    for (const std::string_view text : formed) {
        CAPTURE(toHex(text));
        CHECK(isUtf8(text));
    }
    const std::array<std::string_view, 12> illFormed = {
        "\x80",             // a continuation alone
        "\xC0\xAF",         // overlong "/"
        "\xC1\xBF",         //
        "\xE0\x80\xAF",     // overlong in three
        "\xE0\x9F\xBF",     //
        "\xF0\x80\x80\xAF", // overlong in four
        "\xED\xA0\x80",     // first surrogate
        "\xED\xBF\xBF",     // last surrogate
        "\xF4\x90\x80\x80", // beyond U+10FFFF
        "\xF5\x80\x80\x80", //
        "\xE6\xB0",         // cut short
        "a\xC3",            //
    };
    for (const std::string_view text : illFormed) {
        CAPTURE(toHex(text));
        CHECK_FALSE(isUtf8(text));
    }
}

TEST_CASE("an id is 32 digits, shown by its first 8")
{
    const auto id = Id::parse("00112233445566778899aabbccddeeff");
    REQUIRE(id);
    CHECK(id->text() == "00112233445566778899aabbccddeeff");
    CHECK(id->shortText() == "00112233");
    CHECK(Id::fromBytes(id->view()) == *id);
    CHECK_FALSE(id->isNull());
    CHECK(Id{}.isNull());
    CHECK(Id{} < *id);
    for (const std::string refused :
         {"", "0011", "00112233445566778899aabbccddeefg", "00112233445566778899aabbccddeeff00"}) {
        CAPTURE(refused);
        CHECK_FALSE(Id::parse(refused));
    }
}
