// SPDX-License-Identifier: Apache-2.0
// A worn tread is due where its line meets the limit, by dates or by the distance to come.
#include <doctest/doctest.h>

#include "due/band.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// 1.4 mm in two months and 5,000 km each: 1.6 mm over the limit are left on 1 May.
Story wornTread()
{
    Story story;
    story.rig().kind = RigKind::TravelTrailer;
    double depth = 6.0;
    for (const char *day : {"2026-01-01", "2026-03-02", "2026-05-01"}) {
        const Id walk = story.walk(at(day));
        story.mark(walk, "tread-depth", MarkState::Pass, at(day)).readings = {
            {"tread-depth", "wheel 1L", Dimension::Length, 1e-3 * depth, "mm"}};
        depth -= 1.4;
    }
    story.trip(at("2026-01-10"), at("2026-01-12"), kilometres(5'000));
    story.trip(at("2026-03-10"), at("2026-03-12"), kilometres(5'000));
    return story;
}

Ahead planOf(int days, Distance distance)
{
    Ahead plan;
    plan.from = parseDate("2026-05-01").value();
    plan.days.resize(static_cast<std::size_t>(days));
    plan.drives = {{plan.from, addDays(plan.from, days - 1), distance, distance, 1.0}};
    return plan;
}

DueBand tread(const Ahead &ahead = {})
{
    const auto bands = dueBands(realCatalogue(), wornTread().history(), at("2026-05-01", 1), ahead);
    const DueBand *band = findBand(bands, "tread-depth");
    REQUIRE(band != nullptr);
    return *band;
}

} // namespace

TEST_CASE("planned distance wears a tread: the date is the day on which the line's distance is driven")
{
    // 1.4 mm each 5,000 km: 5,714 km until the last 1.6 mm are gone, 29 days at 200 km each
    const DueBand planned = tread(planOf(60, kilometres(12'000)));
    CHECK(planned.rule == "reading:tread-depth");
    CHECK(planned.basis == "measured");
    CHECK(planned.likely == parseDate("2026-05-29"));
    CHECK(*planned.early <= *planned.likely);
    CHECK(*planned.likely <= *planned.late);
    CHECK(*planned.likely < *tread().likely);
}

TEST_CASE("a plan of more distance never moves it later, and one of none leaves the line by dates")
{
    CivilDate before = *tread(planOf(60, Distance())).likely;
    // 1.6 mm at 1.4 mm in 60 days: 69 days
    CHECK(before == parseDate("2026-07-09"));
    for (const double thousands : {2.0, 6.0, 12.0, 24.0, 48.0}) {
        const CivilDate now = *tread(planOf(60, kilometres(1'000 * thousands))).likely;
        CAPTURE(thousands);
        CHECK(now <= before);
        before = now;
    }
}
