// SPDX-License-Identifier: Apache-2.0
// Laws of what-if over random rigs and plans.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "due/band.hpp"
#include "round/plan.hpp"
#include "support/book.hpp"
#include "support/five_rigs.hpp"
#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime now = timeAt("2026-11-24T12:00:00Z");

LocalTime daysAgo(long long days)
{
    LocalTime time = now;
    time.instant -= std::chrono::days(days);
    return time;
}

Id idOf(char letter, std::size_t number)
{
    std::string bytes(16, letter);
    bytes[15] = static_cast<char>(number % 256);
    bytes[14] = static_cast<char>(number / 256);
    return Id::fromBytes(bytes);
}

// A rig looked at on a few days of the last two years, driven now and then, at one invented kind of weather.
RigHistory randomHistory(std::mt19937 &random)
{
    RigHistory history;
    history.rig = fiveRigs()[random() % fiveRigs().size()].rig;
    for (std::size_t i = 0; i < 3; ++i) {
        WalkRecord record;
        record.walk.id = idOf('w', i);
        record.walk.started = daysAgo(static_cast<long long>(700 - 250 * i - random() % 200));
        for (const Point &point : realCatalogue().points()) {
            if (random() % 2 == 0)
                continue;
            Mark mark;
            mark.id = record.walk.id;
            mark.walk = record.walk.id;
            mark.point = point.slug;
            mark.state = MarkState::Pass;
            mark.at = record.walk.started;
            record.marks.push_back(mark);
        }
        history.walks.push_back(record);
    }
    for (std::size_t i = 0; i < 6; ++i) {
        Trip trip;
        trip.id = idOf('t', i);
        trip.road = random() % 2 == 0 ? RoadClass::Smooth : RoadClass::Gravel;
        trip.start = daysAgo(static_cast<long long>(650 - 100 * i));
        trip.end = trip.start;
        trip.end.instant += std::chrono::hours(8);
        trip.summary.length = kilometres(100.0 + static_cast<double>(random() % 900));
        history.trips.push_back(trip);
    }
    return history;
}

double uniform(std::mt19937 &random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

void weather(RigHistory &history, std::mt19937 &random)
{
    for (DayRates &month : history.weathering.usual) {
        for (RateRange &rate : month.rate) {
            rate.value = uniform(random, 0.1, 5.0);
            rate.low = 0.8 * rate.value;
            rate.high = 1.25 * rate.value;
        }
    }
    history.weathering.first = civilDate(daysAgo(730));
    for (int i = 0; i <= 730; ++i) {
        const CivilDate date = addDays(history.weathering.first, i);
        history.weathering.days.push_back(history.weathering.usual[static_cast<unsigned>(date.month()) - 1]);
    }
}

std::vector<PlanLeg> randomPlan(std::mt19937 &random)
{
    std::vector<PlanLeg> plan;
    CivilDate next = addDays(civilDate(now), random() % 60);
    for (std::size_t i = 0; i < 1 + random() % 4; ++i) {
        PlanLeg leg;
        leg.from = next;
        leg.until = addDays(next, 5 + random() % 120);
        leg.distance = kilometres(static_cast<double>(random() % 5000));
        leg.road = random() % 2 == 0 ? RoadClass::Smooth : RoadClass::Broken;
        plan.push_back(leg);
        next = addDays(leg.until, 1 + random() % 30);
    }
    return plan;
}

void noneIsLater(const RigHistory &history, const Ahead &less, const Ahead &more)
{
    const auto mild = dueBands(realCatalogue(), history, now, less);
    const auto harsh = dueBands(realCatalogue(), history, now, more);
    REQUIRE(mild.size() == harsh.size());
    for (const DueBand &band : harsh) {
        const DueBand *other = findBand(mild, band.point);
        REQUIRE(other != nullptr);
        INFO(band.point);
        CHECK(band.early <= other->early);
        CHECK(band.likely <= other->likely);
        CHECK(band.late <= other->late);
    }
}

} // namespace

TEST_CASE("further, rougher and harsher plans never move a date later")
{
    std::mt19937 random(4);
    for (int round = 0; round < 12; ++round) {
        RigHistory history = randomHistory(random);
        weather(history, random);
        const std::vector<PlanLeg> plan = randomPlan(random);
        const Ahead less = aheadOf(plan, history, nullptr, now);
        std::vector<PlanLeg> further = plan;
        for (PlanLeg &leg : further)
            leg.distance = leg.distance * uniform(random, 1.0, 4.0) + kilometres(10.0);
        noneIsLater(history, less, aheadOf(further, history, nullptr, now));
        std::vector<PlanLeg> rougher = plan;
        for (PlanLeg &leg : rougher)
            leg.road = leg.road == RoadClass::Smooth ? RoadClass::Broken : RoadClass::Washboard;
        noneIsLater(history, less, aheadOf(rougher, history, nullptr, now));
        Ahead harsher = less;
        for (DayRates &day : harsher.days) {
            for (RateRange &rate : day.rate) {
                const double factor = uniform(random, 1.0, 3.0);
                rate = {rate.value * factor, rate.low * factor, rate.high * factor};
            }
        }
        noneIsLater(history, less, harsher);
    }
}

TEST_CASE("the usual as a plan changes little: nothing for what goes by months alone")
{
    std::mt19937 random(9);
    for (int round = 0; round < 6; ++round) {
        RigHistory history = randomHistory(random);
        weather(history, random);
        // a plan whose one leg is past today by a day leaves what is before it as usual; its own day is the
        // usual too
        Ahead usual =
            aheadOf({{addDays(civilDate(now), 400), addDays(civilDate(now), 400), {}, false, {}, {}, ""}},
                    history, nullptr, now);
        usual.days.back() =
            history.weathering.usual[static_cast<unsigned>(addDays(civilDate(now), 400).month()) - 1];
        const auto planned = dueBands(realCatalogue(), history, now, usual);
        int compared = 0;
        for (const DueBand &band : dueBands(realCatalogue(), history, now)) {
            const Point &point = *realCatalogue().find(band.point);
            if (!band.likely || point.interval.distance)
                continue;
            const DueBand *then = findBand(planned, band.point);
            REQUIRE(then != nullptr);
            INFO(band.point);
            CHECK(std::abs(daysBetween(*band.likely, *then->likely)) <=
                  2); // months cut at today, not at their first
            ++compared;
        }
        CHECK(compared > 20);
    }
}
