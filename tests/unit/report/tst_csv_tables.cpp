// SPDX-License-Identifier: Apache-2.0
// Comma-separated values by the rules of [RFC4180] section 2 (from memory), and what stands in them.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/csv.hpp"
#include "logbook/query.hpp"
#include "report/csv_tables.hpp"
#include "round/history.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Standing standingNow(Walker &walker)
{
    const auto history = loadHistory(walker.book(), walker.rig.id);
    REQUIRE(history);
    return standingOf(realCatalogue(), *history, walker.book().now());
}

std::string cellOf(const CsvTable &table, std::size_t row, const std::string &column)
{
    const auto at = std::find(table.header.begin(), table.header.end(), column);
    REQUIRE(at != table.header.end());
    return table.rows.at(row)[static_cast<std::size_t>(at - table.header.begin())];
}

void expectEven(const CsvTable &table)
{
    for (const auto &row : table.rows)
        CHECK(row.size() == table.header.size());
}

} // namespace

TEST_CASE("lines end in CRLF, and only what must be is quoted")
{
    CHECK(csvText({{"a", "b"}, {{"plain", "with, comma"}, {"say \"so\"", "two\nlines"}, {"", " blank "}}}) ==
          "a,b\r\nplain,\"with, comma\"\r\n\"say \"\"so\"\"\",\"two\nlines\"\r\n, blank \r\n");
}

TEST_CASE("findings have a line each, places on earth only where asked")
{
    Walker walker("csv");
    walker.doer.where = GeoPoint{-44.123456, 170.654321, std::nullopt, std::nullopt};
    const std::string point = walker.walk.tape.front().points.front();
    MarkDraft draft = attentionOn(point, 3, "said \"so\", twice");
    draft.findings.front().extentText = "14 mm";
    REQUIRE(walker.mark(draft));
    const Standing standing = standingNow(walker);
    const CsvTable table = findingsTable(standing, realTexts(), PlaceDetail::LeftOut);
    expectEven(table);
    REQUIRE(table.rows.size() == 1);
    CHECK(cellOf(table, 0, "point") == point);
    CHECK(cellOf(table, 0, "grade") == "3");
    CHECK(cellOf(table, 0, "extent") == "0.014");
    CHECK(cellOf(table, 0, "extent_unit") == "m");
    CHECK(cellOf(table, 0, "status") == "open");
    CHECK(csvText(table).find("170.") == std::string::npos);
    const CsvTable exact = findingsTable(standing, realTexts(), PlaceDetail::Exact);
    expectEven(exact);
    CHECK(cellOf(exact, 0, "longitude") == "170.6543210");
    CHECK(cellOf(findingsTable(standing, realTexts(), PlaceDetail::Coarse), 0, "latitude") == "-44.1400000");
}

TEST_CASE("marks have a line a reading, and a point without a mark says so")
{
    Walker walker("csv", "full_round");
    MarkDraft wheels = passOf("tread-depth");
    wheels.readings = {{"tread-depth", "wheel 1L", "6 mm", "gauge"}, {"tread-depth", "wheel 1R", "5 mm", ""}};
    REQUIRE(walker.mark(wheels));
    const Standing standing = standingNow(walker);
    const CsvTable table = marksTable(standing.history.walks.front(), realTexts());
    expectEven(table);
    std::size_t marked = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (cellOf(table, i, "point") != "tread-depth") {
            CHECK(cellOf(table, i, "mark") == "not_looked");
            continue;
        }
        CHECK(cellOf(table, i, "mark") == "pass");
        CHECK(cellOf(table, i, "value") == (marked == 0 ? "0.006" : "0.005"));
        CHECK(cellOf(table, i, "unit") == "m");
        CHECK(cellOf(table, i, "read_in") == "mm");
        ++marked;
    }
    CHECK(marked == 2);
}

TEST_CASE("mends and dates are read back whole by the reader of other people's files")
{
    Walker walker("csv");
    const auto receipt = walker.mark(attentionOn(walker.walk.tape.front().points.front(), 2));
    REQUIRE(receipt);
    Mend mend;
    mend.rig = walker.rig.id;
    mend.findings = receipt->findings;
    mend.action = "reseal";
    mend.what = "cleaned, \"twice\"\nand sealed";
    mend.parts = {{"lap sealant", 2.0, "cartridges"}};
    mend.minutes = 12.5;
    REQUIRE(addMend(walker.book(), mend, walker.doer));
    const Standing standing = standingNow(walker);
    const CsvTable mends = mendsTable(standing.history, realTexts());
    const CsvTable dates = datesTable(standing, realTexts());
    CHECK(cellOf(mends, 0, "minutes") == "12.5");
    CHECK(cellOf(mends, 0, "parts") == "lap sealant, 2 cartridges");
    CHECK(dates.rows.size() == standing.bands.size());
    for (const CsvTable &table : {mends, dates}) {
        expectEven(table);
        std::vector<std::vector<std::string>> back;
        const Status read = readCsv(
            csvText(table), "back.csv",
            {[&](std::span<const std::string> header) {
                 CHECK(std::equal(header.begin(), header.end(), table.header.begin(), table.header.end()));
                 return done();
             },
             [&](const CsvRow &row) {
                 back.emplace_back(row.cells.begin(), row.cells.end());
                 return done();
             }});
        REQUIRE(read);
        CHECK(back == table.rows);
    }
}
