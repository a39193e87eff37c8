// SPDX-License-Identifier: Apache-2.0
// Dates on cylinders, alarms, extinguishers: [PHMSA-CYLINDERS] read, [NFPA-72] and [NFPA-10] as restated, the
// others common practice, no source.
#include "../sourced.hpp"

#include <algorithm>
#include <iterator>

#include "bench/gas/ages.hpp"

using namespace snugwalk;
using namespace std::chrono;

namespace {

constexpr double aDay = 86400.0;
constexpr CivilDate on = year(2026) / 11 / 24;

bool warns(const DueBy &d, const char *slug)
{
    return std::find(d.left.warnings.begin(), d.left.warnings.end(), slug) != d.left.warnings.end();
}

} // namespace

// The agency's sheet: 5 or 10 years by type, state and the last method; its picture shows April 1994 with no
// later date, "indicating that the 10-year requalification is overdue".
TEST_CASE("the picture of the sheet: April 1994, nothing since, overdue")
{
    const auto d = cylinderDue(year(1994) / 4 / 1, CylinderTest::Made, on).value();
    SOURCED("PHMSA-CYLINDERS", daysBetween(d.due, year(2004) / 4 / 1), 0, 0);
    CHECK(warns(d, "overdue"));
    CHECK_FALSE(warns(d, "sources_differ")); // past the 12 years of the other source, too
    CHECK(d.left.value < 0.0);
}

TEST_CASE("from the stamp to the next date: 10, 5, 7, 10 years, the earliest that sources give")
{
    const auto due = [](CylinderTest t) { return cylinderDue(year(2019) / 4 / 30, t, on).value().due; };
    SOURCED("PHMSA-CYLINDERS", daysBetween(due(CylinderTest::Made), year(2029) / 4 / 30), 0, 0);
    SOURCED("PHMSA-CYLINDERS", daysBetween(due(CylinderTest::Seen), year(2024) / 4 / 30), 0, 0);
    SOURCED("49-CFR-180.209", daysBetween(due(CylinderTest::Proof), year(2026) / 4 / 30), 0, 0);
    SOURCED("PHMSA-CYLINDERS", daysBetween(due(CylinderTest::Expansion), year(2029) / 4 / 30), 0, 0);
    const auto proof = cylinderDue(year(2019) / 4 / 30, CylinderTest::Proof, on).value();
    CHECK(warns(proof, "overdue"));
    CHECK(warns(proof, "sources_differ")); // 10 years by the other source
    CHECK(proof.left.high == static_cast<double>(daysBetween(on, year(2029) / 4 / 30)) * aDay);
    CHECK(warns(cylinderDue(year(2017) / 1 / 15, CylinderTest::Made, on).value(), "due_soon"));
}

TEST_CASE("a smoke alarm 10 years, an extinguisher 6 to its examination and 12 to its end")
{
    const auto due = [](const char *kind) {
        return agedDue({kind, year(2018) / 2 / 28, {}, on}).value().due;
    };
    CHECK(due("smoke_alarm") == year(2028) / 2 / 28);
    CHECK(due("extinguisher_exam") == year(2024) / 2 / 28);
    CHECK(due("extinguisher") == year(2030) / 2 / 28);
    CHECK(due("extinguisher_test") == year(2030) / 2 / 28);
    CHECK(due("gas_alarm") == year(2023) / 2 / 28); // commonly 5 to 7
    CHECK(due("breakaway_battery") == year(2021) / 2 / 28);
}

// The trade's table, each row with its source; where it gives a span the stricter end stands, the other is
// told.
TEST_CASE("ages in years: what is due when, and the latest that practice gives")
{
    const struct {
        const char *source;
        const char *kind;
        double due, latest;
    } rows[] = {
        {"NFPA-72", "smoke_alarm", 10, 10},
        {"CP", "co_alarm", 5, 10},
        {"CP", "gas_alarm", 5, 7},
        {"NFPA-10", "extinguisher_look", 1.0 / 12.0, 1.0 / 12.0}, // every 30 days, by the calendar month
        {"NFPA-10", "extinguisher_exam", 6, 6},
        {"NFPA-10", "extinguisher_test", 12, 12},
        {"NFPA-10", "extinguisher", 12, 12},
        {"CP", "gas_hose", 10, 10},
        {"CP", "gas_regulator", 10, 15},
        {"CP", "breakaway_battery", 3, 5},
        {"CP", "house_battery_flooded", 3, 6},
        {"CP", "house_battery_agm", 4, 8},
        {"CP", "house_battery_lithium", 10, 10},
        {"CP", "brake_fluid", 2, 2},
        {"CP", "anode", 1, 1},
        {"CP", "water_filter", 0.5, 0.5}};
    CHECK(std::size(rows) == agedKinds().size());
    for (const auto &row : rows) {
        CAPTURE(row.kind);
        const AgedKind *kind = findAgedKind(row.kind);
        REQUIRE(kind != nullptr);
        SOURCED(row.source, kind->months / 12.0, row.due, 1e-12);
        SOURCED(row.source, kind->monthsLatest / 12.0, row.latest, 1e-12);
        CHECK(kind->source == row.source);
    }
}

TEST_CASE("the end date printed on a thing goes before ours")
{
    const auto d = agedDue({"co_alarm", year(2020) / 6 / 1, year(2027) / 6 / 1, on}).value();
    CHECK(d.due == year(2027) / 6 / 1);
    CHECK(d.left.basis == "maker");
    CHECK(
        warns(agedDue({"gas_alarm", year(2020) / 6 / 1, year(2035) / 6 / 1, on}).value(), "maker_end_later"));
    CHECK(d.age.value == static_cast<double>(daysBetween(year(2020) / 6 / 1, on)) * aDay);
}

TEST_CASE("month ends: made on 29 February, due on the 28th")
{
    CHECK(agedDue({"extinguisher_exam", year(2024) / 2 / 29, {}, on}).value().due == year(2030) / 2 / 28);
}

TEST_CASE("what cannot be is refused, with its name")
{
    CHECK(cylinderDue(year(2030) / 1 / 1, CylinderTest::Made, on).error().where == "stamp");
    CHECK(cylinderDue(year(2019) / 2 / 31, CylinderTest::Made, on).error().where == "stamp");
    CHECK(cylinderDue(year(2019) / 2 / 1, CylinderTest::Made, year(1800) / 1 / 1).error().where == "on");
    CHECK(agedDue({"toaster", year(2019) / 2 / 1, {}, on}).error().where == "item");
    CHECK(agedDue({"smoke_alarm", year(1900) / 2 / 1, {}, on}).error().where == "made");
    CHECK(agedDue({"smoke_alarm", year(2019) / 2 / 1, year(2018) / 2 / 1, on}).error().where == "end");
    CHECK_FALSE(parseCylinderTest("guess"));
    CHECK(parseCylinderTest("external") == CylinderTest::Seen);
}
