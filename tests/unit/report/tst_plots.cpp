// SPDX-License-Identifier: Apache-2.0
// What plots say: limits with their source, projections, calls by shape, empty states that say what brings
// data.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "catalogue/texts.hpp"
#include "report/plot/plot_ask.hpp"
#include "report/plot/plot_sheet.hpp"
#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

LocalTime at(const char *text) { return *parseLocal(text); }

PlotVoice english() { return paperVoice(realTexts(), UnitSystem::Si, "en"); }

// Six readings falling by half a millimetre, a limit at 3.5 mm that is likely met on 1 June 2027.
Trend wearing()
{
    Trend trend;
    trend.point = "tread-depth";
    trend.reading = "tread-depth";
    trend.place = "wheel 1L";
    trend.dimension = Dimension::Length;
    const char *days[] = {"2026-01-01T08:00:00Z", "2026-03-01T08:00:00Z", "2026-05-01T08:00:00Z",
                          "2026-07-01T08:00:00Z", "2026-09-01T08:00:00Z", "2026-11-01T08:00:00Z"};
    double si = 8e-3;
    for (const char *day : days) {
        TrendPoint point;
        point.at = at(day);
        point.si = si;
        point.unit = "mm";
        trend.points.push_back(point);
        si -= 0.5e-3;
    }
    trend.lowSi = 3.5e-3;
    trend.basis = "maker";
    trend.perYearSi = -3e-3;
    trend.early = parseDate("2027-04-01");
    trend.likely = parseDate("2027-06-01");
    trend.late = parseDate("2027-09-01");
    return trend;
}

bool tells(const PlotSheet &sheet, const std::string &text)
{
    return std::any_of(sheet.words.begin(), sheet.words.end(),
                       [&](const SheetWords &words) { return words.text.find(text) != std::string::npos; });
}

} // namespace

TEST_CASE("a reading stands against its limit, whose source is named, and meets it where the date says")
{
    const Plot plot = readingPlot(wearing(), *parseDate("2026-11-20"), english());
    REQUIRE(plot.limits.size() == 1);
    CHECK(plot.limits[0].y == doctest::Approx(3.5));
    CHECK(plot.limits[0].label.find("3.5\u00a0mm") != std::string::npos);
    CHECK(plot.limits[0].label.find("maker's figure") != std::string::npos);
    REQUIRE(plot.meeting);
    CHECK(plot.meeting->likely == plotDay(*parseDate("2027-06-01")));
    CHECK(plot.meeting->y == doctest::Approx(3.5));
    CHECK(plot.meeting->label.find("Jun 2027") != std::string::npos);
    CHECK(plot.across.to > plot.meeting->late);
    CHECK(plot.rows.size() == 6);
    CHECK(plot.rows.back().cells[1] == "5.5\u00a0mm");
    CHECK(std::stod(plot.rows.back().data[4]) == doctest::Approx(0.0055));
    const PlotSheet sheet = layPlot(plot, {640.0, 400.0, 15.0, 2.0}, roughWordWidth(15.0));
    CHECK(tells(sheet, "likely Jun 2027"));
    CHECK(tells(sheet, "today"));
}

TEST_CASE("what was replaced and what is left out have shapes of their own and are told")
{
    Trend trend = wearing();
    trend.before = {trend.points[0], trend.points[1]};
    trend.points[3].leftOut = true;
    const Plot plot = readingPlot(trend, *parseDate("2026-11-20"), english());
    REQUIRE(plot.lines.size() == 2);
    CHECK(plot.lines[0].spots[0].shape == PlotShape::Ring);
    CHECK(plot.lines[1].spots[3].shape == PlotShape::Square);
    CHECK(plot.rows[0].cells[2] == "before it was replaced");
    CHECK(plot.rows[5].cells[2] == "far off, left out");
    const PlotSheet sheet = layPlot(plot, {340.0, 300.0, 15.0, 2.0}, roughWordWidth(15.0));
    CHECK(tells(sheet, "before it was replaced"));
    CHECK(tells(sheet, "far off"));
}

TEST_CASE("numbers are written as the language writes them, in the person's units")
{
    MonthOfRoad month;
    month.from = *parseDate("2026-03-01");
    month.until = *parseDate("2026-04-01");
    month.driven = kilometres(160.9344);
    month.equivalent = kilometres(321.8688);
    month.low = month.driven;
    month.high = kilometres(500.0);
    month.trips = 2;
    const Plot si = shakePlot({month}, paperVoice(realTexts(), UnitSystem::Si, "en"));
    CHECK(si.up.title.starts_with("km in the month"));
    CHECK(si.rows[0].cells[0] == "March 2026");
    CHECK(si.rows[0].cells[1] == "161");
    const Plot us = shakePlot({month}, paperVoice(realTexts(), UnitSystem::Us, "en"));
    CHECK(us.up.title.starts_with("mi in the month"));
    CHECK(us.up.log);
    CHECK(us.up.from == 100.0);
    CHECK(us.up.to == 1000.0);
    CHECK(us.rows[0].cells[1] == "100");
    CHECK(us.rows[0].data[1] == si.rows[0].data[1]); // for programs always metres
    const Plot comma =
        costPlots({{{"EUR", {{2026, 12.5, 1}}}}, {}, 0}, paperVoice(realTexts(), UnitSystem::Si, "de"))
            .front();
    CHECK(comma.rows[0].cells[1] == "12,50");
    CHECK(comma.rows[0].data[1] == "12.5");
}

TEST_CASE("currencies have a plot each, and unread costs are named")
{
    Mend odd;
    odd.cost = "a few dollars";
    const auto plots = costPlots(
        {{{"NZD", {{2025, 100.0, 2}, {2026, 50.0, 1}}}, {"", {{2026, 7.0, 1}}}}, {&odd}, 3}, english());
    REQUIRE(plots.size() == 2);
    CHECK(plots[0].bars[0].bars.size() == 2);
    CHECK(plots[1].title.find("no currency") != std::string::npos);
    CHECK(plots[0].notes[0].find("a few dollars") != std::string::npos);
    CHECK(plots[0].notes[1].find("3") != std::string::npos);
    REQUIRE(plots[0].across.levels.front().size() == 2);
    CHECK(plots[0].across.levels.front()[1].text == "2026");
}

TEST_CASE("calls are told by shape, and the key has those that occur")
{
    ConcernThen one{
        at("2026-01-01T08:00:00Z"), "full_round", "tread-depth", 30.0, 20.0, 40.0, Call::Watch, false};
    ConcernThen two{
        at("2026-06-01T08:00:00Z"), "full_round", "tread-depth", 96.0, 90.0, 100.0, Call::Hold, false};
    ConcernThen three{at("2026-09-01T08:00:00Z"), "", "tread-depth", 0.0, 0.0, 0.0, Call::None, true};
    const Plot plot = concernPlot({one, two, three}, "", english());
    CHECK(plot.lines[0].spots[0].shape == PlotShape::Half);
    CHECK(plot.lines[0].spots[1].shape == PlotShape::Block);
    CHECK_FALSE(plot.lines[0].spots[2].low);
    CHECK(plot.keys.size() == 3);
    CHECK(plot.up.from == 0.0);
    CHECK(plot.up.to == 100.0);
    CHECK(plot.rows[2].cells[4] == "closed");
    CHECK(rowWords(plot, plot.rows[1]).find("hold") != std::string::npos);
}

TEST_CASE("without data each plot says what brings it")
{
    const RigHistory nothing;
    const LocalTime now = at("2026-11-20T08:00:00Z");
    for (const PlotKind kind : allPlotKinds()) {
        const auto plots = plotsFor({kind, {}, {}, 0}, realCatalogue(), nothing, now, english());
        REQUIRE(plots.size() == 1);
        CAPTURE(slug(kind));
        CHECK(plots[0].empty.size() > 20);
        CHECK(plots[0].rows.empty());
        CHECK(parsePlotKind(slug(kind)) == kind);
        CHECK(plotTitle(kind, realTexts()) != std::string(slug(kind)));
    }
}

// [AFM-HELVETICA]: advance widths in thousandths of the size, from memory.
TEST_CASE("rough widths of words are never under those of a common font")
{
    const WordWidth rough = roughWordWidth(1000.0);
    const std::pair<const char *, double> widths[] = {{"a", 556.0}, {"i", 222.0}, {"m", 833.0}, {"0", 556.0},
                                                      {" ", 278.0}, {"A", 667.0}, {"O", 778.0}, {"W", 944.0},
                                                      {"%", 889.0}, {".", 278.0}};
    for (const std::pair<const char *, double> &one : widths) {
        CAPTURE(one.first);
        CHECK(rough(one.first, false) >= one.second);
    }
    CHECK(rough("\u00fc", false) < 1000.0); // one letter of two bytes
    CHECK(rough("a", true) > rough("a", false));
}
