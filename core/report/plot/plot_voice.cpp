// SPDX-License-Identifier: Apache-2.0
// Words and axes that all plots share.
#include "report/plot/plot_voice.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "report/shortest.hpp"

namespace snugwalk {
namespace {

constexpr int stepsUp = 5; // an axis ends on a step of about a fifth of it

std::string monthSlug(std::string_view group, CivilDate date)
{
    return std::string(group) + std::to_string(static_cast<unsigned>(date.month()));
}

std::string yearOf(CivilDate date) { return std::to_string(static_cast<int>(date.year())); }

} // namespace

std::string PlotVoice::say(std::string_view slug, const std::vector<std::string> &arguments) const
{
    return texts.phrase("plot_" + std::string(slug), arguments);
}

std::string PlotVoice::range(double low, double high, int decimals) const
{
    const std::string from = number(low, decimals);
    const std::string to = number(high, decimals);
    return from == to ? from : say("range", {from, to});
}

std::string PlotVoice::roughly(double value) const
{
    if (!(std::abs(value) >= 100.0))
        return number(value, 0);
    const double step = std::pow(10.0, std::floor(std::log10(std::abs(value))) - 1.0);
    return number(std::round(value / step) * step, 0);
}

std::string PlotVoice::month(CivilDate date) const
{
    return texts.phrase("month_of_year", {texts.phrase(monthSlug("month_", date)), yearOf(date)});
}

std::string PlotVoice::shortMonth(CivilDate date) const { return say(monthSlug("month_", date)); }

std::string PlotVoice::shortMonthOfYear(CivilDate date) const
{
    return shortMonth(date) + " " + yearOf(date);
}

DateWords PlotVoice::dateWords() const
{
    return {[this](CivilDate date) { return shortMonth(date); },
            [this](CivilDate date) { return shortMonthOfYear(date); }};
}

PlotAxis PlotVoice::numberAxis(std::string title, double from, double to) const
{
    const NiceRange range = niceRange(from, to, stepsUp);
    PlotAxis axis;
    axis.title = std::move(title);
    axis.from = range.from;
    axis.to = range.to;
    axis.levels = numberLevels(range.from, range.to,
                               [this](double value, int decimals) { return number(value, decimals); });
    return axis;
}

PlotAxis PlotVoice::powerAxis(std::string title, double from, double to) const
{
    PlotAxis axis;
    axis.title = std::move(title);
    axis.log = true;
    axis.from = std::pow(10.0, std::floor(std::log10(from)));
    axis.to = std::pow(10.0, std::ceil(std::log10(std::max(to, from))));
    if (!(axis.to > axis.from))
        axis.to = axis.from * 10.0;
    axis.levels = powerLevels(axis.from, axis.to,
                              [this](double value, int decimals) { return number(value, decimals); });
    return axis;
}

PlotAxis PlotVoice::dateAxis(double from, double to) const
{
    PlotAxis axis;
    axis.from = from;
    axis.to = to;
    axis.levels = dateLevels(from, to, dateWords());
    return axis;
}

namespace {

// "348 272": from ten thousand on in groups of three, by a space that never breaks a line.
std::string grouped(std::string number)
{
    const std::size_t end = std::min(number.find_first_of(".,"), number.size());
    const std::size_t begin = number.starts_with('-') ? 1 : 0;
    if (end - begin < 5)
        return number;
    for (std::size_t at = end - 3; at > begin; at -= std::min<std::size_t>(3, at))
        number.insert(at, "\u202f");
    return number;
}

} // namespace

PlotVoice paperVoice(const Texts &texts, UnitSystem units, std::string_view language)
{
    PlotVoice voice{texts, units, plainWriting()};
    const bool comma = language != "en";
    voice.writing.number = [comma](double value, int decimals) {
        std::string number = fixed(value, decimals);
        return grouped(comma ? replaceAll(std::move(number), ".", ",") : std::move(number));
    };
    return voice;
}

double plotDay(CivilDate date)
{
    return static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count());
}

std::string plotData(double value) { return shortest(value); }

} // namespace snugwalk
