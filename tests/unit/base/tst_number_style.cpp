// SPDX-License-Identifier: Apache-2.0
// A slip of the mark is a slip by a thousand: each language is read by its own marks, doubt is told.
// Which marks a language uses is checked against ICU in tests/reference/numbers.
#include <doctest/doctest.h>

#include <random>
#include <vector>

#include "base/number_style.hpp"
#include "base/text.hpp"
#include "base/units.hpp"

using namespace snugwalk;

namespace {

constexpr NumberStyle english{'.', ','};
constexpr NumberStyle german{',', '.'}; // and Spanish
constexpr NumberStyle french{',', ' '};

struct Typed {
    NumberStyle style;
    const char *text;
    const char *plain;
    bool doubtful;
};

const std::vector<Typed> cases = {
    {german, "3,215 m", "3.215 m", false},
    {german, "1.250 kg", "1250 kg", true},
    {german, "1.250,5 kg", "1250.5 kg", false},
    {german, "12.345.678 m", "12345678 m", false},
    {german, "4.5 bar", "4.5 bar", false},
    {german, "0.125 in", "0.125 in", false},
    {german, "1250.500 kg", "1250.500 kg", false},
    {german, "-3,5 °C", "-3.5 °C", false},
    {german, ",5 m", ".5 m", false},
    {german, "2 125/1000 in", "2 125/1000 in", false},
    {german, "340 kPa = 1.060 kg; 380 kPa = 1.150 kg", "340 kPa = 1060 kg; 380 kPa = 1150 kg", true},
    {english, "3,215 m", "3215 m", false},
    {english, "3.215 m", "3.215 m", false},
    {english, "4,5 bar", "4.5 bar", false},
    {english, "1,250.75 lb", "1250.75 lb", false},
    {english, "1.250,75 kg", "1250.75 kg", false},
    {english, "2 1/2 in", "2 1/2 in", false},
    {english, "2 500 kg", "2 500 kg", false}, // refused by the parser: no space groups in English
    {french, "1 250,5 kg", "1250.5 kg", false},
    {french, "1\u202f250\u202f000 m", "1250000 m", false},
    {french, "2 125/1000 in", "2 125/1000 in", false},
    {french, "0,125 500", "0.125 500", false},
    {french, "1.250 kg", "1.250 kg", true},
    {german, "1\u2019250 kg", "1250 kg", false},
    {english, "1,2,3", "1,2,3", false},
    {german, "12.05.2026", "12.05.2026", false},
    {english, "firm", "firm", false},
    {english, "", "", false},
};

} // namespace

TEST_CASE("numbers are read by the marks of their language")
{
    for (const Typed &typed : cases) {
        CAPTURE(typed.text);
        CAPTURE(typed.style.decimal);
        const PlainNumbers plain = plainNumbers(typed.text, typed.style);
        CHECK(plain.text == typed.plain);
        CHECK(plain.doubtful.has_value() == typed.doubtful);
    }
}

TEST_CASE("a doubtful number says both meanings, and writing the other one leaves no doubt")
{
    for (const NumberStyle style : {german, french}) {
        const auto doubt = plainNumbers("1.250 kg", style).doubtful;
        REQUIRE(doubt.has_value());
        CHECK(doubt->typed == "1.250");
        const auto mine = parseDouble(doubt->taken);
        const PlainNumbers other = plainNumbers(doubt->other, style);
        CHECK(!other.doubtful);
        const auto theirs = parseDouble(other.text);
        REQUIRE(mine);
        REQUIRE(theirs);
        CHECK(std::max(*mine / *theirs, *theirs / *mine) == doctest::Approx(1000.0));
    }
}

TEST_CASE("what comes out is read the same again, in every style")
{
    std::mt19937 rng(20270312); // fixed: a failure must be repeatable
    const std::string alphabet = "0123456789.,  -/m";
    for (int i = 0; i < 20'000; ++i) {
        std::string text;
        for (unsigned n = rng() % 12; n > 0; --n)
            text += alphabet[rng() % alphabet.size()];
        CAPTURE(text);
        for (const NumberStyle style : {english, german, french}) {
            const std::string once = plainNumbers(text, style).text;
            if (once.find(',') == std::string::npos) // those with a comma left are refused
                CHECK(plainNumbers(once, english).text == once);
            CHECK(once.size() <= text.size());
        }
    }
}

TEST_CASE("a quantity typed in Spanish is not a thousand times too long")
{
    const auto metres = parseSi(Dimension::Length, plainNumbers("3,215 m", german).text);
    REQUIRE(metres);
    CHECK(*metres == doctest::Approx(3.215));
}
