// SPDX-License-Identifier: Apache-2.0
// The order of the due list, and that the order of the history does not matter.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "due/band.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("past due comes first, the worst consequence before the oldest date")
{
    Story story;
    const Id early = story.walk(at("2025-01-01"));
    story.mark(early, "latch", MarkState::Pass, at("2025-01-01")); // III, due July 2025
    story.mark(early, "frame", MarkState::Pass, at("2025-06-01")); // I, due December 2025
    story.mark(early, "seam", MarkState::Pass, at("2025-06-01"));  // II, due September 2025
    story.mark(early, "nut", MarkState::Pass, at("2026-01-15"));   // I, due April 2026
    const auto bands = dueBands(smallCatalogue(), story.history(), at("2026-02-01"));
    std::vector<std::string> order;
    for (const DueBand &band : bands)
        order.push_back(band.point);
    // then what was never looked at, by severity and slug; then later dates; at last no date
    CHECK(order == std::vector<std::string>{"frame", "seam", "latch", "tread", "frost", "grease", "road",
                                            "zero", "shine", "nut", "lap"});
}

TEST_CASE("shuffled histories give the same bands")
{
    Story story;
    for (int month = 1; month <= 9; ++month) {
        const std::string date = "2025-0" + std::to_string(month) + "-11";
        const Id walk = story.walk(at(date));
        story.mark(walk, "grease", MarkState::Pass, at(date));
        story.mark(walk, "road", MarkState::Attention, at(date, month));
        story.trip(at(date, 60), at(date, 60 * 30), kilometres(100.0 + 37.3 * month));
        story.happening(at(date, 70), month % 2 == 0 ? "wheel_fitted" : "hail");
        story.mend(at(date, 80), month % 3 == 0 ? "reseal" : "replace", {}, {"seam", "road"});
    }
    RigHistory history = story.history();
    const auto once = dueBands(smallCatalogue(), history, at("2026-11-01"));
    std::mt19937 rng(20261124);
    for (int i = 0; i < 50; ++i) {
        std::shuffle(history.walks.begin(), history.walks.end(), rng);
        std::shuffle(history.trips.begin(), history.trips.end(), rng);
        std::shuffle(history.mends.begin(), history.mends.end(), rng);
        std::shuffle(history.happenings.begin(), history.happenings.end(), rng);
        for (WalkRecord &record : history.walks)
            std::shuffle(record.marks.begin(), record.marks.end(), rng);
        const auto again = dueBands(smallCatalogue(), history, at("2026-11-01"));
        REQUIRE(again.size() == once.size());
        for (std::size_t k = 0; k < once.size(); ++k) {
            CHECK(again[k].point == once[k].point);
            CHECK(again[k].early == once[k].early);
            CHECK(again[k].likely == once[k].likely);
            CHECK(again[k].late == once[k].late);
            CHECK(again[k].reasons == once[k].reasons);
        }
    }
}
