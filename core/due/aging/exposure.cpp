// SPDX-License-Identifier: Apache-2.0
// Daily weather and trips gathered into months.
#include "due/aging/exposure.hpp"

#include <algorithm>
#include <cmath>

#include "road/shake.hpp"

namespace snugwalk {
namespace {

constexpr double daysPerYear = 365.25;
constexpr double leastRate = 0.25;
constexpr double mostRate = 4.0;
constexpr auto shakeIndex = static_cast<std::size_t>(AgeDriver::Shake);
constexpr std::size_t weatherCount = std::tuple_size_v<decltype(DayRates::rate)>;

CivilDate dateOf(double day) { return std::chrono::sys_days(std::chrono::days(std::llround(day))); }

double nextMonth(double day)
{
    const CivilDate date = dateOf(day);
    return dayNumber(addMonths(date.year() / date.month() / 1, 1));
}

std::size_t monthOf(double day) { return static_cast<unsigned>(dateOf(day).month()) - 1; }

RateRange held(RateRange rate)
{
    const auto hold = [](double v) { return std::clamp(v, leastRate, mostRate); };
    return {hold(rate.value), hold(rate.low), hold(rate.high)};
}

// Smooth-road distance by day.
struct ShakenDay {
    double day = 0.0;
    double until = 0.0;
    double metres = 0.0;
    double low = 0.0;
    double high = 0.0;
};

double within(const ShakenDay &s, double from, double until)
{
    if (s.until <= s.day)
        return s.day >= from && s.day < until ? 1.0 : 0.0;
    return std::max(std::min(s.until, until) - std::max(s.day, from), 0.0) / (s.until - s.day);
}

std::vector<ShakenDay> shaken(const RigHistory &history, LocalTime now)
{
    std::vector<ShakenDay> all;
    const RoadHabit habit = roadHabitOf(history.trips);
    for (const Trip &trip : history.trips) {
        if (trip.start.instant > now.instant || !(trip.summary.length > Distance()))
            continue;
        const TripShake shake = shakeOf(trip, habit);
        all.push_back({momentOf(trip.start), momentOf(trip.end), shake.equivalent.si(), shake.low.si(),
                       shake.high.si()});
    }
    return all;
}

void addPlanned(const Ahead &ahead, std::vector<ShakenDay> &all)
{
    for (const PlannedDrive &drive : ahead.drives)
        all.push_back({dayNumber(drive.from), dayNumber(drive.until) + 1.0, drive.equivalent.si(),
                       drive.equivalent.si() * drive.least, drive.equivalent.si() * drive.most});
}

RateRange shakeWithin(const std::vector<ShakenDay> &all, double from, double until)
{
    RateRange sum{0.0, 0.0, 0.0};
    for (const ShakenDay &s : all) {
        const double part = within(s, from, until);
        sum.value += part * s.metres;
        sum.low += part * s.low;
        sum.high += part * s.high;
    }
    const double reference = referenceYearly().si() * (until - from) / daysPerYear;
    return held({sum.value / reference, sum.low / reference, sum.high / reference});
}

// Mean of each weather driver over days [from, until) of a run of days that begins at `first`.
void weatherWithin(const std::vector<DayRates> &days, double first, double from, double until,
                   DriverRates &rates)
{
    const double last = first + static_cast<double>(days.size());
    for (std::size_t k = 0; k < weatherCount; ++k) {
        RateRange sum{0.0, 0.0, 0.0};
        for (double day = from; day < until; day += 1.0) {
            const RateRange rate = day >= first && day < last
                                       ? days[static_cast<std::size_t>(day - first)].rate[k]
                                       : RateRange();
            sum.value += rate.value;
            sum.low += rate.low;
            sum.high += rate.high;
        }
        const double n = until - from;
        rates[k] = held({sum.value / n, sum.low / n, sum.high / n});
    }
}

// What driving on as before shakes: the forecast's distance at the roughness driven so far.
struct UsualShake {
    bool known = false;
    std::array<double, 12> monthly{}; ///< metres a month
    RateRange factor;                 ///< smooth-road distance over distance
};

UsualShake usualShake(const RigHistory &history, const UsageForecast &usage,
                      const std::vector<ShakenDay> &all, LocalTime now)
{
    UsualShake usual;
    double driven = 0.0;
    for (const Trip &trip : history.trips) {
        if (trip.start.instant <= now.instant)
            driven += trip.summary.length.si();
    }
    usual.known = driven > 0.0;
    if (!usual.known)
        return usual;
    usual.factor = {0.0, 0.0, 0.0};
    for (const ShakenDay &s : all) {
        usual.factor.value += s.metres / driven;
        usual.factor.low += s.low / driven;
        usual.factor.high += s.high / driven;
    }
    for (std::size_t m = 0; m < 12; ++m)
        usual.monthly[m] = usage.yearly.si() * usage.shares[m];
    return usual;
}

RateRange usualRate(const UsualShake &usual, std::size_t month)
{
    if (!usual.known)
        return {};
    const double over = usual.monthly[month] * 12.0 / referenceYearly().si();
    return held({over * usual.factor.value, over * usual.factor.low, over * usual.factor.high});
}

} // namespace

double momentOf(const LocalTime &time)
{
    const Instant local = time.instant + std::chrono::minutes(time.offset.minutes);
    return std::chrono::duration<double, std::chrono::days::period>(local.time_since_epoch()).count();
}

double dayNumber(CivilDate date)
{
    return static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count());
}

Distance referenceYearly() { return kilometres(10'000.0); }

Exposure exposureOf(const RigHistory &history, const UsageForecast &usage, LocalTime now, const Ahead &ahead)
{
    const Weathering &weather = history.weathering;
    const double today = dayNumber(civilDate(now));
    std::vector<ShakenDay> past = shaken(history, now);
    const UsualShake usual = usualShake(history, usage, past, now);
    double begin = weather.days.empty() ? today : std::min(dayNumber(weather.first), today);
    for (const ShakenDay &s : past)
        begin = std::min(begin, std::floor(s.day));
    Exposure out;
    for (double from = begin; from < today;) {
        Stretch stretch{from, std::min(nextMonth(from), today), {}};
        weatherWithin(weather.days, dayNumber(weather.first), from, stretch.until, stretch.rates);
        if (usual.known)
            stretch.rates[shakeIndex] = shakeWithin(past, from, stretch.until);
        from = stretch.until;
        out.known.push_back(stretch);
    }
    double end = today;
    if (!ahead.isEmpty()) {
        std::vector<ShakenDay> planned;
        addPlanned(ahead, planned);
        const double planEnd = dayNumber(ahead.from) + static_cast<double>(ahead.days.size());
        for (double from = today; from < planEnd;) {
            Stretch stretch{from, std::min(nextMonth(from), planEnd), {}};
            weatherWithin(ahead.days, dayNumber(ahead.from), from, stretch.until, stretch.rates);
            stretch.rates[shakeIndex] = shakeWithin(planned, from, stretch.until);
            from = stretch.until;
            out.known.push_back(stretch);
        }
        end = std::max(today, planEnd);
    }
    if (out.known.empty())
        out.known.push_back({end - 1.0, end, {}});
    for (int i = 0; i < 13 && out.usual.size() < 13; ++i) { // the first may be the rest of a month
        Stretch stretch{end, nextMonth(end), {}};
        const DayRates &month = weather.usual[monthOf(end)];
        for (std::size_t k = 0; k < weatherCount; ++k)
            stretch.rates[k] = held(month.rate[k]);
        stretch.rates[shakeIndex] = usualRate(usual, monthOf(end));
        end = stretch.until;
        out.usual.push_back(stretch);
    }
    // a year to the day, so that it can follow itself
    const double yearEnd = out.usual.front().from + 365.0;
    while (out.usual.back().from >= yearEnd)
        out.usual.pop_back();
    out.usual.back().until = yearEnd;
    return out;
}

} // namespace snugwalk
