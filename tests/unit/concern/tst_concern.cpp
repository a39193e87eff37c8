// SPDX-License-Identifier: Apache-2.0
// The number, the span ahead and the call of one finding.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "../due/story.hpp"
#include "concern/concern.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

struct Case {
    Story story;
    Id walk;
    Id finding;
};

Case found(const std::string &point, const std::string &defect, int grade)
{
    Case c;
    c.walk = c.story.walk(at("2026-01-01"));
    c.story.mark(c.walk, point, MarkState::Attention, at("2026-01-01"));
    c.finding = c.story.finding(c.walk, point, defect, grade, at("2026-01-01"));
    return c;
}

Concern concernAt(Case &c, LocalTime now)
{
    const RigHistory history = c.story.history();
    const auto bands = dueBands(smallCatalogue(), history, now);
    const auto f = std::find_if(history.findings.begin(), history.findings.end(),
                                [&](const FindingHistory &h) { return h.finding.id == c.finding; });
    REQUIRE(f != history.findings.end());
    const Point *point = smallCatalogue().find(f->finding.point);
    return concernOf(ConcernContext(smallCatalogue(), history, now), *point, *f,
                     findBand(bands, f->finding.point));
}

} // namespace

TEST_CASE("the number: a decade of risk is 25 points, kept within 0 to 100")
{
    CHECK(concernNumber(0.01) == doctest::Approx(0.0));
    CHECK(concernNumber(0.1) == doctest::Approx(25.0));
    CHECK(concernNumber(1.0) == doctest::Approx(50.0));
    CHECK(concernNumber(10.0) == doctest::Approx(75.0));
    CHECK(concernNumber(100.0) == doctest::Approx(100.0));
    CHECK(concernNumber(0.0) == 0.0);
    CHECK(concernNumber(1e-9) == 0.0);
    CHECK(concernNumber(1e9) == 100.0);
}

TEST_CASE("consequence: 100 on the hold list, else by the first letter")
{
    CHECK(consequenceOf(*smallCatalogue().find("lap")) == 100.0);
    CHECK(consequenceOf(*smallCatalogue().find("seam")) == 10.0);
    CHECK(consequenceOf(*smallCatalogue().find("latch")) == 1.0);
    CHECK(consequenceOf(*smallCatalogue().find("shine")) == 0.1);
}

TEST_CASE("a seam of grade 3, due in three months")
{
    Case c = found("seam", "gap", 3);
    const Concern concern = concernAt(c, at("2026-01-01"));
    const double months = 90.0 / (365.25 / 12.0); // 1 January to 1 April
    const double p = 1.0 - std::exp(-months / 6.0);
    CHECK(concern.monthsAhead == doctest::Approx(months));
    CHECK(concern.chance == doctest::Approx(p));
    CHECK(concern.risk == doctest::Approx(10.0 * p));
    CHECK(concern.number == doctest::Approx(25.0 * (std::log10(10.0 * p) + 2.0)));
    CHECK(concern.call == Call::MendSoon);
    CHECK(concern.low < concern.number);
    CHECK(concern.high > concern.number);
    CHECK(concern.forbids.empty());
}

TEST_CASE("waiting never lowers it, and a year is the most")
{
    Case c = found("seam", "gap", 2);
    double before = 0.0;
    for (const char *date : {"2026-01-01", "2026-03-01", "2026-04-15", "2026-08-01", "2028-01-01"}) {
        const Concern concern = concernAt(c, at(date));
        CHECK(concern.number >= before);
        CHECK(concern.monthsAhead <= 12.0);
        before = concern.number;
    }
    CHECK(concernAt(c, at("2028-01-01")).monthsAhead == 12.0);
}

TEST_CASE("points of each move look one trip ahead: three days, or the median of the log")
{
    Case c = found("lap", "bent", 2);
    CHECK(concernAt(c, at("2026-02-01")).monthsAhead == doctest::Approx(3.0 / 30.4375));
    c.story.trip(at("2026-01-02"), at("2026-01-03"), kilometres(10));
    c.story.trip(at("2026-01-05"), at("2026-01-12"), kilometres(10));
    c.story.trip(at("2026-01-13"), at("2026-01-15"), kilometres(10));
    CHECK(tripDays(c.story.history(), at("2026-02-01")) == doctest::Approx(2.0));
    CHECK(concernAt(c, at("2026-02-01")).monthsAhead == doctest::Approx(2.0 / 30.4375));
}

TEST_CASE("watch below 50, looks and comfort never more")
{
    Case c = found("shine", "other", 5);
    const Concern concern = concernAt(c, at("2026-01-01"));
    CHECK(concern.number == doctest::Approx(25.0)); // certain, but 0.1 of harm
    CHECK(concern.call == Call::Watch);
}

TEST_CASE("the matrix floor: a hold-list point with one chance in a hundred is at least mend soon")
{
    Case c = found("frame", "bent", 1); // six months ahead of 24: p about 0.22
    CHECK(concernAt(c, at("2026-01-01")).call == Call::MendSoon);
    Case lap = found("lap", "bent", 1); // three days of 24 months: p about 0.004
    CHECK(concernAt(lap, at("2026-01-01")).chance < 0.01);
    CHECK(concernAt(lap, at("2026-01-01")).call == Call::Watch);
}

TEST_CASE("a number alone never holds; grade 5 holds only on the hold list")
{
    Case seam = found("seam", "gap", 5);
    CHECK(concernAt(seam, at("2026-01-01")).number == doctest::Approx(75.0).epsilon(0.001));
    CHECK(concernAt(seam, at("2026-01-01")).call == Call::MendSoon);
    Case four = found("frame", "bent", 4);
    CHECK(concernAt(four, at("2026-01-01")).number > 99.0);
    CHECK(concernAt(four, at("2026-01-01")).call == Call::MendSoon);
    Case five = found("frame", "bent", 5);
    CHECK(concernAt(five, at("2026-01-01")).call == Call::Hold);
    CHECK(concernAt(five, at("2026-01-01")).forbids == "move");
    CHECK(concernAt(five, at("2026-01-01")).holds.front().rule == "grade_5");
}

TEST_CASE("mended: watched at no more than before, until a pass confirms it")
{
    for (const char *point : {"frame", "seam", "lap", "shine"}) {
        for (int grade = 1; grade <= 5; ++grade) {
            Case c = found(point, "bent", grade);
            const double before = concernAt(c, at("2026-01-05")).number;
            c.story.mend(at("2026-01-06"), "replace", {c.finding});
            const Concern mended = concernAt(c, at("2026-01-07"));
            CAPTURE(point);
            CAPTURE(grade);
            CHECK(mended.number <= before);
            CHECK(mended.call == Call::Watch);
            CHECK(mended.waitsForConfirm);
            CHECK(mended.why.back().slug == "confirm_pending");
            c.story.mark(c.story.walk(at("2026-01-08")), point, MarkState::Pass, at("2026-01-08"));
            CHECK(concernAt(c, at("2026-01-09")).call == Call::None);
        }
    }
}

TEST_CASE("gone is none; a pass on the point alone leaves it open")
{
    Case c = found("seam", "gap", 3);
    const Id second = c.story.walk(at("2026-02-01"));
    c.story.mark(second, "seam", MarkState::Pass, at("2026-02-01"));
    CHECK(concernAt(c, at("2026-02-02")).call == Call::MendSoon);
    c.story.look(c.finding, second, 0, at("2026-02-01", 1));
    const Concern gone = concernAt(c, at("2026-02-02"));
    CHECK(gone.call == Call::None);
    CHECK(gone.number == 0.0);
}

TEST_CASE("the last look decides, and not one of the future")
{
    Case c = found("seam", "gap", 2);
    c.story.look(c.finding, c.walk, 4, at("2026-06-01"));
    CHECK(concernAt(c, at("2026-02-01")).grade == 2);
    CHECK(concernAt(c, at("2026-06-02")).grade == 4);
}

TEST_CASE("why names consequence, grade, span and chance")
{
    Case c = found("seam", "gap", 3);
    std::vector<std::string> slugs;
    for (const Reason &reason : concernAt(c, at("2026-01-01")).why)
        slugs.push_back(reason.slug);
    CHECK(slugs == std::vector<std::string>{"consequence", "grade", "months_ahead", "chance"});
}
