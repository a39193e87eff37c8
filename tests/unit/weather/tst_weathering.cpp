// SPDX-License-Identifier: Apache-2.0
// Doses by day: the reference is 1, roofs, records in place of normals, winter roads, the months to come.
#include <algorithm>
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/laws/radiation.hpp"
#include "weather/weathering.hpp"
#include "world_bytes.hpp"

using namespace snugwalk;

namespace {

LocalTime at(const char *text) { return parseLocal(text).value(); }
CivilDate date(const char *text) { return parseDate(text).value(); }
GeoPoint place(double latitude, double longitude = 10.0) { return {latitude, longitude, 0.0, std::nullopt}; }

ClimateNormals steady(double mean, double half, double humidity)
{
    ClimateNormals normals;
    normals.months.fill({mean, mean - half, mean + half, 60.0, humidity});
    normals.landData = true;
    normals.notes = {"estimated"};
    return normals;
}

// North of 60 nothing is known; elsewhere it is warm on the equator and cold at 60.
SiteWeather world(const GeoPoint &p)
{
    std::optional<ClimateNormals> normals;
    if (std::abs(p.latitude) <= 60)
        normals = steady(30.0 - std::abs(p.latitude) * 0.6, 6.0, 75.0);
    return {p, normals, kilometres(200)};
}

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

Trip trip(const char *day, double last)
{
    Trip t;
    t.start = at((std::string(day) + "T08:00:00Z").c_str());
    t.end = at((std::string(day) + "T18:00:00Z").c_str());
    t.summary.first = t.summary.last = place(last);
    return t;
}

Weathering year(const std::vector<Trip> &trips, const std::vector<Stay> &stays,
                const std::vector<WeatherRecord> &records = {})
{
    return weatheringOf(trips, stays, records, world, date("2026-01-01"), date("2026-12-31"));
}

const DayRates &on(const Weathering &w, const char *day)
{
    return w.days.at(static_cast<std::size_t>(daysBetween(w.first, date(day))));
}

WeatherRecord recordAt(double latitude, const char *from, int days, double low, double high)
{
    WeatherRecord record;
    record.place = place(latitude);
    for (int i = 0; i < days; ++i)
        record.days.push_back({addDays(date(from), i), celsius(low), celsius(high), {}, {}, {}, {}});
    return record;
}

} // namespace

TEST_CASE(
    "reference exposure gives exactly 1: a clear year at 35 degrees, 20 °C, 2,500 wet hours, 20 cycles, C3")
{
    SiteWeather site(place(referenceLatitude), std::nullopt, std::nullopt);
    double sun = 0.0;
    for (int i = 0; i < 365; ++i) {
        const CivilDate day = addDays(date("2026-01-01"), i);
        WeatherDay clear{
            day, celsius(20), celsius(20), {}, {}, {}, Duration::fromSi(2500.0 * 3600.0 / 365.25)};
        clear.radiation = clearSkyRadiation(solarDay(referenceLatitude, dayOfYear(day)).value(), Length());
        const DayRates rates = site.recordedRates(clear, 0);
        CHECK(rates[WeatherDriver::Heat].value == 1.0);
        CHECK(rates[WeatherDriver::Wetness].value == doctest::Approx(1.0).epsilon(1e-12));
        CHECK(rates[WeatherDriver::Frost].value == 0.0);
        CHECK(rates.recorded);
        sun += rates[WeatherDriver::Sun].value / 365.0;
    }
    CHECK(sun == doctest::Approx(1.0).epsilon(1e-12));
    const WeatherDay thaw{date("2026-01-01"), celsius(-5), celsius(5), {}, {}, {}, {}};
    CHECK(20.0 * site.recordedRates(thaw, 1)[WeatherDriver::Frost].value / 365.25 ==
          doctest::Approx(1.0).epsilon(1e-12));
    CHECK(referenceSteel == doctest::Approx(std::sqrt(25.0 * 50.0)).epsilon(1e-15)); // bounds of C3
}

TEST_CASE("salt is the place's steel over the middle of C3, by the published function")
{
    SiteWeather site(place(20), steady(18, 5, 75), kilometres(200));
    const auto steel = corrosionRate(Metal::Steel, {celsius(18), 75, usualSulfur, 2.0}).value();
    const RateRange salt = site.rates(date("2026-05-05"))[WeatherDriver::Salt];
    CHECK(salt.value == doctest::Approx(steel.firstYear.value / std::sqrt(1250.0)));
    CHECK(salt.low < salt.value);
    CHECK(salt.high > salt.value);
    SiteWeather shore(place(20), steady(18, 5, 75), kilometres(0.1));
    CHECK(shore.rates(date("2026-05-05"))[WeatherDriver::Salt].value > 1.5 * salt.value);
}

TEST_CASE("without a coast table the salt is that of inland, and its range that of any coast")
{
    const auto salt = [](std::optional<Distance> fromCoast) {
        SiteWeather site(place(20), steady(18, 5, 75), fromCoast);
        return site.rates(date("2026-05-05"))[WeatherDriver::Salt];
    };
    const RateRange unknown = salt(std::nullopt);
    const RateRange inland = salt(kilometres(1000));
    CHECK(unknown.value == inland.value);
    CHECK(unknown.low == inland.low);
    CHECK(unknown.high > 2.0 * inland.high);
    for (const double km : {0.0, 0.01, 0.1, 1.0, 30.0, 1000.0}) {
        const RateRange known = salt(kilometres(km));
        CAPTURE(km);
        CHECK(unknown.low <= known.low);
        CHECK(unknown.high >= known.high);
    }
}

TEST_CASE("one day a civil day, ranges hold the value, and the drivers follow the climate")
{
    const Weathering w =
        year({}, {stay("2026-01-01T00:00:00Z", nullptr, 0), stay("2026-07-01T00:00:00Z", nullptr, 55)});
    REQUIRE(w.days.size() == 365);
    for (const DayRates &day : w.days) {
        CHECK(day.known);
        CHECK_FALSE(day.recorded);
        for (const RateRange &rate : day.rate) {
            REQUIRE(rate.low <= rate.value);
            REQUIRE(rate.value <= rate.high);
            REQUIRE(rate.low >= 0.0);
        }
    }
    CHECK(on(w, "2026-03-01")[WeatherDriver::Heat].value > 1.0);
    CHECK(on(w, "2026-12-01")[WeatherDriver::Heat].value < 1.0);
    CHECK(on(w, "2026-03-01")[WeatherDriver::Sun].value > on(w, "2026-12-01")[WeatherDriver::Sun].value);
    CHECK(on(w, "2026-12-01")[WeatherDriver::Frost].value > on(w, "2026-03-01")[WeatherDriver::Frost].value);
    CHECK(w.notes == std::vector<std::string>{"estimated"});
}

TEST_CASE("under a roof: light a tenth, wetness and salt half, heat and frost as outside")
{
    const Weathering open = year({}, {stay("2026-01-01T00:00:00Z", nullptr, 45)});
    const Weathering roof = year({}, {stay("2026-01-01T00:00:00Z", nullptr, 45, true)});
    for (std::size_t i = 0; i < 365; ++i) {
        const DayRates &a = open.days[i];
        const DayRates &b = roof.days[i];
        CHECK(b[WeatherDriver::Sun].value == doctest::Approx(0.1 * a[WeatherDriver::Sun].value));
        CHECK(b[WeatherDriver::Wetness].value == doctest::Approx(0.5 * a[WeatherDriver::Wetness].value));
        CHECK(b[WeatherDriver::Salt].high == doctest::Approx(0.5 * a[WeatherDriver::Salt].high));
        CHECK(b[WeatherDriver::Heat] == a[WeatherDriver::Heat]);
        CHECK(b[WeatherDriver::Frost] == a[WeatherDriver::Frost]);
    }
    CHECK(roof.usual[6][WeatherDriver::Sun].value ==
          doctest::Approx(0.1 * open.usual[6][WeatherDriver::Sun].value));
}

TEST_CASE("a recorded day replaces its normal, near the rig only, and only that day")
{
    const std::vector<Stay> stays = {stay("2026-01-01T00:00:00Z", nullptr, 45)};
    const Weathering plain = year({}, stays);
    const Weathering hot = year({}, stays, {recordAt(45.3, "2026-02-10", 2, 25, 45)});
    CHECK(on(hot, "2026-02-10").recorded);
    CHECK(on(hot, "2026-02-11")[WeatherDriver::Heat].value >
          3 * on(plain, "2026-02-11")[WeatherDriver::Heat].value);
    CHECK(on(hot, "2026-02-09") == on(plain, "2026-02-09"));
    CHECK(on(hot, "2026-02-12") == on(plain, "2026-02-12"));
    const Weathering far = year({}, stays, {recordAt(46.0, "2026-02-10", 2, 25, 45)}); // 111 km away
    CHECK_FALSE(on(far, "2026-02-10").recorded);
    const Weathering both =
        year({}, stays, {recordAt(45.0, "2026-02-10", 1, 0, 10), recordAt(45.3, "2026-02-10", 1, 25, 45)});
    CHECK(on(both, "2026-02-10")[WeatherDriver::Heat].value < 1.0); // the nearer one
    const Weathering later =
        year({}, stays, {recordAt(45.0, "2026-02-10", 1, 0, 10), recordAt(45.0, "2026-02-10", 1, 25, 45)});
    CHECK(on(later, "2026-02-10")[WeatherDriver::Heat].value > 1.0); // of two as near the later one
    CHECK(hot.usual == plain.usual);                                 // what was is not what comes
}

TEST_CASE("recorded frost is counted through the days; a day without a record breaks the chain")
{
    const std::vector<Stay> stays = {stay("2026-01-01T00:00:00Z", nullptr, 45)};
    WeatherRecord record = recordAt(45, "2026-02-01", 4, -10, -5);
    record.days[3].low = celsius(1.5);
    record.days[3].high = celsius(6);
    const Weathering w = year({}, stays, {record});
    CHECK(on(w, "2026-02-03")[WeatherDriver::Frost].value == 0.0);
    CHECK(on(w, "2026-02-04")[WeatherDriver::Frost].value ==
          doctest::Approx(365.25 / 20)); // one cycle, that day
    record.days.erase(record.days.begin() + 2);
    CHECK(on(year({}, stays, {record}), "2026-02-04")[WeatherDriver::Frost].value == 0.0);
}

TEST_CASE("roads in winter: a cold day driven salts it and the next 13, and says so")
{
    // at 55 degrees the mean is -3 °C the year round here, at 20 it is 18 °C
    const std::vector<Stay> stays = {stay("2026-01-01T00:00:00Z", nullptr, 55)};
    const Weathering w = year({trip("2026-02-10", 55)}, stays);
    CHECK(w.winterRoads == std::vector<CivilDate>{date("2026-02-10")});
    CHECK(std::count(w.notes.begin(), w.notes.end(), "winter_roads") == 1);
    const double quiet = on(w, "2026-02-09")[WeatherDriver::Salt].value;
    CHECK(on(w, "2026-02-10")[WeatherDriver::Salt].value == doctest::Approx(std::sqrt(50.0 * 80.0 / 1250.0)));
    CHECK(on(w, "2026-02-23")[WeatherDriver::Salt].high == doctest::Approx(std::sqrt(80.0 * 200.0 / 1250.0)));
    CHECK(on(w, "2026-02-24")[WeatherDriver::Salt].value == quiet);
    CHECK(on(w, "2026-02-10")[WeatherDriver::Salt].low == on(w, "2026-02-09")[WeatherDriver::Salt].low);
    CHECK(year({trip("2026-02-10", 20)}, {}).winterRoads.empty());
}

TEST_CASE("no place, no normals, before the first place: told, and all rates 1 where nothing is known")
{
    const Weathering nowhere = year({}, {});
    CHECK(nowhere.notes == std::vector<std::string>{"no_place"});
    CHECK_FALSE(nowhere.days.front().known);
    CHECK(nowhere.days.front().rate == DayRates{}.rate);
    CHECK_FALSE(nowhere.usual[0].known);

    const Weathering north = year({}, {stay("2026-03-01T00:00:00Z", nullptr, 75)});
    CHECK(std::count(north.notes.begin(), north.notes.end(), "beyond_data") == 1);
    CHECK(std::count(north.notes.begin(), north.notes.end(), "before_first") == 1);
    CHECK_FALSE(on(north, "2026-06-01").known);
    CHECK(on(north, "2026-06-01").rate == DayRates{}.rate);
    CHECK_FALSE(north.usual[5].known);

    const std::vector<Stay> stays = {stay("2026-01-01T00:00:00Z", nullptr, 45)};
    const std::vector<WeatherRecord> records = {recordAt(45, "2026-02-10", 1, 25, 45)};
    const Weathering bare =
        weatheringOf({}, stays, records, nullptr, nullptr, date("2026-02-09"), date("2026-02-10"));
    CHECK(bare.notes == std::vector<std::string>{"no_climate", "no_coast"});
    CHECK_FALSE(bare.days[0].known);
    CHECK(bare.days[1].known); // its own record needs no normals
    CHECK(bare.days[1][WeatherDriver::Heat].value > 3.0);
    CHECK(weatheringOf({}, {}, {}, world, date("2026-02-02"), date("2026-02-01")).days.empty());
}

TEST_CASE("the months to come: where it stands now; after a year of its own, where it stood in each month")
{
    const std::vector<Stay> half = {stay("2026-06-15T00:00:00Z", nullptr, 0)};
    const Weathering young = year({}, half);
    CHECK(young.usual[0][WeatherDriver::Heat].value >
          1.0); // January at the equator too, though it was not there
    const std::vector<Stay> nomad = {stay("2025-01-01T00:00:00Z", "2025-06-30T23:00:00Z", 0),
                                     stay("2025-07-01T00:00:00Z", nullptr, 50)};
    const Weathering old = weatheringOf({}, nomad, {}, world, date("2025-01-01"), date("2026-01-15"));
    CHECK(old.usual[2][WeatherDriver::Heat].value > 1.0); // March: at the equator
    CHECK(old.usual[9][WeatherDriver::Heat].value < 1.0); // October: at 50 degrees
    // January: 31 days at the equator, 15 at 50 degrees
    SiteWeather equator = world(place(0)), north = world(place(50));
    const CivilDate any = date("2026-01-10");
    const double mix = (31 * equator.rates(any)[WeatherDriver::Heat].value +
                        15 * north.rates(any)[WeatherDriver::Heat].value) /
                       46;
    CHECK(old.usual[0][WeatherDriver::Heat].value == doctest::Approx(mix));
}

TEST_CASE("twenty years on the road ask for each place once and work out each of its days once")
{
    std::vector<Trip> trips;
    for (int i = 0; i < 20 * 365; i += 10)
        trips.push_back(trip(formatDate(addDays(date("2006-01-01"), i)).c_str(), 30 + i % 200 * 0.1));
    int asked = 0;
    const SiteSource counting = [&](const GeoPoint &p) {
        ++asked;
        return world(p);
    };
    const Weathering w = weatheringOf(trips, {}, {}, counting, date("2006-01-01"), date("2025-12-31"));
    CHECK(w.days.size() == 7305);
    CHECK(asked == 20);
}

TEST_CASE("along a road from the shore inland salt is that of each place, near enough for its law")
{
    const auto climate = Climate::fromBytes(worldbytes::real("climate.bin")).value();
    const auto coast = Coast::fromBytes(worldbytes::real("coast.bin")).value();
    const CivilDate first = date("2026-06-01"); // no winter roads
    constexpr int places = 120;                 // from the coast of Oregon eastward
    const auto at = [](int i) { return GeoPoint{45.5, -123.95 + 0.06 * i, std::nullopt, std::nullopt}; };
    std::vector<Trip> trips;
    for (int i = 0; i < places; ++i) {
        trips.push_back(trip(formatDate(addDays(first, i)).c_str(), 45.5));
        trips.back().summary.first = trips.back().summary.last = at(i);
    }
    const Weathering w = weatheringOf(trips, {}, {}, &climate, &coast, first, addDays(first, places - 1));
    REQUIRE(w.winterRoads.empty());
    for (int i = 0; i < places; ++i) {
        CAPTURE(i);
        SiteWeather exact = siteWeatherAt(at(i), &climate, &coast);
        const RateRange salt = exact.rates(addDays(first, i))[WeatherDriver::Salt];
        const RateRange taken = w.days.at(static_cast<std::size_t>(i))[WeatherDriver::Salt];
        CHECK(taken.value == doctest::Approx(salt.value).epsilon(0.08)); // 10 % to the power 0.8
        CHECK(taken.high == doctest::Approx(salt.high).epsilon(0.08));
    }
}

TEST_CASE("drivers have the catalogue's names")
{
    for (const WeatherDriver driver : weatherDrivers)
        CHECK(findWeatherDriver(slug(driver)) == driver);
    CHECK(slug(WeatherDriver::Wetness) == "wetness");
    CHECK_FALSE(findWeatherDriver("moon"));
}
