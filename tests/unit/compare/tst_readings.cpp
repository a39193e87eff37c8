// SPDX-License-Identifier: Apache-2.0
// Readings in pairs: what counts as a change, and which way is worse.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "compare/readings.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Reading tread(double mm, const std::string &unit = "mm", const std::string &place = "wheel 1L")
{
    return {"tread-depth", place, Dimension::Length, mm * 1e-3, unit};
}

ReadingChange treadChange(double then, double now)
{
    return compareReading(tread(then), tread(now), 1.6e-3, {});
}

} // namespace

TEST_CASE("6.1 to 5.6 mm with 0.25 mm each: z = -1.414214, not changed")
{
    // z = -0.5 / sqrt(0.25^2 + 0.25^2); smallest detectable 1.96 * 0.35355 = 0.69296 mm
    const ReadingChange c = treadChange(6.1, 5.6);
    CHECK(c.z == doctest::Approx(-1.414214).epsilon(1e-6));
    CHECK_FALSE(c.changed);
    CHECK(c.change == Change::Same);
    CHECK_FALSE(treadChange(6.0, 5.308).changed);
    CHECK(treadChange(6.0, 5.306).changed);
}

TEST_CASE("less tread is worse from 1.645, more is better from 1.96")
{
    CHECK(treadChange(6.0, 6.0 - 1.64 * 0.353553).change == Change::Same);
    CHECK(treadChange(6.0, 6.0 - 1.66 * 0.353553).change == Change::Worse);
    CHECK(treadChange(6.0, 6.0 + 1.90 * 0.353553).change == Change::Same);
    CHECK(treadChange(6.0, 6.0 + 2.00 * 0.353553).change == Change::Better);
}

TEST_CASE("another unit doubles the doubt")
{
    const ReadingChange c = compareReading(tread(6.1), tread(5.2, "in"), 1.6e-3, {});
    CHECK(c.uncertainty == doctest::Approx(2 * 0.25e-3 * 1.4142135624));
    CHECK_FALSE(c.changed);
    CHECK(treadChange(6.1, 5.2).changed);
    const Reading a{"hub", "", Dimension::Temperature, 300, "degC"};
    const Reading b{"hub", "", Dimension::Temperature, 300, "°C"};
    CHECK(compareReading(a, b, {}, {}).doubled.empty()); // one unit, spelled twice
}

TEST_CASE("with a high limit more is worse; without a limit nobody can tell; with two it depends")
{
    const auto change = [](double then, double now, std::optional<double> low, std::optional<double> high) {
        const Reading a{"r", "", Dimension::Voltage, then, "V"};
        const Reading b{"r", "", Dimension::Voltage, now, "V"};
        return compareReading(a, b, low, high);
    };
    CHECK(change(1, 2, {}, 3.0).change == Change::Worse);
    CHECK(change(2, 1, {}, 3.0).change == Change::Better);
    CHECK(change(1, 2, {}, {}).change == Change::Same);
    CHECK(change(1, 2, {}, {}).changed);
    CHECK(change(10, 13, 9.0, 12.0).change == Change::Worse);
    CHECK(change(13, 11, 9.0, 12.0).change == Change::Better);
    CHECK(change(10, 8, 9.0, 12.0).change == Change::Worse);
    CHECK(change(8, 10, 9.0, 12.0).change == Change::Better);
    CHECK(change(10, 11, 9.0, 12.0).change == Change::Same);
}

TEST_CASE("pairs by reading and place; the rig's own limits say which way is worse")
{
    Mark then;
    then.point = "tread";
    then.readings = {tread(8), tread(7, "mm", "wheel 1R"), tread(5, "mm", "spare")};
    Mark now = then;
    now.readings = {tread(7, "mm", "wheel 1R"), tread(4), tread(3, "mm", "wheel 2L")};
    const auto changes = compareReadings(smallCatalogue(), Rig(), then, now);
    REQUIRE(changes.size() == 2);
    CHECK(changes[0].place == "wheel 1L");
    CHECK(changes[0].change == Change::Worse);
    CHECK(changes[1].place == "wheel 1R");
    CHECK(changes[1].change == Change::Same);
    now.readings.front().dimension = Dimension::Count;
    CHECK(compareReadings(smallCatalogue(), Rig(), then, now).size() == 1);
}

TEST_CASE("every dimension has an uncertainty above zero, at zero too")
{
    for (int d = 0; d <= static_cast<int>(Dimension::Fraction); ++d) {
        for (const double si : {-5.0, 0.0, 1e6})
            CHECK(readingUncertainty(static_cast<Dimension>(d), si) > 0.0);
    }
}
