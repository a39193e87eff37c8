// SPDX-License-Identifier: Apache-2.0
// Laws of the product's own catalogue: what data never lengthens, over random histories of whole rigs.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>

#include "../../unit/due/every_rig.hpp"
#include "../../unit/due/story.hpp"
#include "due/rules.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr unsigned histories = 60;

bool isNeverLengthened(const Point &point) { return point.isRoadOrFire() || point.isPublished(); }

Weathering steadyWeather(double rate)
{
    Weathering weather;
    for (DayRates &month : weather.usual)
        month.rate.fill({rate, rate * 0.8, rate * 1.3});
    return weather;
}

// Looks, findings, work, drives, happenings and weather of one rig.
class RandomRig {
public:
    explicit RandomRig(unsigned seed) : m_rng(seed), m_rigs(everyRig())
    {
        m_story.rig() = m_rigs[seed % m_rigs.size()];
        m_story.rig().yearly = kilometres(below(4) * 8'000.0);
        m_now = at("2020-01-01");
        const int walks = 2 + below(6);
        for (int i = 0; i < walks; ++i)
            walk();
        pass(1 + below(120));
        m_history = m_story.history();
        m_history.weathering = steadyWeather(std::lognormal_distribution<double>(0.0, 0.8)(m_rng));
        for (Trip &trip : m_history.trips)
            trip.road = static_cast<RoadClass>(below(6));
    }
    [[nodiscard]] const RigHistory &history() const { return m_history; }
    [[nodiscard]] LocalTime now() const { return m_now; }

private:
    int below(int limit) { return std::uniform_int_distribution<int>(0, limit - 1)(m_rng); }
    void pass(int days) { m_now.instant += std::chrono::days(days); }

    void walk()
    {
        static const char *const actions[] = {"replace", "reseal", "retorque", "clean", "lubricate", "other"};
        const Id walk = m_story.walk(m_now);
        std::vector<std::string> failed;
        for (const Point &point : realCatalogue().points()) {
            const int roll = below(12);
            if (roll < 3)
                continue;
            const MarkState state = roll < 10    ? MarkState::Pass
                                    : roll == 10 ? MarkState::Attention
                                                 : MarkState::CouldNotLook;
            m_story.mark(walk, point.slug, state, m_now).how = static_cast<LookedHow>(below(3));
            if (state == MarkState::Attention && below(2) == 0)
                failed.push_back(point.slug);
        }
        pass(1);
        for (const std::string &point : failed)
            m_story.mend(m_now, actions[below(6)], {}, {point});
        for (int trips = below(4); trips > 0; --trips) {
            pass(1);
            const LocalTime start = m_now;
            pass(1 + below(9));
            m_story.trip(start, m_now, kilometres(50.0 * (1 + below(60))));
        }
        if (below(6) == 0) {
            auto event = realCatalogue().events().begin();
            std::advance(event, below(static_cast<int>(realCatalogue().events().size())));
            m_story.happening(m_now, event->first);
        }
        pass(10 + below(200));
    }

    std::mt19937 m_rng;
    std::vector<Rig> m_rigs;
    Story m_story;
    RigHistory m_history;
    LocalTime m_now;
};

// One point of each class, another for each seed, and all that are in none.
bool isOneOfItsLike(const std::string &point, unsigned seed)
{
    for (const auto &[name, slugs] : realCatalogue().likes()) {
        const auto found = std::find(slugs.begin(), slugs.end(), point);
        if (found != slugs.end())
            return found - slugs.begin() == static_cast<std::ptrdiff_t>(seed % slugs.size());
    }
    return true;
}

// Whole trips since a moment, which lies between trips.
Distance driven(const RigHistory &history, LocalTime since)
{
    Distance sum;
    for (const Trip &trip : history.trips) {
        if (trip.start.instant >= since.instant)
            sum = sum + trip.summary.length;
    }
    return sum;
}

} // namespace

TEST_CASE("no point of the road, of fire or with a published or maker's limit is due later than that limit")
{
    std::set<std::string> byMonths, byDistance;
    for (unsigned seed = 0; seed < histories; ++seed) {
        const RandomRig rig(seed);
        const CivilDate today = civilDate(rig.now());
        const auto clocks = clocksOf(rig.history(), rig.now());
        const UsageForecast usage = forecastUsage(rig.history(), rig.now());
        for (const DueBand &band : dueBands(realCatalogue(), rig.history(), rig.now())) {
            const Point &point = *realCatalogue().find(band.point);
            const auto clock = clocks.find(band.point);
            if (!isNeverLengthened(point) || clock == clocks.end() || !clock->second.from)
                continue;
            CAPTURE(seed);
            CAPTURE(band.point);
            const LocalTime from = *clock->second.from;
            if (point.interval.months) {
                byMonths.insert(band.point);
                REQUIRE(band.late);
                CHECK(*band.late <= addMonths(civilDate(from), *point.interval.months));
            }
            if (!point.interval.distance)
                continue;
            byDistance.insert(band.point);
            const Distance left =
                *point.interval.distance - clock->second.keptDistance - driven(rig.history(), from);
            if (left <= Distance()) {
                CHECK(*band.late <= today); // it was driven, whatever the months say
                continue;
            }
            for (const auto &[date, p] : {std::pair(band.early, 0.1), {band.likely, 0.5}, {band.late, 0.9}}) {
                const auto days = daysToDrive(usage, left, today, p);
                const double share = p;
                CAPTURE(share);
                if (days && *days < 36'000.0)
                    CHECK(*date <= addDays(today, static_cast<long long>(*days)));
            }
        }
    }
    for (const Point &point : realCatalogue().points()) {
        CAPTURE(point.slug);
        if (isNeverLengthened(point) && point.interval.months)
            CHECK(byMonths.count(point.slug) == 1);
        if (isNeverLengthened(point) && point.interval.distance)
            CHECK(byDistance.count(point.slug) == 1);
    }
}

TEST_CASE("twelve passes in a mild place lengthen what is common practice, never a published limit")
{
    int longer = 0;
    for (const Point &point : realCatalogue().points()) {
        if (!point.interval.months)
            continue;
        Story story;
        story.rig() = everyRig().front();
        story.rig().yearly = Distance();
        CivilDate day = parseDate("2010-01-15").value();
        for (int i = 0; i < 13; ++i) {
            const LocalTime when{startOfDay(day), {}};
            story.mark(story.walk(when), point.slug, MarkState::Pass, when);
            day = addMonths(day, *point.interval.months);
        }
        RigHistory history = story.history();
        history.weathering = steadyWeather(0.25);
        const LocalTime now = history.walks.back().walk.started;
        DueContext context(realCatalogue(), history, now);
        const auto clocks = clocksOf(history, now);
        DueBand band;
        CivilDate late = std::chrono::year(9999) / 12 / 31;
        for (const Firing &firing : firings(context, point, clocks.find(point.slug)->second, band))
            late = std::min(late, firing.late);
        CAPTURE(point.slug);
        if (isNeverLengthened(point))
            CHECK(late <= day);
        else
            longer += late > day ? 1 : 0;
        CHECK((mostLengthening(history, point) == 1.0) == isNeverLengthened(point));
    }
    CHECK(longer > 40);
}

TEST_CASE(
    "a pass moves a date later by at most the time since the last look and one interval, by distance too")
{
    int told = 0;
    for (unsigned seed = 0; seed < histories; ++seed) {
        const RandomRig rig(seed);
        const CivilDate today = civilDate(rig.now());
        const auto before = dueBands(realCatalogue(), rig.history(), rig.now());
        const auto clocks = clocksOf(rig.history(), rig.now());
        const UsageForecast usage = forecastUsage(rig.history(), rig.now());
        RigHistory passed = rig.history();
        WalkRecord &record = passed.walks.emplace_back();
        record.walk.id.bytes[0] = 0xff;
        record.walk.started = rig.now();
        for (const Point &point : realCatalogue().points()) {
            if (!isOneOfItsLike(point.slug, seed)) // what others of its class passed is another matter
                continue;
            Mark &mark = record.marks.emplace_back();
            mark.id.bytes[0] = 0xff;
            mark.id.bytes[1] = static_cast<std::uint8_t>(record.marks.size());
            mark.walk = record.walk.id;
            mark.point = point.slug;
            mark.state = MarkState::Pass;
            mark.at = rig.now();
        }
        for (const DueBand &band : dueBands(realCatalogue(), passed, rig.now())) {
            const DueBand *old = findBand(before, band.point);
            const auto clock = clocks.find(band.point);
            const Point &point = *realCatalogue().find(band.point);
            if (old == nullptr || !old->likely || !band.likely || clock == clocks.end() ||
                !clock->second.from)
                continue;
            if (old->rule.starts_with("event:")) // a pass answers it: the date was no interval's
                continue;
            std::optional<long long> interval;
            if (point.interval.months)
                interval = daysBetween(today, addMonths(today, *point.interval.months));
            if (point.interval.distance) {
                const auto days = daysToDrive(usage, *point.interval.distance, today, 0.5);
                if (days && (!interval || *days < static_cast<double>(*interval)))
                    interval = static_cast<long long>(*days) + 1;
            }
            if (!interval)
                continue;
            told += point.interval.distance ? 1 : 0;
            CAPTURE(seed);
            CAPTURE(band.point);
            CHECK(daysBetween(*old->likely, *band.likely) <=
                  daysBetween(civilDate(*clock->second.from), today) + *interval);
        }
    }
    CHECK(told > 200);
}
