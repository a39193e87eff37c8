// SPDX-License-Identifier: Apache-2.0
// Happenings make points due at once; the ladder after a wheel was fitted stays open until done.
#include <algorithm>
#include <map>
#include <set>

#include <doctest/doctest.h>

#include "due/band.hpp"
#include "due/usage.hpp"
#include "every_rig.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

DueBand bandOf(const Story &story, std::string_view point, LocalTime now)
{
    const auto bands = dueBands(smallCatalogue(), story.history(), now);
    const DueBand *band = findBand(bands, point);
    REQUIRE(band != nullptr);
    return *band;
}

bool lists(const std::vector<std::string> &list, const std::string &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

} // namespace

TEST_CASE("an event after the last look is due at once, and ends with a look")
{
    Story story;
    story.mark(story.walk(at("2026-01-01")), "seam", MarkState::Pass, at("2026-01-01"));
    story.happening(at("2026-01-20"), "hail");
    DueBand band = bandOf(story, "seam", at("2026-01-25"));
    CHECK(band.rule == "event:hail");
    CHECK(band.early == parseDate("2026-01-20"));
    CHECK(band.pastDue);
    story.mend(at("2026-01-24"), "clean", {}, {"seam"}); // cleaning is no look
    CHECK(bandOf(story, "seam", at("2026-01-25")).rule == "event:hail");
    story.mark(story.walk(at("2026-01-26")), "seam", MarkState::Attention, at("2026-01-26"));
    CHECK(bandOf(story, "seam", at("2026-01-27")).rule == "months");
}

TEST_CASE("an event before the last look, in the future, or of other points changes nothing")
{
    Story story;
    story.happening(at("2025-12-31"), "hail");
    story.happening(at("2026-03-01"), "hail");
    story.happening(at("2026-01-10"), "flood");
    story.mark(story.walk(at("2026-01-01")), "seam", MarkState::Pass, at("2026-01-01"));
    CHECK(bandOf(story, "seam", at("2026-01-25")).rule == "months");
}

TEST_CASE("the wheel ladder asks at 10, 25 and 50 to 100 miles, and closes after the last")
{
    Story story;
    story.mark(story.walk(at("2026-01-01")), "nut", MarkState::Pass, at("2026-01-01"));
    story.happening(at("2026-01-02"), "wheel_fitted");
    DueBand band = bandOf(story, "nut", at("2026-01-02", 1));
    CHECK(band.rule == "event:wheel_fitted");
    CHECK(band.atDistance->si() == doctest::Approx(miles(10).si()));
    CHECK_FALSE(band.pastDue);

    story.trip(at("2026-01-03"), at("2026-01-03", 60), miles(30));
    band = bandOf(story, "nut", at("2026-01-05"));
    CHECK(band.atDistance->si() == doctest::Approx(-miles(20).si()));
    CHECK(band.dueNow);
    CHECK(band.pastDue); // a look at 10 mi is late from 25 mi on

    story.mark(story.walk(at("2026-01-06")), "nut", MarkState::Pass, at("2026-01-06"));
    band = bandOf(story, "nut", at("2026-01-07")); // one look at 30 mi does for 10 and 25
    CHECK(band.rule == "event:wheel_fitted");
    CHECK(band.atDistance->si() == doctest::Approx(miles(20).si()));
    CHECK_FALSE(band.pastDue);

    story.trip(at("2026-01-08"), at("2026-01-08", 60), miles(40));
    CHECK(bandOf(story, "nut", at("2026-01-09")).dueNow);
    CHECK_FALSE(bandOf(story, "nut", at("2026-01-09")).pastDue); // 70 mi: within 50 to 100
    story.mend(at("2026-01-10"), "retorque", {}, {"nut"});
    CHECK(bandOf(story, "nut", at("2026-01-11")).rule == "months");
}

TEST_CASE("a wheel just fitted is due by the miles driven, not today, with nuts that nobody looked at before")
{
    Story story;
    story.happening(at("2026-01-02"), "wheel_fitted");
    const DueBand band = bandOf(story, "nut", at("2026-01-02", 1));
    CHECK(band.rule == "event:wheel_fitted");
    CHECK_FALSE(band.dueNow);
    CHECK(band.early == parseDate("2026-01-03")); // ten miles are driven in a day, by the usual year
    story.trip(at("2026-01-02", 60), at("2026-01-02", 120), miles(11));
    CHECK(bandOf(story, "nut", at("2026-01-02", 180)).dueNow);
}

TEST_CASE("past 100 miles without a look the ladder is past due")
{
    Story story;
    story.happening(at("2026-01-02"), "wheel_fitted");
    story.trip(at("2026-01-03"), at("2026-01-03", 120), miles(55));
    story.mark(story.walk(at("2026-01-02", 5)), "nut", MarkState::Pass, at("2026-01-02", 5));
    story.trip(at("2026-01-04"), at("2026-01-04", 120), miles(50));
    const DueBand band = bandOf(story, "nut", at("2026-01-06"));
    CHECK(band.pastDue);
    CHECK(band.rule == "event:wheel_fitted");
}

TEST_CASE("every event of the product's catalogue makes its points due at once, and no others")
{
    const Catalogue &catalogue = realCatalogue();
    std::map<std::string, std::set<std::string>> asked;
    for (const Rig &rig : everyRig()) {
        Story passed;
        passed.rig() = rig;
        const Id walk = passed.walk(at("2026-01-01"));
        for (const Point &point : catalogue.points())
            passed.mark(walk, point.slug, MarkState::Pass, at("2026-01-01"));
        const auto quiet = dueBands(catalogue, passed.history(), at("2026-01-04"));
        for (const auto &[slug, points] : catalogue.events()) {
            const std::string &event = slug;
            Story story = passed;
            story.happening(at("2026-01-03"), event);
            for (const DueBand &band : dueBands(catalogue, story.history(), at("2026-01-04"))) {
                CAPTURE(event);
                CAPTURE(band.point);
                if (!lists(points, band.point) && !lists(catalogue.find(band.point)->interval.uses, event)) {
                    const DueBand *same = findBand(quiet, band.point);
                    REQUIRE(same != nullptr);
                    CHECK(band.rule == same->rule);
                    CHECK(band.likely == same->likely);
                    continue;
                }
                asked[event].insert(band.point);
                CHECK(band.rule == "event:" + event);
                // a wheel just fitted asks for a look after so many miles, all else for one now
                if (event == "wheel_fitted")
                    CHECK(band.atDistance->si() == doctest::Approx(miles(10).si()));
                else
                    CHECK(band.early == parseDate("2026-01-03"));
            }
        }
    }
    for (const auto &[slug, points] : catalogue.events()) {
        const std::string &event = slug;
        for (const std::string &point : points) {
            CAPTURE(event);
            CAPTURE(point);
            CHECK(asked[event].count(point) == 1); // some rig has it
        }
    }
    CHECK(catalogue.events().size() > 20);
}
