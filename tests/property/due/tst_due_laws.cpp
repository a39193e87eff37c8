// SPDX-License-Identifier: Apache-2.0
// Laws that hold for every history: order, limits, what exposure and looks may do, parts that add up.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "../random_story.hpp"
#include "due/rules.hpp"
#include "due/shift.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using doctest::Approx;

namespace {

constexpr int histories = 400;

// The small catalogue again, its points aged by weather and road.
const Catalogue &agingCatalogue()
{
    static const Catalogue catalogue = [] {
        std::string points = R"({"zone":"test","points":[)";
        const auto add = [&](const std::string &slug, const std::string &consequence,
                             const std::string &rest) {
            points += (points.back() == '[' ? "" : ",") + std::string(R"({"slug":")") + slug +
                      R"(","stand":"nose","consequence":[")" + consequence +
                      R"("],"source":{"tag":"CP","keys":["CP"]},)" + rest + "}";
        };
        add("seam", "W", R"("interval":{"months":3},"drivers":["sun","frost","wetness"])");
        add("grease", "T", R"("interval":{"months":12,"miles":6000},"drivers":["distance","wetness"])");
        add("shine", "K", R"("interval":{"months":1},"drivers":["sun"])");
        add("latch", "C", R"("interval":{"months":6},"drivers":["vibration","salt"])");
        add("nut", "T", R"("hold":3,"forbids":"move","interval":{"months":3},"drivers":["vibration"])");
        add("frame", "T", R"("hold":8,"forbids":"move","interval":{"months":6},"drivers":["salt"])");
        add("road", "W", R"("interval":{"miles":1000},"drivers":["distance","vibration"])");
        points += "]}";
        const std::string sets =
            R"({"kinds":[{"slug":"full_round","all":true}],"sets":{},"routes":{"lap":["nose"]},"events":{}})";
        return Catalogue::load({points}, sets, "{}", R"({"rules":[]})").value();
    }();
    return catalogue;
}

Weathering randomWeather(std::mt19937 &rng, CivilDate from, int days)
{
    std::lognormal_distribution<double> rate(0.0, 0.7);
    Weathering weather;
    weather.first = from;
    const auto rates = [&] {
        DayRates day;
        for (RateRange &r : day.rate) {
            r.value = rate(rng);
            r.low = r.value * 0.8;
            r.high = r.value * 1.3;
        }
        return day;
    };
    for (int i = 0; i < days; ++i)
        weather.days.push_back(i % 30 == 0 ? rates() : weather.days.back());
    for (DayRates &month : weather.usual)
        month = rates();
    return weather;
}

struct Random {
    explicit Random(unsigned seed) : story(seed), history(story.history())
    {
        history.weathering = randomWeather(story.rng(), parseDate("2026-01-01").value(), 360);
        for (Trip &trip : history.trips)
            trip.road = static_cast<RoadClass>(story.below(6));
        now = story.end();
    }
    [[nodiscard]] std::vector<DueBand> bands(const Ahead &ahead = {}) const
    {
        return dueBands(agingCatalogue(), history, now, ahead);
    }
    RandomStory story;
    RigHistory history;
    LocalTime now;
};

} // namespace

TEST_CASE(
    "early, likely and late come in that order, and no point of the road or of fire outlasts its interval")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        const Random r(seed);
        const auto clocks = clocksOf(r.history, r.now);
        for (const DueBand &band : r.bands()) {
            CAPTURE(seed);
            CAPTURE(band.point);
            REQUIRE(band.likely);
            CHECK(*band.early <= *band.likely);
            CHECK(*band.likely <= *band.late);
            const Point &point = *agingCatalogue().find(band.point);
            const auto clock = clocks.find(band.point);
            if (clock == clocks.end() || !clock->second.from || !point.interval.months)
                continue;
            const CivilDate start = civilDate(*clock->second.from);
            const CivilDate whole = addMonths(start, *point.interval.months);
            if (point.isRoadOrFire())
                CHECK(*band.late <= whole);
            else
                CHECK(daysBetween(start, *band.late) <= 1.5 * static_cast<double>(daysBetween(start, whole)));
        }
    }
}

TEST_CASE("a part made new gets the catalogue's interval at reference exposure, every point of the catalogue")
{
    int checked = 0;
    for (const Point &point : realCatalogue().points()) {
        Story story;
        const bool byMonths = point.interval.months.has_value();
        if (!byMonths && !point.interval.distance)
            continue;
        // Where both limits are set the months alone are asked: a rig that stands. Where only a distance is,
        // the median of a distance a year that is known within a factor of two.
        story.rig().yearly = byMonths ? Distance() : kilometres(10'000);
        story.mend(at("2026-01-31"), "replace", {}, {point.slug});
        const RigHistory history = story.history();
        DueContext context(realCatalogue(), history, at("2026-02-01"));
        const auto rule = [&] {
            PointClock clock = clocksOf(history, at("2026-02-01"))[point.slug];
            DueBand band;
            band.everyMove = false;
            for (const Firing &firing : firings(context, point, clock, band)) {
                if (firing.basis == "prior")
                    return std::optional(firing.likely);
            }
            return std::optional<CivilDate>();
        }();
        CAPTURE(point.slug);
        REQUIRE(rule);
        ++checked;
        if (byMonths) {
            CHECK(*rule == addMonths(parseDate("2026-01-31").value(), *point.interval.months));
        } else {
            const double days = *point.interval.distance / kilometres(10'000) * 365.25;
            CHECK(std::abs(static_cast<double>(daysBetween(parseDate("2026-02-01").value(), *rule)) - days) <=
                  1.5);
        }
    }
    CHECK(checked > 100);
}

TEST_CASE("more exposure ahead never moves a date later")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        Random r(seed);
        Ahead mild;
        mild.from = civilDate(r.now);
        const Weathering plan = randomWeather(r.story.rng(), mild.from, 90);
        mild.days = plan.days;
        mild.drives = {{mild.from, addDays(mild.from, 20), kilometres(500), kilometres(500), 1.0}};
        Ahead hard = mild;
        for (DayRates &day : hard.days) {
            for (RateRange &rate : day.rate) {
                const double more = 1.0 + 0.1 * r.story.below(20);
                rate = {rate.value * more, rate.low * more, rate.high * more};
            }
        }
        hard.drives.front().distance = kilometres(500 + 100 * r.story.below(30));
        hard.drives.front().equivalent = hard.drives.front().distance * (1.0 + r.story.below(4));
        hard.drives.front().consumption = 1.0 + 0.5 * r.story.below(3);
        const auto a = r.bands(mild);
        const auto b = r.bands(hard);
        for (const DueBand &band : a) {
            const DueBand *harder = findBand(b, band.point);
            CAPTURE(seed);
            CAPTURE(band.point);
            REQUIRE(harder != nullptr);
            CHECK(*harder->early <= *band.early);
            CHECK(*harder->likely <= *band.likely);
            CHECK(*harder->late <= *band.late);
        }
    }
}

TEST_CASE("the zone of the clock changes nothing")
{
    for (unsigned seed = 0; seed < 150; ++seed) {
        Random r(seed);
        const auto before = r.bands();
        RigHistory moved = r.history;
        const auto move = [](LocalTime &time) {
            time.instant -= std::chrono::hours(11);
            time.offset.minutes += 11 * 60;
        };
        for (WalkRecord &record : moved.walks) {
            move(record.walk.started);
            for (Mark &mark : record.marks)
                move(mark.at);
        }
        for (FindingHistory &f : moved.findings)
            move(f.finding.opened);
        for (Mend &mend : moved.mends)
            move(mend.at);
        for (Happening &happening : moved.happenings)
            move(happening.at);
        for (Trip &trip : moved.trips) {
            move(trip.start);
            move(trip.end);
        }
        LocalTime now = r.now;
        move(now);
        const auto after = dueBands(agingCatalogue(), moved, now);
        for (const DueBand &band : before) {
            const DueBand *other = findBand(after, band.point);
            CAPTURE(seed);
            CAPTURE(band.point);
            REQUIRE(other != nullptr);
            CHECK(other->early == band.early);
            CHECK(other->likely == band.likely);
            CHECK(other->late == band.late);
        }
    }
}

TEST_CASE("the parts of a shift add up to it, in whole days")
{
    // efficiency, the first of the properties that [SHAPLEY-1953] asks of a fair share
    int told = 0;
    for (unsigned seed = 0; seed < 100; ++seed) {
        const Random r(seed);
        DueContext context(agingCatalogue(), r.history, r.now);
        for (const DueBand &band : r.bands()) {
            const auto shift = shiftOf(context, band);
            if (!shift)
                continue;
            ++told;
            double sum = 0.0;
            for (const ShiftPart &part : shift->parts)
                sum += part.days;
            CAPTURE(seed);
            CAPTURE(band.point);
            CHECK(sum ==
                  Approx(static_cast<double>(daysBetween(shift->nominal, *band.likely))).epsilon(1e-9));
            CHECK(std::is_sorted(shift->parts.begin(), shift->parts.end(), [](const auto &a, const auto &b) {
                return std::abs(a.days) > std::abs(b.days);
            }));
        }
    }
    CHECK(told > 300);
}

TEST_CASE("a pass moves a date later by at most the time since the last look and one interval")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        Random r(seed);
        const auto before = r.bands();
        const auto clocks = clocksOf(r.history, r.now);
        const Id walk = r.story.story().walk(r.now);
        for (const Point &point : agingCatalogue().points())
            r.story.story().mark(walk, point.slug, MarkState::Pass, r.now);
        RigHistory passed = r.story.history();
        passed.weathering = r.history.weathering;
        passed.trips = r.history.trips;
        for (const DueBand &band : dueBands(agingCatalogue(), passed, r.now)) {
            const DueBand *old = findBand(before, band.point);
            const auto clock = clocks.find(band.point);
            const Point &point = *agingCatalogue().find(band.point);
            if (old == nullptr || clock == clocks.end() || !clock->second.from || !point.interval.months)
                continue;
            const CivilDate today = civilDate(r.now);
            const long long elapsed = daysBetween(civilDate(*clock->second.from), today);
            const long long interval = daysBetween(today, addMonths(today, *point.interval.months));
            CAPTURE(seed);
            CAPTURE(band.point);
            CHECK(daysBetween(*old->likely, *band.likely) <= elapsed + interval);
        }
    }
}
