// SPDX-License-Identifier: Apache-2.0
// Lives in intervals, the age at which a rule fires, and the day that makes.
#include <doctest/doctest.h>

#include <cmath>

#include "due/rule/life_rule.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using doctest::Approx;

namespace {

double day(std::string_view text) { return dayNumber(parseDate(text).value()); }

// Intervals are years of 365 days.
double years(LocalTime from, LocalTime to)
{
    return static_cast<double>(daysBetween(civilDate(from), civilDate(to))) / 365.0;
}

IntervalLives livesOf(const Story &story, std::string_view point)
{
    const RigHistory history = story.history();
    const HistoryIndex index(history, at("2030-01-01"));
    return intervalLivesOf(index.of(point), years);
}

double medianOf(const RuleAges &ages)
{
    double low = 0.0;
    double high = 50.0;
    for (int i = 0; i < 100; ++i)
        (ages.firedBy((low + high) / 2.0) < 0.5 ? low : high) = (low + high) / 2.0;
    return high;
}

struct Asked {
    explicit Asked(const Story &story, LocalTime now)
        : history(story.history()), index(history, now), lines(history, forecastUsage(history, now), now)
    {}
    std::optional<double> day(std::string_view point, double p)
    {
        const auto rule = LifeRule::make(lines, *smallCatalogue().find(point), index.of(point));
        return rule ? rule->dayBy(p) : std::nullopt;
    }
    RigHistory history;
    HistoryIndex index;
    DueLines lines;
};

} // namespace

TEST_CASE("looks and mends make lives")
{
    Story story;
    story.mark(story.walk(at("2025-01-01")), "latch", MarkState::Pass, at("2025-01-01"));
    story.mark(story.walk(at("2026-01-01")), "latch", MarkState::Pass, at("2026-01-01"));
    IntervalLives lives = livesOf(story, "latch");
    CHECK(lives.started);
    CHECK_FALSE(lives.now.known);
    CHECK(lives.age == 1.0);
    CHECK(lives.fullPasses == 1);
    story.mark(story.walk(at("2027-01-01")), "latch", MarkState::Attention, at("2027-01-01"));
    story.mend(at("2027-01-02"), "replace", {}, {"latch"});
    lives = livesOf(story, "latch");
    REQUIRE(lives.earlier.size() == 1);
    CHECK(lives.earlier.front().found->age == 2.0);
    CHECK(lives.now.known);
    CHECK(lives.age == 0.0);
    CHECK(lives.fullPasses == 0);
    story.mend(at("2028-01-02"), "retorque", {}, {"latch"}); // half of a year's age, as [KIJIMA-1989]
    CHECK(livesOf(story, "latch").now.born == Approx(0.5));
}

TEST_CASE("a life that nobody has seen lasts one interval in the middle")
{
    CHECK(medianOf(unseenAges()) == Approx(1.0).epsilon(1e-12));
    CHECK(unseenAges().firedBy(std::exp(0.6 * 1.2815515655)) == Approx(0.9).epsilon(2e-3));
}

TEST_CASE("a certain pass of a part of unknown age gives it a whole interval again")
{
    // shape 1 forgets: S(age) = (1 - p*) S(last), so age = last + one interval, in every cell
    IntervalLives lives;
    lives.started = true;
    lives.age = 1.0;
    lives.now.passes = {{1.0, 1.0}};
    const double median = medianOf(seenAges(lives, Severity::III, Failing::Wear));
    CHECK(median > 2.0); // and having passed makes long lives likelier
    CHECK(median < 2.2);
}

TEST_CASE("a part that is seen to age from new has less left after each interval")
{
    IntervalLives lives;
    lives.started = true;
    lives.now.known = true;
    lives.age = 1.0;
    lives.now.passes = {{1.0, 1.0}};
    CHECK(medianOf(seenAges(lives, Severity::I, Failing::Wear)) - 1.0 < 0.8);
}

TEST_CASE("a finding shortens, many passes lengthen")
{
    IntervalLives early;
    early.started = true;
    early.earlier = {{0.0, false, {}, LookAtAge{0.5, 0.85}}};
    CHECK(medianOf(seenAges(early, Severity::III, Failing::Wear)) < 0.8);
    IntervalLives many;
    many.started = true;
    for (int i = 1; i <= 12; ++i)
        many.now.passes.push_back({1.0 * i, 0.98});
    many.age = 12.0;
    CHECK(medianOf(seenAges(many, Severity::IV, Failing::Wear)) - many.age > 1.3);
}

TEST_CASE("the likely day of a part just made new is the catalogue's, to the day")
{
    Story story;
    story.mend(at("2026-01-31"), "replace", {}, {"shine"}); // a month: 28 February
    CHECK(Asked(story, at("2026-02-01")).day("shine", 0.5).value() ==
          Approx(day("2026-02-28")).epsilon(1e-11));
    const double early = Asked(story, at("2026-02-01")).day("shine", 0.1).value() - day("2026-01-31");
    CHECK(early == Approx(28.0 * std::exp(-0.6 * 1.2815515655)).epsilon(5e-3));
}

TEST_CASE("what was seen lengthens only after three whole intervals")
{
    Story story;
    for (const char *date : {"2024-01-01", "2024-07-01", "2025-01-01"})
        story.mark(story.walk(at(date)), "latch", MarkState::Pass, at(date)).how = LookedHow::Measured;
    CHECK(Asked(story, at("2025-02-01")).day("latch", 0.5).value() <= day("2025-07-01") + 1e-6);
    story.mark(story.walk(at("2025-07-01")), "latch", MarkState::Pass, at("2025-07-01")).how =
        LookedHow::Measured;
    CHECK(Asked(story, at("2025-08-01")).day("latch", 0.5).value() > day("2026-01-01") + 1.0);
}

TEST_CASE("nothing is asked of what was never seen, or has no interval")
{
    CHECK_FALSE(Asked(Story(), at("2026-01-01")).day("latch", 0.5));
    Story story;
    story.mark(story.walk(at("2026-01-01")), "lap", MarkState::Pass, at("2026-01-01"));
    CHECK_FALSE(Asked(story, at("2026-01-02")).day("lap", 0.5));
}
