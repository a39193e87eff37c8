// SPDX-License-Identifier: Apache-2.0
// Words and axes that all plots share.
#include "report/plot/plot_voice.hpp"

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

PlotAxis PlotVoice::dateAxis(double from, double to) const
{
    PlotAxis axis;
    axis.from = from;
    axis.to = to;
    axis.levels = dateLevels(from, to, dateWords());
    return axis;
}

PlotVoice paperVoice(const Texts &texts, UnitSystem units, std::string_view language)
{
    PlotVoice voice{texts, units, plainWriting()};
    if (language != "en")
        voice.writing.number = [](double value, int decimals) {
            return replaceAll(fixed(value, decimals), ".", ",");
        };
    return voice;
}

double plotDay(CivilDate date)
{
    return static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count());
}

std::string plotData(double value) { return shortest(value); }

} // namespace snugwalk
