// SPDX-License-Identifier: Apache-2.0
// [ISO-4000-1] [UN-R54] load indices: 90 to 125 as reprinted in public code and tables, the rest from memory.
// A page that prints 165 kg for index 62 (265) is why rising is checked too.
#include "../sourced.hpp"

#include "base/units.hpp"
#include "bench/tires/load_index.hpp"

using namespace snugwalk;
using snugwalk::test::half;

TEST_CASE("rows of the table")
{
    const struct {
        int index;
        double kilograms;
    } rows[] = {{62, 265},   {84, 500},   {88, 560},   {90, 600},   {94, 670},   {95, 690},   {100, 800},
                {104, 900},  {105, 925},  {107, 975},  {108, 1000}, {109, 1030}, {110, 1060}, {111, 1090},
                {112, 1120}, {113, 1150}, {114, 1180}, {115, 1215}, {116, 1250}, {117, 1285}, {118, 1320},
                {119, 1360}, {120, 1400}, {121, 1450}, {122, 1500}, {123, 1550}, {126, 1700}};
    for (const auto &row : rows) {
        CAPTURE(row.index);
        SOURCED("ISO-4000-1", loadOfIndex(row.index).value().si(), row.kilograms, 1e-9);
    }
}

TEST_CASE("in pounds, as the trade prints them")
{
    const struct {
        int index;
        double pounds;
    } rows[] = {{88, 1235},  {94, 1477},  {100, 1764}, {104, 1984}, {110, 2337}, {112, 2469}, {113, 2535},
                {115, 2679}, {117, 2833}, {119, 2998}, {121, 3197}, {123, 3417}, {126, 3748}};
    for (const auto &row : rows) {
        CAPTURE(row.index);
        SOURCED("computed", loadOfIndex(row.index).value().si() / 0.45359237, row.pounds, half(1));
    }
    // 107 is 2,149.507 lb; the printed 2,149 is cut off
    SOURCED("computed", loadOfIndex(107).value().si() / 0.45359237, 2149.507, half(0.001));
}

// The trade prints a formula beside the table, 45 kg times 10^(index / 80). The table won: it is what stands
// on sidewalls, and the formula misses it, mostly upwards.
TEST_CASE("the formula's column, which is not used: 115 is 1,215 kg, not 1,232")
{
    const struct {
        int index;
        double formula;
        double table;
    } rows[] = {{88, 567, 560},    {94, 673, 670},    {100, 800, 800},   {104, 898, 900},   {107, 979, 975},
                {110, 1067, 1060}, {112, 1130, 1120}, {113, 1163, 1150}, {115, 1232, 1215}, {117, 1305, 1285},
                {119, 1383, 1360}, {121, 1465, 1450}, {123, 1551, 1550}, {126, 1691, 1700}};
    for (const auto &row : rows) {
        CAPTURE(row.index);
        SOURCED("computed", 45.0 * std::pow(10.0, row.index / 80.0), row.formula, half(1));
        CHECK(loadOfIndex(row.index).value().si() == row.table);
    }
}

TEST_CASE("rises all the way, within 2.2 % of 45 kg times 10^(index / 80), and tenfold each 80")
{
    for (int index = 60; index <= 160; ++index) {
        CAPTURE(index);
        const double load = loadOfIndex(index).value().si();
        CHECK(std::abs(load / (45.0 * std::pow(10.0, index / 80.0)) - 1.0) <= 0.022);
        if (index > 60)
            CHECK(load > loadOfIndex(index - 1).value().si());
        if (index >= 140)
            CHECK(std::abs(load / 10.0 - loadOfIndex(index - 80).value().si()) < 1.0);
    }
}

TEST_CASE("speed symbols")
{
    const struct {
        char symbol;
        double kilometresAnHour, milesAnHour;
    } rows[] = {{'J', 100, 62},  {'K', 110, 68},  {'L', 120, 75}, {'M', 130, 81},
                {'N', 140, 87},  {'P', 150, 93},  {'Q', 160, 99}, {'R', 170, 106},
                {'S', 180, 112}, {'T', 190, 118}, {'H', 210, 130}};
    for (const auto &row : rows) {
        SOURCED("ISO-4000-1", speedOfSymbol(row.symbol)->si() * 3.6, row.kilometresAnHour, 1e-9);
        SOURCED("computed", speedOfSymbol(row.symbol)->si() * 3600.0 / 1609.344, row.milesAnHour, half(1));
    }
    CHECK(!speedOfSymbol('O'));
    CHECK(!speedOfSymbol('?'));
}

TEST_CASE("codes as they stand on sidewalls")
{
    const ServiceCode both = parseServiceCode(" 115/112 q").value();
    CHECK(both.single == 115);
    CHECK(both.dual == 112);
    CHECK(both.symbol == 'Q');
    CHECK(parseServiceCode("121").value().single == 121);
    for (const char *bad : {"", "Q", "abc", "121/", "1/2/3", "121O", "12.5", "-5", "99999999999"})
        CHECK(parseServiceCode(bad).error().where == "index");
    CHECK(loadOfIndex(59).error().where == "index");
    CHECK(loadOfIndex(161).error().code == Errc::OutOfRange);
}
