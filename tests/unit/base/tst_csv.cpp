// SPDX-License-Identifier: Apache-2.0
// Comma-separated values: what is legal, what is refused with its line, pieces cut anywhere.
#include <doctest/doctest.h>

#include "base/csv.hpp"

using namespace snugwalk;

namespace {

struct Read {
    std::vector<std::string> header;
    std::vector<std::size_t> lines;
    std::vector<std::vector<std::string>> rows;
    std::optional<Error> error;
    friend bool operator==(const Read &a, const Read &b)
    {
        return a.header == b.header && a.lines == b.lines && a.rows == b.rows &&
               a.error.has_value() == b.error.has_value();
    }
};

Read readIn(std::string_view text, std::size_t pieces)
{
    Read read;
    CsvReader reader("a.csv", {[&](std::span<const std::string> header) {
                                   read.header.assign(header.begin(), header.end());
                                   return done();
                               },
                               [&](const CsvRow &row) {
                                   read.lines.push_back(row.line);
                                   read.rows.emplace_back(row.cells.begin(), row.cells.end());
                                   return done();
                               }});
    Status status = done();
    for (std::size_t at = 0; at < text.size() && status; at += pieces)
        status = reader.feed(text.substr(at, pieces));
    if (status)
        status = reader.finish();
    if (!status)
        read.error = status.error();
    return read;
}

Error refused(std::string_view text)
{
    const Read read = readIn(text, text.size());
    REQUIRE(read.error);
    CHECK(read.error->code == Errc::InvalidInput);
    CHECK_FALSE(read.error->act.empty());
    return *read.error;
}

Result<double> numberIn(const std::string &cell)
{
    Result<double> number = 0.0;
    const Status status = readCsv("t\n\"" + cell + "\"\n", "a.csv", {{}, [&](const CsvRow &row) {
                                                                         number = row.number(0);
                                                                         return done();
                                                                     }});
    REQUIRE(status);
    return number;
}

} // namespace

TEST_CASE("header, rows, their lines, quotes, blanks and empty lines")
{
    constexpr std::string_view text =
        "\xEF\xBB\xBFt, name ,z\r\n1,\"a, \"\"b\"\"\",\r\n\n 2 ,\"two\nlines\" ,x\n"
        "3,,\"\"";
    const Read read = readIn(text, text.size());
    REQUIRE_FALSE(read.error);
    CHECK(read.header == std::vector<std::string>{"t", "name", "z"});
    CHECK(read.lines == std::vector<std::size_t>{2, 4, 6});
    CHECK(read.rows == std::vector<std::vector<std::string>>{
                           {"1", "a, \"b\"", ""}, {"2", "two\nlines", "x"}, {"3", "", ""}});
    for (std::size_t pieces = 1; pieces < text.size(); ++pieces) {
        CAPTURE(pieces);
        CHECK(readIn(text, pieces) == read);
    }
}

TEST_CASE("what is refused, and the line it is told of")
{
    CHECK(refused("").what == "no header");
    CHECK(refused("\n\n").where == "a.csv, line 3");
    CHECK(refused("a,b\n1,2\n1,2,3\n").what == "3 cells, the header has 2");
    CHECK(refused("a,b\n1,2\n1,2,3\n").where == "a.csv, line 3");
    CHECK(refused("a,,b\n").what == "a column without a name");
    CHECK(refused("a,b,a\n").what == "two columns named a");
    CHECK(refused("a;b\n1;2\n").what == "cells parted by semicolons or tabs");
    CHECK(refused("a\tb\n").what == "cells parted by semicolons or tabs");
    CHECK(refused("a\n1\n\"2\n3\n").what == "a quote that is not closed");
    CHECK(refused("a\n1\n\"2\n3\n").where == "a.csv, line 3");
    CHECK(refused("a\n\"1\" 2\n").what == "text after a closing quote");
    CHECK(refused("a\n1\"2\"\n").what == "a quote inside a plain cell");
    CHECK(refused(std::string_view("a\n\0\n", 4)).what == "a byte of value 0");
    CHECK(refused("a\n" + std::string(70'000, '1') + "\n").what == "a line over 64 KiB");
    CHECK(refused("a\n\"" + std::string(70'000, '\n') + "\"\n").what == "a quote that is not closed");
    CHECK(refused("a" + std::string(300, ',') + "\n").what == "over 256 columns");
}

TEST_CASE("numbers have a decimal point and an end")
{
    CHECK(numberIn(" -12.5e-1 ").value() == -1.25);
    CHECK(numberIn("+7").value() == 7.0);
    for (const char *typed : {"", "nan", "inf", "1.5 m", "1 000", "0x10", "1e999", "--1", "+-1"}) {
        CAPTURE(typed);
        const auto number = numberIn(typed);
        REQUIRE_FALSE(number);
        CHECK(number.error().where == "a.csv, line 2, column t");
    }
    CHECK(numberIn("1,5").error().what == "a comma in a number: \"1,5\"");
    CHECK(numberIn("\x01").error().what == "not a finite number: a text");
    CHECK(numberIn("\xFF").error().what == "not a finite number: bytes that are no text");
}

TEST_CASE("a handler ends the reading with its own error")
{
    int rows = 0;
    const Status status =
        readCsv("t\n1\n2\n3\n", "a.csv", {{}, [&](const CsvRow &row) -> Status {
                                              ++rows;
                                              if (row.line == 3)
                                                  return Error{Errc::OutOfRange, "no", "", ""};
                                              return done();
                                          }});
    REQUIRE_FALSE(status);
    CHECK(status.error().code == Errc::OutOfRange);
    CHECK(rows == 2);
}

TEST_CASE("columns by name")
{
    const std::vector<std::string> header = {"tmin", "tmax"};
    CHECK(csvColumn(header, "tmax").value() == 1);
    CHECK_FALSE(findCsvColumn(header, "tmean"));
    CHECK(csvColumn(header, "tmean").error().act == "it has tmin, tmax");
}
