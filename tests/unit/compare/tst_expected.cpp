// SPDX-License-Identifier: Apache-2.0
// Readings against expected wear: by their own slope, by the point's interval, after a replacement.
#include <doctest/doctest.h>

#include <cmath>

#include "../due/story.hpp"
#include "compare/compare.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using doctest::Approx;

namespace {

struct Wear {
    Story story;
    std::vector<Id> walks;
    std::string by = "Ada";
    std::string tool;

    void read(std::string_view date, double mm)
    {
        walks.push_back(story.walk(at(date), "full_round", {"tread"}));
        Mark &mark = story.mark(walks.back(), "tread", MarkState::Pass, at(date));
        mark.by = by;
        mark.readings = {{"tread-depth", "wheel 1L", Dimension::Length, mm * 1e-3, "mm", tool}};
    }
    [[nodiscard]] ReadingChange last() const
    {
        const Comparison c =
            compareWalks(smallCatalogue(), story.history(), walks[walks.size() - 2], walks.back());
        REQUIRE(c.points.size() == 1);
        REQUIRE(c.points.front().readings.size() == 1);
        return c.points.front().readings.front();
    }
};

} // namespace

TEST_CASE("without earlier readings the interval bounds what is expected: half the room in each")
{
    Wear wear;
    wear.read("2026-01-01", 5.6);
    wear.read("2026-04-02", 4.4); // 91 days, an interval of 3 months is 91.3
    const ReadingChange c = wear.last();
    CHECK(c.expectedFrom == "interval_days");
    CHECK(c.expected.value() == Approx(-2.0e-3).epsilon(0.01)); // half of 5.6 - 1.6
    CHECK(c.expectedUncertainty == 0.0);
    CHECK(c.changed);
    CHECK_FALSE(c.faster);
    wear.read("2026-07-02", 2.2); // 2.2 mm gone where 1.4 were the most
    CHECK(wear.last().faster);
    CHECK(wear.last().change == Change::Worse);
}

TEST_CASE("three earlier readings give a slope of their own")
{
    Wear wear;
    for (const auto &[date, mm] :
         {std::pair{"2022-01-01", 9.0}, {"2023-01-01", 8.6}, {"2024-01-01", 8.2}, {"2025-01-01", 7.8}})
        wear.read(date, mm);
    wear.read("2026-01-01", 7.4);
    ReadingChange c = wear.last();
    CHECK(c.expectedFrom == "slope_days");
    CHECK(c.expected.value() == Approx(-0.4e-3).epsilon(0.01));
    // the slope is not surer than its readings: 0.25 mm / sqrt(2) years, times one year
    CHECK(c.expectedUncertainty == Approx(0.25e-3 / std::sqrt(2.0)).epsilon(0.01));
    CHECK(c.expectedZ == Approx(0.0).epsilon(0.01));
    CHECK_FALSE(c.faster);
    wear.read("2027-01-01", 5.8); // 1.6 mm in a year where 0.4 were usual
    c = wear.last();
    CHECK(c.faster);
    CHECK(c.expectedZ < -1.645);
}

TEST_CASE("what wears by distance is expected by distance where trips are logged")
{
    // tread of the product's catalogue; four years of 5,000 km at 0.4 mm, then one of 20,000 km
    Story story;
    std::vector<Id> walks;
    const auto read = [&](const std::string &date, double mm) {
        walks.push_back(story.walk(at(date), "full_round", {"tread-depth"}));
        story.mark(walks.back(), "tread-depth", MarkState::Pass, at(date)).readings = {
            {"tread-depth", "wheel 1L", Dimension::Length, mm * 1e-3, "mm"}};
    };
    for (int year = 0; year < 5; ++year) {
        read(std::to_string(2021 + year) + "-01-01", 9.0 - 0.4 * year);
        const std::string june = std::to_string(2021 + year) + "-06-01";
        story.trip(at(june), at(june, 600), kilometres(year == 4 ? 20'000 : 5000));
    }
    read("2026-01-01", 5.8);
    const Comparison c = compareWalks(realCatalogue(), story.history(), walks[4], walks[5]);
    const ReadingChange r = c.points.at(0).readings.at(0);
    CHECK(r.expectedFrom == "slope_distance");
    CHECK(r.expected.value() == Approx(-1.6e-3).epsilon(0.01));
    CHECK(r.changed);
    CHECK_FALSE(r.faster);
}

TEST_CASE("replaced in between: told, nothing expected; grown back without one: asked")
{
    Wear wear;
    wear.read("2025-01-01", 3.0);
    wear.read("2026-01-01", 9.0);
    CHECK(wear.last().ask);
    CHECK_FALSE(wear.last().replaced);
    CHECK_FALSE(wear.last().expected);
    wear.story.mend(at("2025-06-01"), "replace", {}, {"tread"});
    CHECK_FALSE(wear.last().ask);
    CHECK(wear.last().replaced);
    CHECK_FALSE(wear.last().expected);
    // readings of the old one say nothing of the new one
    wear.read("2027-01-01", 8.8);
    CHECK(wear.last().expectedFrom == "interval_days");
}

TEST_CASE("another observer or tool doubles the doubt, once, and is told")
{
    Wear wear;
    wear.read("2025-01-01", 6.0);
    wear.by = "Bo";
    wear.read("2026-01-01", 5.0);
    CHECK(wear.last().doubled == std::vector<std::string>{"observer"});
    CHECK(wear.last().uncertainty == Approx(2 * 0.25e-3 * std::sqrt(2.0)));
    CHECK_FALSE(wear.last().changed); // 1.0 mm is beyond 0.69 but not beyond 1.39
    wear.tool = "dial gauge";
    wear.by = "Ada";
    wear.read("2027-01-01", 4.0);
    CHECK(wear.last().doubled == std::vector<std::string>{"observer", "tool"});
    CHECK(wear.last().uncertainty == Approx(2 * 0.25e-3 * std::sqrt(2.0)));
    wear.by.clear(); // nobody knows who: not another
    wear.read("2028-01-01", 3.0);
    CHECK(wear.last().doubled.empty());
}

TEST_CASE("from ten readings on a change has to stand among all")
{
    const auto compared = [](int readings) {
        Story story;
        const Id then = story.walk(at("2025-01-01"), "full_round", {"tread"});
        const Id now = story.walk(at("2026-01-01"), "full_round", {"tread"});
        for (const Id &walk : {then, now}) {
            Mark &mark =
                story.mark(walk, "tread", MarkState::Pass, at(walk == then ? "2025-01-01" : "2026-01-01"));
            for (int i = 0; i < readings; ++i) {
                // the first differs by z = 2.1 (p = 0.036), all others not at all
                const double mm = i == 0 && walk == now ? 6.0 - 2.1 * 0.353553 : 6.0;
                mark.readings.push_back(
                    {"tread-depth", "place " + std::to_string(i), Dimension::Length, mm * 1e-3, "mm"});
            }
        }
        return compareWalks(smallCatalogue(), story.history(), then, now);
    };
    CHECK(compared(9).rates.readingsChanged == 1);
    CHECK(compared(9).rates.readingsStand == 1);
    CHECK(compared(10).rates.readings == 10);
    CHECK(compared(10).rates.readingsChanged == 1);
    CHECK(compared(10).rates.readingsStand == 0); // 0.036 > 0.10 / 10
}

TEST_CASE("pairs of marks for the rig as a whole; what was carried is none")
{
    Story story;
    const Id then = story.walk(at("2025-01-01"), "full_round", {"seam", "latch", "grease", "frost"});
    const Id now = story.walk(at("2026-01-01"), "full_round", {"seam", "latch", "grease", "frost"});
    const Id before = story.walk(at("2024-01-01"), "full_round", {"frost"});
    story.mark(then, "seam", MarkState::Pass, at("2025-01-01"));
    story.mark(now, "seam", MarkState::Attention, at("2026-01-01"));
    story.mark(then, "latch", MarkState::Attention, at("2025-01-01"));
    story.mark(now, "latch", MarkState::Pass, at("2026-01-01"));
    story.mark(then, "grease", MarkState::Pass, at("2025-01-01"));
    story.mark(now, "grease", MarkState::Attention, at("2026-01-01"));
    story.mark(before, "frost", MarkState::Pass, at("2024-01-01"));
    story.mark(now, "frost", MarkState::Attention, at("2026-01-01"));
    const PairedRates rates = compareWalks(smallCatalogue(), story.history(), then, now).rates;
    CHECK(rates.worse == 2);
    CHECK(rates.better == 1);
    CHECK(rates.mcnemarP == Approx(1.0));
    CHECK(rates.chanceUp > 0.5);
}
