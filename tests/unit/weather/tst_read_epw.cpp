// SPDX-License-Identifier: Apache-2.0
// Weather files of building simulations. No file of that kind is at hand with a licence to carry: the text is
// written here from the published column list [EPW], from memory; files that others made may have turns of
// their own.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/records/read_weather.hpp"

using namespace snugwalk;

namespace {

// The eight header lines by their names.
const std::string header = "LOCATION,Somewhere,-,NZL,written by a test,937800,-43.53,172.64,12.0,37.0\n"
                           "DESIGN CONDITIONS,0\n"
                           "TYPICAL/EXTREME PERIODS,0\n"
                           "GROUND TEMPERATURES,0\n"
                           "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\n"
                           "COMMENTS 1,\n"
                           "COMMENTS 2,\n"
                           "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n";

// Columns 1 to 35: year, month, day, hour, minute, flags, dry bulb, dew point, humidity, pressure, …
std::string hour(int year, int month, int day, int h, const char *dry, const char *humidity,
                 const char *global, const char *rain)
{
    return std::to_string(year) + "," + std::to_string(month) + "," + std::to_string(day) + "," +
           std::to_string(h) + ",0,?9?9," + dry + ",5.0," + humidity + ",101300,0,0,300," + global +
           ",0,0,0,0,0,0,180,3.0,5,5,20.0,77777,9,999999999,150,0.1,0,88,0.2," + rain + ",1.0\n";
}

std::string day(int year, int month, int d)
{
    std::string out;
    for (int h = 1; h <= 24; ++h)
        out += hour(year, month, d, h, h < 13 ? "4.0" : "16.5", h < 7 ? "92" : "60", h == 12 ? "480" : "0",
                    "0.5");
    return out;
}

} // namespace

TEST_CASE("hours 1 to 24 become days, with the place of the header")
{
    const auto read = readWeather(header + day(2019, 1, 1) + day(2019, 1, 2), "w.epw");
    REQUIRE(read);
    REQUIRE(read->days.size() == 2);
    REQUIRE(read->place);
    CHECK(read->place->latitude == -43.53);
    CHECK(read->place->longitude == 172.64);
    CHECK(read->place->altitude == 37.0);
    const WeatherDay &first = read->days[0];
    CHECK(formatDate(first.date) == "2019-01-01");
    CHECK((first.low - celsius(0)).si() == doctest::Approx(4.0));
    CHECK((first.high - celsius(0)).si() == doctest::Approx(16.5));
    CHECK(first.humidity == doctest::Approx(68.0));
    CHECK(first.wet->si() == doctest::Approx(6 * 3600.0));
    CHECK(first.rain->si() == doctest::Approx(0.012));
    CHECK(first.radiation == doctest::Approx(480 * 3600e-6)); // 480 Wh/m²
    CHECK(read->gaps.empty());
}

TEST_CASE("figures that stand for missing are missing")
{
    std::string text = header;
    for (int h = 1; h <= 24; ++h)
        text += hour(2019, 1, 1, h, h == 3 ? "99.9" : "4.0", "999", "9999", "999");
    const auto read = readWeather(text, "w.epw");
    REQUIRE(read);
    CHECK((read->days[0].high - celsius(0)).si() == doctest::Approx(4.0));
    CHECK_FALSE(read->days[0].humidity);
    CHECK_FALSE(read->days[0].radiation);
    CHECK_FALSE(read->days[0].rain);
    REQUIRE(read->drops.size() == 1);
    CHECK(read->drops[0].reason == "no_temperature");
}

TEST_CASE("a typical year is no record, unless someone says which year it stands for")
{
    const std::string typical = header + day(1999, 1, 31) + day(1985, 2, 1);
    const auto refused = readWeather(typical, "w.epw");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().what.find("typical year") != std::string::npos);
    CHECK(refused.error().where == "w.epw, line 33");
    const auto read = readWeather(typical, "w.epw", 2026);
    REQUIRE(read);
    CHECK(formatDate(read->days[1].date) == "2026-02-01");
    CHECK(read->gaps.empty());
    CHECK(readWeather(typical, "w.epw", 20260).error().where == "year");
}

TEST_CASE("damage is told by its line")
{
    const auto faultOf = [](const std::string &text) {
        const auto read = readWeather(text, "w.epw");
        REQUIRE_FALSE(read);
        return read.error();
    };
    CHECK(faultOf(header + hour(2019, 1, 1, 1, "abc", "60", "0", "0")).where == "w.epw, line 9, dry bulb");
    CHECK(faultOf(header + hour(2019, 1, 1, 1, "75", "60", "0", "0")).code == Errc::OutOfRange);
    CHECK(faultOf(header + hour(2019, 13, 1, 1, "4", "60", "0", "0")).where == "w.epw, line 9");
    CHECK(faultOf(header + hour(2019, 2, 30, 1, "4", "60", "0", "0")).where == "w.epw, line 9");
    CHECK(faultOf(header + hour(2019, 1, 1, 25, "4", "60", "0", "0")).where == "w.epw, line 9");
    CHECK(faultOf(header + "2019,1,1\n").where == "w.epw, line 9");
    CHECK(
        faultOf(header + hour(2019, 1, 1, 2, "4", "60", "0", "0") + hour(2019, 1, 1, 1, "4", "60", "0", "0"))
            .where == "w.epw, line 10");
    CHECK(faultOf(header).what.find("no day") != std::string::npos);
    CHECK(faultOf(header + hour(2019, 1, 1, 1, "\xFF\xFE", "60", "0", "0")).what.find("no text") !=
          std::string::npos);
}

TEST_CASE("a name in another encoding stands in nobody's way")
{
    std::string latin = header;
    latin.replace(latin.find("Somewhere"), 9, "Z\xFCrich");
    CHECK(readWeather(latin + day(2019, 1, 1), "w.epw"));
}
