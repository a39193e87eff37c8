// SPDX-License-Identifier: Apache-2.0
// What the rig says for a bench question: its plates without loss, the air of its week, and what was typed
// first.
#include <doctest/doctest.h>

#include "bench/ask/ask.hpp"
#include "round/bench_of_rig.hpp"

using namespace snugwalk;

namespace {

const CivilDate today = *parseDate("2026-11-24");
const GeoPoint yard{43.6, -70.3, {}, {}};

const BenchQuestion &question(const char *name) { return *findBenchQuestion(name); }

RigHistory standing()
{
    RigHistory history;
    history.rig.tires.placard = kilopascals(340.0);
    Stay stay;
    stay.from = *parseLocal("2026-10-01T12:00:00-04:00");
    stay.place = yard;
    history.stays.push_back(stay);
    return history;
}

// `days` days up to today, 4 to 12 °C, 70 % but for the first, which has 84 %.
WeatherRecord record(int days)
{
    WeatherRecord record;
    record.place = yard;
    for (int back = days - 1; back >= 0; --back) {
        WeatherDay day;
        day.date = addDays(today, -back);
        day.low = celsius(4.0);
        day.high = celsius(12.0);
        day.humidity = back == days - 1 ? 84.0 : 70.0;
        record.days.push_back(day);
    }
    return record;
}

} // namespace

TEST_CASE("a plate in another unit comes out as it went in, never under itself by more than a millionth")
{
    const RigHistory history = standing();
    const BenchTexts metric =
        withTextsOfRig(question("tire-pressure"), {}, history, nullptr, UnitSystem::Si, today);
    CHECK(metric.at("placard") == "340 kPa");
    const BenchTexts us =
        withTextsOfRig(question("tire-pressure"), {}, history, nullptr, UnitSystem::Us, today);
    CHECK(parseQuantity<Pressure>(us.at("placard"))->si() == doctest::Approx(340e3).epsilon(1e-6));
    const BenchTexts typed = withTextsOfRig(question("tire-pressure"), {{"placard", "50 psi"}}, history,
                                            nullptr, UnitSystem::Us, today);
    CHECK(typed.at("placard") == "50 psi");
    const BenchTexts emptied =
        withTextsOfRig(question("tire-pressure"), {{"placard", ""}}, history, nullptr, UnitSystem::Us, today);
    CHECK(emptied.at("placard").empty());
}

TEST_CASE("seven recorded days: (84 + 6 x 70) / 7 = 72 %, known within 5 points")
{
    RigHistory history = standing();
    history.weather.push_back(record(7));
    const auto air = weekAir(history, nullptr, today);
    REQUIRE(air.has_value());
    CHECK(air->humidity == doctest::Approx(0.72));
    CHECK(air->mean.si() == doctest::Approx(281.15));
    CHECK(air->humidityWithin == 0.05);
    const BenchTexts texts =
        withTextsOfRig(question("moisture"), {{"reading", "15 %"}}, history, nullptr, UnitSystem::Si, today);
    CHECK(texts.at("humidity") == "72 %");
    CHECK(askBench(question("moisture"), texts, UnitSystem::Si, today).has_value());
    const BenchTexts own =
        withTextsOfRig(question("moisture"), {{"humidity", "60 %"}}, history, nullptr, UnitSystem::Si, today);
    CHECK_FALSE(own.contains("air"));
    CHECK_FALSE(own.contains("humidity-within"));
}

TEST_CASE("a week that is not known whole gives no air: no place, no table, or a record that is too far off")
{
    RigHistory history = standing();
    CHECK_FALSE(weekAir(RigHistory{}, nullptr, today).has_value());
    CHECK_FALSE(weekAir(history, nullptr, today).has_value());
    history.weather.push_back(record(6)); // the first of the seven is missing
    CHECK_FALSE(weekAir(history, nullptr, today).has_value());
    history.weather.back() = record(7);
    history.weather.back().place = {44.6, -70.3, {}, {}}; // 111 km north
    CHECK_FALSE(weekAir(history, nullptr, today).has_value());
}
