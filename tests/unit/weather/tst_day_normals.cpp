// SPDX-License-Identifier: Apache-2.0
// A year through twelve months by [SHENG-ZWIERS-1998]: means kept, no jumps, bounds.
#include <cmath>
#include <numbers>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/day_normals.hpp"

using namespace snugwalk;

namespace {

constexpr std::array<double, 12> seattle = {5.6,  6.4,  8.1,  10.7, 14.3, 16.8,
                                            19.9, 20.1, 17.0, 11.9, 7.9,  5.3};

CivilDate dayOf(int year, long long offset)
{
    return addDays(CivilDate{std::chrono::year{year}, std::chrono::January, std::chrono::day{1}}, offset);
}

} // namespace

TEST_CASE("the mean over each month is the month's own, in plain and leap years")
{
    const MonthlyCurve curve(seattle);
    for (const int year : {2026, 2028}) {
        std::array<double, 12> sum{};
        std::array<int, 12> count{};
        for (CivilDate d = dayOf(year, 0); d.year() == std::chrono::year{year}; d = addDays(d, 1)) {
            sum.at(static_cast<unsigned>(d.month()) - 1) += curve.on(d);
            ++count.at(static_cast<unsigned>(d.month()) - 1);
        }
        for (std::size_t m = 0; m < 12; ++m) {
            CAPTURE(m);
            CHECK(std::abs(sum.at(m) / count.at(m) - seattle.at(m)) < 0.015); // 0.1 % of the swing of 14.8
        }
    }
}

TEST_CASE("no jump from day to day, nor over New Year")
{
    const MonthlyCurve curve(seattle);
    for (long long i = 0; i < 730; ++i)
        CHECK(std::abs(curve.on(dayOf(2027, i + 1)) - curve.on(dayOf(2027, i))) < 0.25);
}

TEST_CASE("a steady year stays steady; a cosine's months keep their means, its turn stands out by 2.3 %")
{
    std::array<double, 12> same{};
    same.fill(7.25);
    CHECK(MonthlyCurve(same).on(dayOf(2026, 200)) == doctest::Approx(7.25).epsilon(1e-9));
    std::array<double, 12> wave{};
    for (std::size_t m = 0; m < 12; ++m) // mean over a month of a cosine that peaks in mid July
        wave.at(m) = 10.0 * std::cos(2 * std::numbers::pi * (static_cast<double>(m) - 6.0) / 12.0) *
                     std::sin(std::numbers::pi / 12) / (std::numbers::pi / 12);
    // its turn is a corner: 10 sin(15 deg)/(pi/12) * 8/(6 + 2 cos(30 deg)) = 10.2290, half a day before 16
    // July
    CHECK(MonthlyCurve(wave).on(dayOf(2026, 196)) == doctest::Approx(10.2290).epsilon(1e-3));
}

TEST_CASE("low, mean and high stay in order; humidity and rain within what can be")
{
    ClimateNormals normals;
    for (std::size_t m = 0; m < 12; ++m)
        normals.months.at(m) = {20.0, m % 2 == 0 ? 10.0 : 19.9, m % 2 == 0 ? 30.0 : 20.1,
                                m == 0 ? 300.0 : 0.0, m == 3 ? 99.0 : 5.0};
    const DayNormals days(normals);
    for (long long i = 0; i < 366; ++i) {
        const DayNormal day = days.on(dayOf(2028, i));
        CHECK(day.low <= day.mean);
        CHECK(day.mean <= day.high);
        CHECK(day.humidity >= 1.0);
        CHECK(day.humidity <= 100.0);
        CHECK(day.rain >= 0.0);
    }
}
