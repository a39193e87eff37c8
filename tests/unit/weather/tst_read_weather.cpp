// SPDX-License-Identifier: Apache-2.0
// Tables of days, hours and months: what is understood, and what is refused with its line.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/records/read_weather.hpp"

using namespace snugwalk;

namespace {

double c(Temperature t) { return (t - celsius(0)).si(); }

constexpr const char *file = "w.csv";

Error faultOf(const std::string &text)
{
    const auto read = readWeather(text, file);
    REQUIRE_FALSE(read);
    CHECK_FALSE(read.error().what.empty());
    CHECK_FALSE(read.error().act.empty());
    return read.error();
}

std::string hours(const char *date, int from, int to, const std::string &cells)
{
    std::string out;
    for (int h = from; h < to; ++h)
        out += std::string(date) + "T" + (h < 10 ? "0" : "") + std::to_string(h) + ":00," + cells + "\n";
    return out;
}

} // namespace

TEST_CASE("days with everything")
{
    const auto read = readWeather("date,tmin,tmax,humidity,rain,radiation,wind\n"
                                  "2026-01-01,-3.5,4,81,2.5,3.1,9\n"
                                  "2026-01-02,-1,6,,0,,12\n"
                                  "2026-01-05,0,7,104,,,\n",
                                  file);
    REQUIRE(read);
    REQUIRE(read->days.size() == 3);
    CHECK(c(read->days[0].low) == doctest::Approx(-3.5));
    CHECK(c(read->days[0].high) == doctest::Approx(4));
    CHECK(read->days[0].humidity == 81);
    CHECK(read->days[0].rain->si() == doctest::Approx(0.0025));
    CHECK(read->days[0].radiation == 3.1);
    CHECK_FALSE(read->days[1].humidity);
    CHECK(read->days[2].humidity == 100); // a wet sensor
    REQUIRE(read->gaps.size() == 1);
    CHECK(formatDate(read->gaps[0].from) == "2026-01-03");
    CHECK(formatDate(read->gaps[0].to) == "2026-01-04");
    CHECK(read->otherColumns == std::vector<std::string>{"wind"});
}

TEST_CASE("units by the column's name, quotes, a mark of the byte order")
{
    const auto f = readWeather("\xEF\xBB\xBF"
                               "Date,Tmin (°F),Tmax [F],Rain (in)\n\n\"2026-01-01\",14,50,1\n",
                               file);
    REQUIRE(f);
    CHECK(c(f->days[0].low) == doctest::Approx(-10));
    CHECK(c(f->days[0].high) == doctest::Approx(10));
    CHECK(f->days[0].rain->si() == doctest::Approx(0.0254));
    const auto k = readWeather("date,temp_min_k,temp_max_k,RH %\n2026-01-01,270.15,283.15,60\n", file);
    REQUIRE(k);
    CHECK(c(k->days[0].low) == doctest::Approx(-3));
    CHECK(k->days[0].humidity == 60);
    const auto w = readWeather("date,low_c,high_c,radiation_w\n2026-01-01,1,2,100\n", file);
    REQUIRE(w);
    CHECK(w->days[0].radiation == doctest::Approx(8.64));
}

TEST_CASE("low above high is turned round and told; a day without a temperature is left out and told")
{
    const auto read = readWeather("date,tmin,tmax\n2026-01-01,9,1\n2026-01-02,,5\n2026-01-03,1,5\n", file);
    REQUIRE(read);
    CHECK(c(read->days[0].low) == doctest::Approx(1));
    REQUIRE(read->drops.size() == 2);
    CHECK(read->drops[0].reason == "swapped");
    CHECK(read->drops[0].firstWhere == "w.csv, line 2");
    CHECK(read->drops[1].reason == "no_temperature");
    CHECK(read->gaps.size() == 1);
}

TEST_CASE("faults of days name the line and the reason")
{
    const std::string head = "date,tmin,tmax\n";
    CHECK(faultOf(head + "2026-01-01,nan,4\n").where == "w.csv, line 2, column tmin");
    CHECK(faultOf(head + "2026-01-01,1,inf\n").where == "w.csv, line 2, column tmax");
    CHECK(faultOf(head + "2026-01-01,1,abc\n").what.find("abc") != std::string::npos);
    CHECK(faultOf(head + "2026-01-02,1,2\n2026-01-01,1,2\n").what.find("comes after") != std::string::npos);
    CHECK(faultOf(head + "2026-01-02,1,2\n2026-01-01,1,2\n").where == "w.csv, line 3");
    CHECK(faultOf(head + "2026-01-02,1,2\n2026-01-02,1,2\n").what.find("twice") != std::string::npos);
    CHECK(faultOf(head + "2026-02-30,1,2\n").where == "w.csv, line 2, column date");
    CHECK(faultOf(head + "01/02/2026,1,2\n").where == "w.csv, line 2, column date");
    CHECK(faultOf(head + "2026-01-01,1\n").where == "w.csv, line 2");
    CHECK(faultOf(head + "2026-01-01,70,95\n").act.find("tmin_f") !=
          std::string::npos); // Fahrenheit, not said
    CHECK(faultOf(head + "2026-01-01,-9999,4\n").code == Errc::OutOfRange);
    CHECK(faultOf("date,tmin,tmax,humidity\n2026-01-01,1,2,0.45\n").where ==
          "w.csv, line 2, column humidity"); // a share, not percent
    CHECK(faultOf("date,tmin\n2026-01-01,1\n").what.find("tmax") != std::string::npos);
    CHECK(faultOf("when,tmin,tmax\n").what.find("date") != std::string::npos);
    CHECK(faultOf("when,tmin,tmax\n").where == "w.csv, the header: when, tmin, tmax");
    CHECK(faultOf("date,tmin,tmin\n").what.find("two columns") != std::string::npos);
    CHECK(faultOf("").what.find("no header") != std::string::npos);
    CHECK(faultOf("date;tmin;tmax\n2026-01-01;1;2\n").what.find("semicolons") != std::string::npos);
    CHECK(faultOf(head).what.find("no day") != std::string::npos);
    CHECK(faultOf("date,tmin,tmax\n2026-01-01,\xFF\xFE,1\n").what.find("no text") != std::string::npos);
}

TEST_CASE("hours become days: extremes, mean humidity, wet hours counted, short days left out")
{
    const std::string text = "time,temperature,rh,rain,radiation_w\n" +
                             hours("2026-05-01", 0, 8, "2,95,0.5,0") +
                             hours("2026-05-01", 8, 24, "14,50,0,300") +
                             hours("2026-05-02", 0, 10, "5,90,0,0") + hours("2026-05-03", 0, 24, "-2,95,,");
    const auto read = readWeather(text, file);
    REQUIRE(read);
    REQUIRE(read->days.size() == 2);
    const WeatherDay &first = read->days[0];
    CHECK(c(first.low) == doctest::Approx(2));
    CHECK(c(first.high) == doctest::Approx(14));
    CHECK(first.humidity == doctest::Approx((8 * 95 + 16 * 50) / 24.0));
    CHECK(first.wet->si() == doctest::Approx(8 * 3600.0));
    CHECK(first.rain->si() == doctest::Approx(0.004));
    CHECK(first.radiation == doctest::Approx(200 * 0.0864)); // 16 hours of 300 W/m²
    CHECK(read->days[1].wet->si() == 0.0);                   // damp, but frozen
    CHECK_FALSE(read->days[1].rain);
    REQUIRE(read->drops.size() == 1);
    CHECK(read->drops[0].reason == "short_day");
    CHECK(read->gaps.size() == 1);
}

TEST_CASE("times: with seconds and offset, as shown; ten-minute steps weigh alike; backwards is refused")
{
    const auto read = readWeather(
        "time,t\n" +
            [] {
                std::string rows;
                for (int m = 0; m < 1440; m += 10) {
                    const std::string hh = std::to_string(100 + m / 60).substr(1),
                                      mm = std::to_string(100 + m % 60).substr(1);
                    rows += "2026-05-01 " + hh + ":" + mm + ":00+13:00," + std::to_string(m / 60) + "\n";
                }
                return rows;
            }(),
        file);
    REQUIRE(read);
    CHECK(read->days.size() == 1);
    CHECK(c(read->days[0].high) == doctest::Approx(23));
    CHECK(faultOf("time,t\n2026-05-01T05:00,1\n2026-05-01T05:00,1\n").where == "w.csv, line 3");
    CHECK(faultOf("time,t\n2026-05-01T25:00,1\n").where == "w.csv, line 2, column time");
    CHECK(faultOf("time,t\n2026-05-01,1\n").where == "w.csv, line 2, column time");
    CHECK(faultOf("time,rh\n2026-05-01T05:00,1\n").what.find("temperature") != std::string::npos);
}

TEST_CASE("more than eleven years in one record are refused")
{
    std::string text = "date,tmin,tmax\n";
    CivilDate date = parseDate("2000-01-01").value();
    for (std::size_t i = 0; i <= weatherDaysLimit; ++i, date = addDays(date, 1))
        text += formatDate(date) + ",1,2\n";
    CHECK(faultOf(text).code == Errc::OutOfRange);
}

TEST_CASE("day ranges for frost: with and without dates, gaps are days without a reading")
{
    const auto plain = readDayRanges("tmin,tmax\n-3,4\n,\n-1,2\n", file);
    REQUIRE(plain);
    CHECK(plain->size() == 3);
    CHECK_FALSE((*plain)[1]);
    const auto dated = readDayRanges("date,tmin,tmax\n2026-01-01,-3,4\n2026-01-04,-1,2\n", file);
    REQUIRE(dated);
    CHECK(dated->size() == 4);
    CHECK((*dated)[3].has_value());
    CHECK(readDayRanges("date,tmin,tmax\n2026-01-02,1,2\n2026-01-02,1,2\n", file).error().where ==
          "w.csv, line 3");
    CHECK(readDayRanges("date,tmin,tmax\n0001-01-02,1,2\n9999-01-02,1,2\n", file).error().code ==
          Errc::OutOfRange);
    CHECK(readDayRanges("tmin,tmax\n", file).error().code == Errc::InvalidInput);
    CHECK(readDayRanges("a,b\n1,2\n", file).error().what.find("tmin") != std::string::npos);
}

TEST_CASE("twelve months, not eleven or thirteen")
{
    const auto rows = [](int n) {
        std::string text = "t,p\n";
        for (int i = 0; i < n; ++i)
            text += std::to_string(i) + "," + std::to_string(10 * i) + "\n";
        return text;
    };
    CHECK(readClimateMonths(rows(12), file)->rain[11] == 110);
    CHECK(readClimateMonths(rows(11), file).error().what.find("11 months") != std::string::npos);
    CHECK(readClimateMonths(rows(13), file).error().where == "w.csv, line 14");
    CHECK(readClimateMonths("t,p\n1,\n", file).error().where == "w.csv, line 2");
    CHECK(readClimateMonths("t_f,p_in\n" + rows(12).substr(4), file)->temperature[0] ==
          doctest::Approx(-160.0 / 9));
    CHECK(readClimateMonths("month,p\n1,2\n", file).error().what.find("column t") != std::string::npos);
}
