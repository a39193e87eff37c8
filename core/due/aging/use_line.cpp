// SPDX-License-Identifier: Apache-2.0
// Trips behind, the plan, and the forecast ahead, as one line.
#include "due/aging/use_line.hpp"

#include <algorithm>
#include <cmath>

#include "due/aging/exposure.hpp"
#include "road/shake.hpp"

namespace snugwalk {
namespace {

constexpr double daysPerYear = 365.25;
constexpr double sixtyYears = 21'915.0;

// What changes the slope, or jumps.
struct Step {
    double day = 0.0;
    double jump = 0.0;
    double slope = 0.0;
};

void addRun(double from, double until, double metres, std::vector<Step> &steps)
{
    if (!(metres > 0.0))
        return;
    if (until <= from) {
        steps.push_back({from, metres, 0.0});
        return;
    }
    const double slope = metres / (until - from);
    steps.push_back({from, 0.0, slope});
    steps.push_back({until, 0.0, -slope});
}

// The broken line that steps make; a jump is two knots on one day.
void join(std::vector<Step> &steps, double end, std::vector<double> &days, std::vector<double> &used)
{
    std::sort(steps.begin(), steps.end(), [](const Step &a, const Step &b) {
        return a.day != b.day ? a.day < b.day : a.jump != b.jump ? a.jump < b.jump : a.slope < b.slope;
    });
    double slope = 0.0;
    double total = 0.0;
    double day = steps.empty() ? end : steps.front().day;
    const auto knot = [&](double at) {
        total += std::max(slope, 0.0) * (at - day);
        day = at;
        days.push_back(day);
        used.push_back(total);
    };
    for (const Step &step : steps) {
        if (step.day > end)
            break;
        knot(step.day);
        slope += step.slope;
        if (step.jump > 0.0) {
            total += step.jump;
            knot(step.day);
        }
    }
    knot(std::max(end, day));
}

double between(const std::vector<double> &xs, const std::vector<double> &ys, double x)
{
    if (x <= xs.front())
        return ys.front();
    if (x >= xs.back())
        return ys.back();
    const auto after = std::upper_bound(xs.begin(), xs.end(), x);
    const auto i = static_cast<std::size_t>(after - xs.begin());
    return ys[i - 1] + (x - xs[i - 1]) / (xs[i] - xs[i - 1]) * (ys[i] - ys[i - 1]);
}

double chanceOf(UseCase which) { return which == UseCase::Much ? 0.1 : which == UseCase::Likely ? 0.5 : 0.9; }

// Metres for even days: exact for a rate, a table of first passages for lumps.
void fillMetres(const UsageForecast &usage, UseCase which, std::vector<double> &even,
                std::vector<double> &metres)
{
    even = {0.0};
    metres = {0.0};
    const double p = chanceOf(which);
    if (usage.level == UsageLevel::Standing)
        return;
    if (usage.level != UsageLevel::Trips) {
        const double hundredYears = 36'525.0;
        even.push_back(hundredYears);
        metres.push_back(hundredYears / daysUntil(usage.rate, 1.0, p));
        return;
    }
    for (double left = 10'000.0; left < 1e8; left *= 2.0) {
        const double days = daysUntil(usage.lumps, left + usage.overshoot.si(), p);
        if (!(days < 36'525.0))
            break;
        if (days > even.back()) {
            even.push_back(days);
            metres.push_back(left);
        }
    }
}

} // namespace

UseLine::UseLine(const RigHistory &history, const UsageForecast &usage, LocalTime now, UseCase which,
                 Roads roads, const Ahead &ahead)
{
    const RoadHabit habit = roadHabitOf(history.trips);
    std::vector<Step> steps;
    double driven = 0.0;
    double consumed = 0.0;
    const double today = momentOf(now);
    for (const Trip &trip : history.trips) {
        if (trip.start.instant > now.instant || !(trip.summary.length > Distance()))
            continue;
        const double metres = trip.summary.length.si();
        const double used = metres * (roads == Roads::Smooth ? 1.0 : shakeOf(trip, habit).consumption);
        driven += metres;
        consumed += used;
        addRun(momentOf(trip.start), momentOf(trip.end), used, steps);
    }
    m_consumption = driven > 0.0 ? consumed / driven : 1.0;
    double end = today;
    if (!ahead.isEmpty()) {
        end = std::max(today, dayNumber(ahead.from) + static_cast<double>(ahead.days.size()));
        for (const PlannedDrive &drive : ahead.drives)
            addRun(std::max(dayNumber(drive.from), today), std::max(dayNumber(drive.until) + 1.0, today),
                   drive.distance.si() * (roads == Roads::Smooth ? 1.0 : drive.consumption), steps);
    }
    join(steps, end, m_days, m_used);
    m_season = {0.0};
    m_even = {0.0};
    CivilDate date = std::chrono::sys_days(std::chrono::days(std::llround(std::floor(m_days.back()))));
    const double first = m_days.back();
    for (int month = 0; month < 13; ++month) {
        const CivilDate next = addMonths(date.year() / date.month() / 1, 1);
        const double until = std::min(dayNumber(next) - first, 365.0);
        const double weight = usage.shares[static_cast<unsigned>(date.month()) - 1] * 12.0;
        m_even.push_back(m_even.back() + weight * (until - m_season.back()));
        m_season.push_back(until);
        if (until >= 365.0)
            break;
        date = next;
    }
    fillMetres(usage, which, m_evenKnots, m_metres);
}

UseLine UseLine::reference(double consumption)
{
    UseLine line;
    line.m_consumption = consumption;
    line.m_days = {0.0};
    line.m_used = {0.0};
    line.m_season = {0.0, 365.0};
    line.m_even = {0.0, 365.0};
    line.m_evenKnots = {0.0, daysPerYear * 1000.0};
    line.m_metres = {0.0, referenceYearly().si() * 1000.0};
    return line;
}

double UseLine::usualAt(double days) const
{
    const double years = std::floor(days / 365.0);
    const double even = years * m_even.back() + between(m_season, m_even, days - years * 365.0);
    return m_consumption * between(m_evenKnots, m_metres, even);
}

double UseLine::at(double day) const
{
    const double used = between(m_days, m_used, day);
    return day <= m_days.back() ? used : used + usualAt(day - m_days.back());
}

std::optional<double> UseLine::dayWhen(double from, double metres) const
{
    const double wanted = at(from) + metres;
    double low = from;
    double high = from + sixtyYears;
    if (at(high) < wanted)
        return std::nullopt;
    while (high - low > 1e-6) {
        const double day = (low + high) / 2.0;
        (at(day) < wanted ? low : high) = day;
    }
    return high;
}

} // namespace snugwalk
