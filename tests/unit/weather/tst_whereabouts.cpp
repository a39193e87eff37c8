// SPDX-License-Identifier: Apache-2.0
// Where the rig was: stays, trips, what is inherited, and days that belong to another zone.
#include <doctest/doctest.h>

#include "weather/whereabouts.hpp"

using namespace snugwalk;

namespace {

LocalTime at(const char *text) { return parseLocal(text).value(); }
CivilDate day(const char *text) { return parseDate(text).value(); }
GeoPoint place(double latitude) { return {latitude, 10.0, std::nullopt, std::nullopt}; }

Stay stay(const char *from, const char *to, double latitude, bool covered = false)
{
    Stay s;
    s.from = at(from);
    if (to != nullptr)
        s.to = at(to);
    s.place = place(latitude);
    s.covered = covered;
    return s;
}

Trip trip(const char *from, const char *to, double first, double last)
{
    Trip t;
    t.start = at(from);
    t.end = at(to);
    t.summary.first = place(first);
    t.summary.last = place(last);
    return t;
}

DayPlace on(const std::vector<Trip> &trips, const std::vector<Stay> &stays, const char *date)
{
    const auto days = whereabouts(trips, stays, day("2026-01-01"), day("2026-12-31"));
    REQUIRE(days.size() == 365);
    return days.at(static_cast<std::size_t>(daysBetween(day("2026-01-01"), day(date))));
}

} // namespace

TEST_CASE("nothing written: nowhere; the wrong way round: no days")
{
    CHECK(on({}, {}, "2026-05-01").basis == PlaceBasis::Nowhere);
    CHECK(whereabouts({}, {}, day("2026-05-02"), day("2026-05-01")).empty());
    CHECK(whereabouts({}, {}, day("2026-05-01"), day("2026-05-01")).size() == 1);
}

TEST_CASE("a stay: before it the same place, flagged; in it told; after it inherited without the roof")
{
    const std::vector<Stay> stays = {
        stay("2026-03-10T12:00:00+01:00", "2026-04-10T09:00:00+02:00", 45, true)};
    CHECK(on({}, stays, "2026-03-09").basis == PlaceBasis::BeforeFirst);
    CHECK_FALSE(on({}, stays, "2026-03-09").covered);
    CHECK(on({}, stays, "2026-03-10").basis == PlaceBasis::Stay);
    CHECK(on({}, stays, "2026-04-10").covered);
    const DayPlace after = on({}, stays, "2026-04-11");
    CHECK(after.basis == PlaceBasis::Inherited);
    CHECK(after.place.latitude == 45);
    CHECK_FALSE(after.covered);
}

TEST_CASE("a stay without end goes on until a trip; then the rig stands where the trip ended")
{
    const std::vector<Stay> stays = {stay("2026-03-10T12:00:00+01:00", nullptr, 45, true)};
    const std::vector<Trip> trips = {trip("2026-06-01T08:00:00+02:00", "2026-06-03T18:00:00+02:00", 45, 50)};
    CHECK(on(trips, stays, "2026-05-31").basis == PlaceBasis::Stay);
    CHECK(on(trips, stays, "2026-05-31").covered);
    CHECK(on(trips, stays, "2026-06-01").basis == PlaceBasis::Trip);
    CHECK(on(trips, stays, "2026-06-01").driven);
    CHECK(on(trips, stays, "2026-06-02").driven);
    CHECK(on(trips, stays, "2026-06-03").place.latitude == 50);
    const DayPlace later = on(trips, stays, "2026-09-01");
    CHECK(later.basis == PlaceBasis::Inherited);
    CHECK(later.place.latitude == 50);
    CHECK_FALSE(later.covered);
    CHECK_FALSE(later.driven);
}

TEST_CASE("a stay with an end goes on after a weekend away")
{
    const std::vector<Stay> stays = {stay("2026-03-10T12:00:00Z", "2026-09-10T12:00:00Z", 45, true)};
    const std::vector<Trip> trips = {trip("2026-06-05T08:00:00Z", "2026-06-05T18:00:00Z", 45, 46),
                                     trip("2026-06-07T08:00:00Z", "2026-06-07T18:00:00Z", 46, 45)};
    CHECK(on(trips, stays, "2026-06-05").place.latitude == 46);
    CHECK(on(trips, stays, "2026-06-07").place.latitude == 45);
    CHECK(on(trips, stays, "2026-06-08").covered);
    CHECK(on(trips, stays, "2026-09-11").basis == PlaceBasis::Inherited);
    CHECK(on(trips, stays, "2026-09-11").place.latitude == 45);
}

TEST_CASE("stops of a long trip tell where it spent the nights")
{
    Trip t = trip("2026-06-01T08:00:00+12:00", "2026-06-03T18:00:00+12:00", -40, -44);
    t.summary.stops = {
        {at("2026-06-01T19:00:00+12:00").instant, at("2026-06-02T08:00:00+12:00").instant, place(-41)},
        {at("2026-06-02T19:00:00+12:00").instant, at("2026-06-03T08:00:00+12:00").instant, place(-42)}};
    CHECK(on({t}, {}, "2026-06-01").place.latitude == -41);
    CHECK(on({t}, {}, "2026-06-02").place.latitude == -42);
    CHECK(on({t}, {}, "2026-06-03").place.latitude == -44);
}

TEST_CASE("of two stays that overlap the later one counts, then the earlier one again")
{
    const std::vector<Stay> stays = {stay("2026-01-05T12:00:00Z", "2026-12-01T12:00:00Z", 45),
                                     stay("2026-02-05T12:00:00Z", "2026-03-01T12:00:00Z", 30)};
    CHECK(on({}, stays, "2026-02-04").place.latitude == 45);
    CHECK(on({}, stays, "2026-02-05").place.latitude == 30);
    CHECK(on({}, stays, "2026-03-02").place.latitude == 45);
}

TEST_CASE("the local date counts, not the one in Greenwich")
{
    const std::vector<Stay> stays = {stay("2026-07-01T06:00:00+13:00", nullptr, -44)}; // 30 June in Greenwich
    CHECK(on({}, stays, "2026-06-30").basis == PlaceBasis::BeforeFirst);
    CHECK(on({}, stays, "2026-07-01").basis == PlaceBasis::Stay);
}

TEST_CASE("places that are none are passed over")
{
    std::vector<Stay> stays = {stay("2026-03-10T12:00:00Z", nullptr, 95)};
    CHECK(on({}, stays, "2026-04-01").basis == PlaceBasis::Nowhere);
    Trip lost;
    lost.start = lost.end = at("2026-05-05T12:00:00Z");
    CHECK(on({lost}, {}, "2026-05-05").basis == PlaceBasis::Nowhere);
    CHECK(on({lost}, {}, "2026-05-05").driven);
}
