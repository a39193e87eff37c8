// SPDX-License-Identifier: Apache-2.0
// Laws of every plot: ticks lie within their range, words lie over no other words and within the sheet, spots
// lie where their numbers say.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "base/text.hpp"
#include "report/plot/plot_sheet.hpp"
#include "report/plot/plot_ticks.hpp"

using namespace snugwalk;

namespace {

constexpr double sometime = 20'000.0; // a day in 2024

double draw(std::mt19937 &random, double from, double to)
{
    return std::uniform_real_distribution<double>(from, to)(random);
}

DateWords dateWords()
{
    return {[](CivilDate date) { return "M" + std::to_string(static_cast<unsigned>(date.month())); },
            [](CivilDate date) {
                return "M" + std::to_string(static_cast<unsigned>(date.month())) + " " +
                       std::to_string(static_cast<int>(date.year()));
            }};
}

// A plot of anything: a line, sometimes bars, limits with long words, a meeting.
Plot anyPlot(std::mt19937 &random)
{
    Plot plot;
    const double size = std::pow(10.0, draw(random, -3.0, 6.0));
    const double days = std::pow(10.0, draw(random, 0.5, 4.0));
    PlotLine line;
    line.label = random() % 2 ? "before it was replaced" : "";
    const int count = 1 + static_cast<int>(random() % 30);
    for (int i = 0; i < count; ++i)
        line.spots.push_back({sometime + days * i / count, draw(random, 0.0, size)});
    const NiceRange range = niceRange(0.0, size, 5);
    plot.up.title = "what is measured here and there, in its unit";
    plot.up.from = range.from;
    plot.up.to = range.to;
    plot.up.levels =
        numberLevels(range.from, range.to, [](double v, int decimals) { return fixed(v, decimals); });
    plot.across.from = sometime - days * 0.05;
    plot.across.to = sometime + days * 1.2;
    plot.across.levels = dateLevels(plot.across.from, plot.across.to, dateWords());
    if (random() % 2) {
        plot.bars = {{"driven", PlotFill::Solid, {}}, {"shook like, of smooth road", PlotFill::Hatch, {}}};
        for (const PlotSpot &spot : line.spots)
            plot.bars[random() % 2].bars.push_back(
                {spot.x, spot.x + days / count, spot.y, spot.y * 0.5, size});
    }
    if (random() % 2)
        plot.limits.push_back({draw(random, 0.0, size), "not below 3.5 mm (common practice)"});
    if (random() % 3 == 0)
        plot.limits.push_back({draw(random, 0.0, size), "not above 6.5 mm (maker's figure)"});
    if (random() % 2)
        plot.meeting = PlotMeeting{
            sometime,   size * 0.5,       sometime + days * 0.9, sometime + days, sometime + days * 1.1,
            size * 0.2, "likely Mar 2027"};
    plot.upright = PlotTick{sometime + days * 0.8, "today"};
    plot.lines.push_back(std::move(line));
    return plot;
}

struct Box {
    double left, top, right, bottom;
};

Box boxOf(const PlotSheet &sheet, const SheetWords &words)
{
    const double left = words.side == SheetSide::Start    ? words.at.x
                        : words.side == SheetSide::Middle ? words.at.x - words.width / 2.0
                                                          : words.at.x - words.width;
    return {left, words.at.y, left + words.width, words.at.y + sheet.lineHeight};
}

} // namespace

// Steps of [HECKBERT-1990]: 1, 2 and 5 times a power of ten.
TEST_CASE("ticks lie within the range, evenly, and a widened range holds what it was made for")
{
    std::mt19937 random(20261129);
    for (int round = 0; round < 20'000; ++round) {
        const double size = std::pow(10.0, draw(random, -9.0, 9.0));
        const double from = draw(random, -size, size);
        const double to = from + draw(random, 1e-3, 1.0) * size;
        const int wanted = 2 + static_cast<int>(random() % 9);
        CAPTURE(from);
        CAPTURE(to);
        CAPTURE(wanted);
        const std::vector<double> ticks = niceTicks(from, to, wanted);
        const double step = niceStep(to - from, wanted);
        REQUIRE(!ticks.empty());
        CHECK(ticks.front() >= from);
        CHECK(ticks.back() <= to);
        CHECK(ticks.front() - step < from); // none is left out at the ends
        CHECK(ticks.back() + step > to);
        CHECK(static_cast<int>(ticks.size()) <= 2 * wanted);
        for (std::size_t i = 1; i < ticks.size(); ++i)
            CHECK(ticks[i] - ticks[i - 1] == doctest::Approx(step).epsilon(1e-6));
        const NiceRange range = niceRange(from, to, wanted);
        CHECK(range.from <= from + step * 1e-6);
        CHECK(range.to >= to - step * 1e-6);
        CHECK(range.to - range.from < (to - from) + 2.001 * step);
    }
}

TEST_CASE("dates of an axis are firsts of months within it, oldest first")
{
    std::mt19937 random(3);
    for (int round = 0; round < 500; ++round) {
        const double from = draw(random, 0.0, 40'000.0);
        const double to = from + std::pow(10.0, draw(random, 0.0, 4.5));
        CAPTURE(from);
        CAPTURE(to);
        for (const auto &level : dateLevels(from, to, dateWords())) {
            for (std::size_t i = 0; i < level.size(); ++i) {
                const CivilDate date{std::chrono::sys_days(std::chrono::days(static_cast<int>(level[i].at)))};
                CHECK(date.day() == std::chrono::day(1));
                CHECK(level[i].at >= from);
                CHECK(level[i].at <= to);
                if (i > 0)
                    CHECK(level[i].at > level[i - 1].at);
            }
        }
    }
}

TEST_CASE("no words lie over others, and all lie on the sheet, from a narrow phone to a sheet of paper")
{
    std::mt19937 random(11);
    int labels = 0;
    for (int round = 0; round < 1'500; ++round) {
        const Plot plot = anyPlot(random);
        const double letter = draw(random, 11.0, 30.0);
        const SheetSize size{draw(random, 328.0, 1'200.0),
                             std::max(letter * 16.0, draw(random, 250.0, 480.0)), letter, 2.0};
        const PlotSheet sheet = layPlot(plot, size, roughWordWidth(letter));
        CAPTURE(round);
        CAPTURE(size.width);
        CAPTURE(letter);
        for (std::size_t i = 0; i < sheet.words.size(); ++i) {
            const Box a = boxOf(sheet, sheet.words[i]);
            CAPTURE(sheet.words[i].text);
            labels += sheet.words[i].bold;
            CHECK(a.left >= -0.5);
            CHECK(a.right <= size.width + 0.5);
            CHECK(a.top >= -0.5);
            CHECK(a.bottom <= sheet.height + 0.5);
            for (std::size_t k = i + 1; k < sheet.words.size(); ++k) {
                const Box b = boxOf(sheet, sheet.words[k]);
                const double over = std::min(a.right, b.right) - std::max(a.left, b.left);
                const double down = std::min(a.bottom, b.bottom) - std::max(a.top, b.top);
                CAPTURE(sheet.words[k].text);
                CHECK((over <= 0.5 || down <= 0.5));
            }
        }
    }
    CHECK(labels > 1'000); // labels do stand at their lines
}

TEST_CASE("every label is told, at its line or in the key")
{
    std::mt19937 random(5);
    for (int round = 0; round < 300; ++round) {
        const Plot plot = anyPlot(random);
        const double letter = draw(random, 11.0, 20.0);
        const SheetSize size{draw(random, 328.0, 900.0), letter * 20.0, letter, 2.0};
        const PlotSheet sheet = layPlot(plot, size, roughWordWidth(letter));
        std::string all;
        for (const SheetWords &words : sheet.words)
            all += words.text + " ";
        CAPTURE(all);
        for (const PlotLimit &limit : plot.limits)
            CHECK(all.find(limit.label.substr(0, 9)) != std::string::npos);
        if (plot.meeting)
            CHECK(all.find(plot.meeting->label) != std::string::npos);
    }
}

TEST_CASE("spots lie where their numbers say")
{
    std::mt19937 random(8);
    for (int round = 0; round < 300; ++round) {
        Plot plot = anyPlot(random);
        plot.bars.clear();
        plot.meeting.reset();
        plot.lines.front().label.clear();
        const SheetSize size{draw(random, 328.0, 900.0), 400.0, 15.0, 2.0};
        const PlotSheet sheet = layPlot(plot, size, roughWordWidth(15.0));
        std::vector<SheetSpot> dots;
        for (const SheetInk &ink : sheet.inks) {
            if (const auto *shape = std::get_if<SheetShape>(&ink);
                shape != nullptr && shape->shape == PlotShape::Dot)
                dots.push_back(shape->at);
        }
        const std::vector<PlotSpot> &spots = plot.lines.front().spots;
        REQUIRE(dots.size() == spots.size());
        for (std::size_t i = 0; i < spots.size(); ++i) {
            const double x = plot.across.from +
                             (dots[i].x - sheet.left) / sheet.across * (plot.across.to - plot.across.from);
            const double y =
                plot.up.from + (1.0 - (dots[i].y - sheet.top) / sheet.up) * (plot.up.to - plot.up.from);
            CHECK(x == doctest::Approx(spots[i].x));
            CHECK(y == doctest::Approx(spots[i].y).epsilon(1e-6).scale(plot.up.to));
        }
    }
}
