// SPDX-License-Identifier: Apache-2.0
// Points that last alike learn from each other, by half, and only as far as their own passes allow.
#include <doctest/doctest.h>

#include "due/life/life_posterior.hpp"
#include "due/rules.hpp"
#include "due/shift.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using doctest::Approx;

namespace {

const char *const beads[] = {"front-cap-seam", "rear-cap-seam", "roof-cable-glands"};

Story newRoof()
{
    Story story;
    story.rig().fittings = {"roof_ac"};
    for (const char *point : beads)
        story.mend(at("2024-01-01"), "replace", {}, {point});
    story.mend(at("2024-01-01"), "replace", {}, {"roof-chalk"});
    return story;
}

DueBand bandOf(const Story &story, std::string_view point, LocalTime now)
{
    const auto bands = dueBands(realCatalogue(), story.history(), now);
    const DueBand *band = findBand(bands, point);
    REQUIRE(band != nullptr);
    return *band;
}

double historyPart(const Story &story, std::string_view point, LocalTime now)
{
    const auto shift = shiftOf(realCatalogue(), story.history(), now, bandOf(story, point, now));
    REQUIRE(shift);
    double part = 0.0;
    double sum = 0.0;
    for (const ShiftPart &p : shift->parts) {
        sum += p.days;
        part += p.cause == "history" ? p.days : 0.0;
    }
    CHECK(sum == Approx(static_cast<double>(daysBetween(shift->nominal, shift->likely))).epsilon(1e-9));
    return part;
}

double medianOf(const RuleAges &ages)
{
    double low = 0.0;
    double high = 50.0;
    for (int i = 0; i < 100; ++i)
        (ages.firedBy((low + high) / 2.0) < 0.5 ? low : high) = (low + high) / 2.0;
    return high;
}

} // namespace

TEST_CASE("a bead found cracked draws the dates of its like in, by what the decomposition calls history")
{
    const LocalTime now = at("2024-02-10");
    Story alone = newRoof();
    Story cracked = newRoof();
    cracked.mark(cracked.walk(at("2024-02-01")), "front-cap-seam", MarkState::Attention, at("2024-02-01"));
    for (const char *point : {"rear-cap-seam", "roof-cable-glands"}) {
        CAPTURE(point);
        const DueBand before = bandOf(alone, point, now);
        const DueBand after = bandOf(cracked, point, now);
        CHECK(*after.early < *before.early);
        CHECK(*after.likely < *before.likely);
        CHECK(*after.late <= *before.late); // cut off at half an interval more, both
        CHECK(after.basis == "fitted");
        CHECK(historyPart(alone, point, now) == Approx(0.0));
        CHECK(historyPart(cracked, point, now) ==
              Approx(static_cast<double>(daysBetween(*before.likely, *after.likely))).epsilon(0.1));
    }
    CHECK(bandOf(cracked, "roof-chalk", now).likely == bandOf(alone, "roof-chalk", now).likely);
}

TEST_CASE("what a like point passed moves no likely or late day beyond that of one just made new")
{
    const LocalTime now = at("2025-06-01");
    Story alone = newRoof();
    alone.mark(alone.walk(at("2025-05-01")), "rear-cap-seam", MarkState::Pass, at("2025-05-01"));
    Story passed = alone;
    for (const char *day : {"2024-04-01", "2024-07-01", "2024-10-01", "2025-01-01", "2025-04-01"})
        passed.mark(passed.walk(at(day)), "front-cap-seam", MarkState::Pass, at(day));
    Story fresh = newRoof();
    fresh.mend(at("2025-05-01"), "replace", {}, {"rear-cap-seam"});
    const DueBand before = bandOf(alone, "rear-cap-seam", now);
    const DueBand after = bandOf(passed, "rear-cap-seam", now);
    const DueBand most = bandOf(fresh, "rear-cap-seam", now);
    CHECK(*before.early <= *after.early); // but an early failure is less likely
    CHECK(*after.likely <= *most.likely);
    CHECK(*after.late <= *most.late);
}

TEST_CASE("a like point counts half a life of its own: the same as a power prior on a finer grid")
{
    // [IBRAHIM-CHEN-2000]: the likelihood of other data to the power 0.5
    const LookAtAge pass{0.25, 0.85};
    const LookAtAge found{0.7, 0.85};
    IntervalLives other;
    other.started = true;
    other.earlier = {{0.0, true, {pass}, found}};
    other.now.known = true;
    other.found = true;
    LikeLives like;
    like.add(likeLives(other, Severity::II, Failing::Wear), 0.5);
    IntervalLives own;
    own.started = true;
    own.now.known = true;
    const double pooled = medianOf(seenAges(own, Severity::II, Failing::Wear, like));

    const double p = failedAtInterval(Severity::II);
    const LifeCells cells({p, 0.6, 1.5, 0.35}, {401, 61, 4.5});
    LifePosterior posterior(cells, 1.0);
    posterior.add({{{&pass, 1}, 0.0}, found}, 0.5);
    posterior.settle();
    std::vector<double> ages(cells.size().cells());
    posterior.agesWhenPresent(p, ages);
    std::vector<std::pair<double, double>> scratch;
    double median = 0.0;
    weightedQuantiles(ages, posterior.weights(), std::array{0.5}, {&median, 1}, scratch);
    CHECK(pooled == Approx(median).epsilon(5e-3));
    CHECK(pooled < 0.9);
    CHECK(pooled > medianOf(seenAges(other, Severity::II, Failing::Wear)));
}

TEST_CASE("the classes of the catalogue are of points that are told by months or distance")
{
    int members = 0;
    for (const auto &[name, slugs] : realCatalogue().likes()) {
        for (const std::string &slug : slugs) {
            CAPTURE(slug);
            const Point *point = realCatalogue().find(slug);
            REQUIRE(point != nullptr);
            CHECK((point->interval.months || point->interval.distance));
            ++members;
        }
    }
    CHECK(members == 16);
}
