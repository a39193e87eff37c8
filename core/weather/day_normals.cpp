// SPDX-License-Identifier: Apache-2.0
// A cyclic system of twelve, and lines.
#include "weather/day_normals.hpp"

#include <algorithm>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t months = 12;
constexpr int rounds = 24; // the off-diagonal weighs a third: the error shrinks by 9 each round, to nothing

unsigned daysOf(std::chrono::year_month month)
{
    return static_cast<unsigned>((month / std::chrono::last).day());
}

template <typename Read>
std::array<double, months> each(const ClimateNormals &normals, Read read)
{
    std::array<double, months> out{};
    std::transform(normals.months.begin(), normals.months.end(), out.begin(), read);
    return out;
}

std::array<double, months> rainADay(const ClimateNormals &normals)
{
    std::array<double, months> out{};
    for (std::size_t i = 0; i < months; ++i) {
        const std::chrono::year_month month{std::chrono::year{2001},
                                            std::chrono::month{static_cast<unsigned>(i + 1)}};
        out.at(i) = normals.months.at(i).rainMm / daysOf(month);
    }
    return out;
}

} // namespace

MonthlyCurve::MonthlyCurve(const std::array<double, months> &means) : m_knots(means)
{
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t i = 0; i < months; ++i)
            m_knots.at(i) =
                (8.0 * means.at(i) - m_knots.at((i + 11) % months) - m_knots.at((i + 1) % months)) / 6.0;
    }
}

double MonthlyCurve::on(CivilDate date) const
{
    const unsigned days = daysOf(date.year() / date.month());
    const std::size_t month = (static_cast<unsigned>(date.month()) - 1) % months;
    const double fromMiddle = (static_cast<unsigned>(date.day()) - 0.5) / days - 0.5;
    const std::size_t other = fromMiddle < 0.0 ? (month + 11) % months : (month + 1) % months;
    const double share = fromMiddle < 0.0 ? -fromMiddle : fromMiddle;
    return m_knots.at(month) * (1.0 - share) + m_knots.at(other) * share;
}

DayNormals::DayNormals(const ClimateNormals &normals)
    : m_mean(each(normals, [](const MonthlyNormal &m) { return m.meanC; })),
      m_low(each(normals, [](const MonthlyNormal &m) { return m.lowC; })),
      m_high(each(normals, [](const MonthlyNormal &m) { return m.highC; })),
      m_humidity(each(normals, [](const MonthlyNormal &m) { return m.humidityPct; })),
      m_rain(rainADay(normals))
{}

DayNormal DayNormals::on(CivilDate date) const
{
    DayNormal day;
    const double mean = m_mean.on(date);
    day.mean = celsius(mean);
    day.low = celsius(std::min(mean, m_low.on(date)));
    day.high = celsius(std::max(mean, m_high.on(date)));
    day.humidity = std::clamp(m_humidity.on(date), 1.0, 100.0);
    day.rain = std::max(0.0, m_rain.on(date));
    return day;
}

} // namespace snugwalk
