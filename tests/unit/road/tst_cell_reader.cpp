// SPDX-License-Identifier: Apache-2.0
// Lines in any portions, and what is wrong with them by line.
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "road/series/cell_reader.hpp"

using namespace snugwalk;

namespace {

using Rows = std::vector<std::vector<std::string>>;

Status readIn(std::string_view text, std::size_t portion, Rows &rows)
{
    CellReader reader([&](std::span<const std::string_view> cells, long long) {
        rows.emplace_back(cells.begin(), cells.end());
        return done();
    });
    for (std::size_t at = 0; at < text.size(); at += portion)
        SNUG_TRY(reader.feed(text.substr(at, portion)));
    return reader.finish();
}

} // namespace

TEST_CASE("cells are the same in any portions, with either end of line and without the last")
{
    const std::string text = "\xEF\xBB\xBFtime, x\r\n# a remark\r\n 1 ,\"2\"\r\n3,4";
    const Rows wanted = {{"time", "x"}, {"1", "2"}, {"3", "4"}};
    for (std::size_t portion = 1; portion <= text.size(); ++portion) {
        Rows rows;
        REQUIRE(readIn(text, portion, rows));
        CHECK(rows == wanted);
    }
}

TEST_CASE("semicolons and tabs part cells where the first line has them")
{
    Rows rows;
    REQUIRE(readIn("a;b\n1;2,5\n", 99, rows));
    CHECK(rows[1] == std::vector<std::string>{"1", "2,5"});
    rows.clear();
    REQUIRE(readIn("a\tb\n1\t2\n", 99, rows));
    CHECK(rows[1] == std::vector<std::string>{"1", "2"});
}

TEST_CASE("an empty line among the numbers is told by its number, at the end it is nothing")
{
    Rows rows;
    REQUIRE(readIn("\n\n1\n2\n\n\n", 3, rows));
    CHECK(rows.size() == 2);
    const Status gap = readIn("1\n2\n\n\n3\n", 2, rows);
    REQUIRE(!gap);
    CHECK(gap.error().where == "line 3");
    CHECK(!gap.error().act.empty());
}

TEST_CASE("lines and rows beyond the limits are refused, however they come")
{
    for (const std::size_t portion : {std::size_t{7}, std::size_t{100'000}}) {
        Rows rows;
        const Status longLine = readIn("1\n" + std::string(5000, '1') + "\n2\n", portion, rows);
        REQUIRE(!longLine);
        CHECK(longLine.error().where == "line 2");
        CHECK(!readIn("1\n" + std::string(50'000, '1'), portion, rows));
        const Status wide = readIn(std::string(200, ',') + "\n", portion, rows);
        REQUIRE(!wide);
        CHECK(wide.error().where == "line 1");
    }
}

TEST_CASE("what is in a cell is told: empty, not finite, not a number")
{
    CHECK(numberIn("1.5e-3", 1, 0).value() == 1.5e-3);
    CHECK(numberIn("", 7, 2).error().where == "line 7, column 3");
    CHECK(numberIn("", 7, 2).error().what.find("gap") != std::string::npos);
    for (const char *text : {"nan", "NaN", "inf", "-inf", "Infinity"})
        CHECK(numberIn(text, 1, 0).error().what.find("finite") != std::string::npos);
    for (const char *text : {"1,5", "12 m", "--3", "0x10", "one"})
        CHECK(numberIn(text, 1, 0).error().what.find("not a number") != std::string::npos);
}
