// SPDX-License-Identifier: Apache-2.0
// Multiples of nice numbers, and months.
#include "report/plot/plot_ticks.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double daysAYear = 365.25;
constexpr double mostMonthTicks = 80; // a level with more would never fit

struct NiceNumber {
    double lead = 1.0; ///< 1, 2, 5 or 10
    int power = 0;
    [[nodiscard]] double value() const { return lead * std::pow(10.0, power); }
    // By the inverse where the step is a fraction, so that 3 steps of 0.1 are 0.3 and not
    // 0.30000000000000004.
    [[nodiscard]] double times(double k) const
    {
        return power >= 0 ? k * value() : k * lead / std::pow(10.0, -power);
    }
};

NiceNumber niceNumber(double span, int wanted)
{
    const double rough = span / wanted;
    NiceNumber nice;
    nice.power = static_cast<int>(std::floor(std::log10(rough)));
    const double lead = rough / std::pow(10.0, nice.power);
    nice.lead = lead >= std::sqrt(50.0)   ? 10.0
                : lead >= std::sqrt(10.0) ? 5.0
                : lead >= std::sqrt(2.0)  ? 2.0
                                          : 1.0;
    return nice;
}

CivilDate dateAt(double day)
{
    return CivilDate(std::chrono::sys_days(std::chrono::days(static_cast<int>(std::floor(day)))));
}

double dayOf(CivilDate date)
{
    return static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count());
}

int monthOf(CivilDate date) { return static_cast<int>(static_cast<unsigned>(date.month())); }

} // namespace

double niceStep(double span, int wanted) { return niceNumber(span, wanted).value(); }

std::vector<double> niceTicks(double from, double to, int wanted)
{
    std::vector<double> ticks;
    if (!(to > from) || wanted < 1)
        return ticks;
    const NiceNumber step = niceNumber(to - from, wanted);
    double k = std::round(from / step.value());
    if (step.times(k) < from)
        k += 1.0;
    for (; step.times(k) <= to; k += 1.0)
        ticks.push_back(step.times(k) + 0.0); // no negative zero
    return ticks;
}

NiceRange niceRange(double from, double to, int wanted)
{
    if (!(to > from))
        return {from - 0.5, from + 0.5};
    const NiceNumber step = niceNumber(to - from, wanted);
    const double slack = 1e-9; // what arithmetic adds to a multiple opens no further step
    return {step.times(std::floor(from / step.value() + slack)) + 0.0,
            step.times(std::ceil(to / step.value() - slack)) + 0.0};
}

int decimalsOf(double step)
{
    for (int decimals = 0; decimals < 9; ++decimals) {
        const double scaled = step * std::pow(10.0, decimals);
        if (std::abs(scaled - std::round(scaled)) < 1e-6)
            return decimals;
    }
    return 9;
}

std::vector<std::vector<PlotTick>> numberLevels(double from, double to,
                                                const std::function<std::string(double, int)> &words)
{
    std::vector<std::vector<PlotTick>> levels;
    for (const int wanted : {8, 5, 3, 2}) {
        std::vector<PlotTick> level;
        const std::vector<double> ticks = niceTicks(from, to, wanted);
        const int decimals = to > from ? decimalsOf(niceStep(to - from, wanted)) : 0;
        for (const double at : ticks)
            level.push_back({at, words(at, decimals)});
        if (!level.empty() && (levels.empty() || levels.back().size() != level.size()))
            levels.push_back(std::move(level));
    }
    return levels;
}

std::vector<std::vector<PlotTick>> powerLevels(double from, double to,
                                               const std::function<std::string(double, int)> &words)
{
    const int first = static_cast<int>(std::lround(std::log10(from)));
    const int last = static_cast<int>(std::lround(std::log10(to)));
    const auto tick = [&](int power, double lead) {
        const double at = lead * std::pow(10.0, power);
        return PlotTick{at, words(at, std::max(0, -power))};
    };
    std::vector<std::vector<PlotTick>> levels(3);
    for (int power = first; power <= last; ++power) {
        levels[0].push_back(tick(power, 1.0));
        if (power < last) {
            levels[0].push_back(tick(power, 2.0));
            levels[0].push_back(tick(power, 5.0));
        }
        levels[1].push_back(tick(power, 1.0));
        if ((power - first) % 2 == 0)
            levels[2].push_back(tick(power, 1.0));
    }
    return levels;
}

std::vector<std::vector<PlotTick>> dateLevels(double from, double to, const DateWords &words)
{
    std::vector<std::vector<PlotTick>> levels;
    if (!(to > from))
        return levels;
    for (const int every : {1, 3, 6, 12, 24, 60, 120}) {
        if ((to - from) / daysAYear * 12.0 / every > mostMonthTicks)
            continue;
        CivilDate at = dateAt(from).year() / std::chrono::January / 1;
        while (every > 12 && static_cast<int>(at.year()) % (every / 12) != 0)
            at = addMonths(at, -12);
        std::vector<PlotTick> level;
        for (; dayOf(at) <= to; at = addMonths(at, every)) {
            if (dayOf(at) < from)
                continue;
            const bool named = every < 12;
            const bool withYear = level.empty() || monthOf(at) == 1;
            level.push_back({dayOf(at), !named     ? std::to_string(static_cast<int>(at.year()))
                                        : withYear ? words.monthOfYear(at)
                                                   : words.month(at)});
        }
        if (!level.empty() && (levels.empty() || levels.back().size() != level.size()))
            levels.push_back(std::move(level));
    }
    return levels;
}

} // namespace snugwalk
