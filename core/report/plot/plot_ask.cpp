// SPDX-License-Identifier: Apache-2.0
// From a wish to the question it asks.
#include "report/plot/plot_ask.hpp"

#include <algorithm>
#include <map>

#include "round/state.hpp"

namespace snugwalk {
namespace {

// The last `most` of them; whether some were left out.
template <typename Month>
bool keepLast(std::vector<Month> &months, int most)
{
    if (most <= 0 || months.size() <= static_cast<std::size_t>(most))
        return false;
    months.erase(months.begin(), months.end() - most);
    return true;
}

Plot weatheringAsked(const PlotAsk &ask, const Catalogue &catalogue, const RigHistory &history, LocalTime now,
                     const PlotVoice &voice)
{
    const std::string slug = ask.point.empty() ? std::string(weatheredPoint) : ask.point;
    const Point *point = catalogue.find(slug);
    const AgeWeights ages = point == nullptr ? AgeWeights() : weightsOf(*point);
    std::vector<MonthOfWeather> months = weatherByMonth(history, ages, now);
    const bool cut = keepLast(months, ask.months);
    Plot plot = weatheringPlot(months, voice.texts.point(slug).title, voice);
    plot.cut = cut;
    return plot;
}

Plot shakeAsked(const PlotAsk &ask, const RigHistory &history, LocalTime now, const PlotVoice &voice)
{
    std::vector<MonthOfRoad> months = roadByMonth(history, now);
    const bool cut = keepLast(months, ask.months);
    Plot plot = shakePlot(months, voice);
    plot.cut = cut;
    return plot;
}

Plot concernAsked(const PlotAsk &ask, const Catalogue &catalogue, const RigHistory &history, LocalTime now,
                  const PlotVoice &voice)
{
    const ConcernOf whose{ask.point, ask.finding};
    std::string what = ask.point.empty() ? std::string() : voice.texts.point(ask.point).title;
    if (const FindingHistory *finding = findHistory(history, ask.finding))
        what = voice.texts.point(finding->finding.point).title + ": " +
               voice.texts.word("defects", finding->finding.defect);
    return concernPlot(concernsThen(statesThen(catalogue, history, now, mostWalksBack), whose), what, voice);
}

// What has a limit to be held against comes before what only goes with it, such as the air's temperature.
std::vector<Plot> readingsOf(const std::string &wanted, const Catalogue &catalogue, const RigHistory &history,
                             LocalTime now, const PlotVoice &voice)
{
    const std::string point = wanted.empty() ? mostReadPoint(history) : wanted;
    std::vector<Plot> plots;
    if (!point.empty()) {
        std::vector<Trend> trends = trendsOf(catalogue, history, point, now);
        std::stable_partition(trends.begin(), trends.end(),
                              [](const Trend &trend) { return trend.lowSi || trend.highSi; });
        for (const Trend &trend : trends)
            plots.push_back(readingPlot(trend, civilDate(now), voice));
    }
    if (plots.empty())
        plots.push_back(noReadingPlot(voice));
    return plots;
}

} // namespace

std::string mostReadPoint(const RigHistory &history)
{
    std::map<std::string, std::size_t> counts;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks)
            counts[mark.point] += mark.readings.size();
    }
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto &a, const auto &b) { return a.second < b.second; });
    return most == counts.end() || most->second == 0 ? std::string() : most->first;
}

std::vector<Plot> plotsFor(const PlotAsk &ask, const Catalogue &catalogue, const RigHistory &history,
                           LocalTime now, const PlotVoice &voice)
{
    switch (ask.kind) {
    case PlotKind::Weathering:
        return {weatheringAsked(ask, catalogue, history, now, voice)};
    case PlotKind::Shake:
        return {shakeAsked(ask, history, now, voice)};
    case PlotKind::Cost:
        return costPlots(costsOf(history, now), voice);
    case PlotKind::Concern:
        return {concernAsked(ask, catalogue, history, now, voice)};
    case PlotKind::Reading:
        return readingsOf(ask.point, catalogue, history, now, voice);
    }
    return {};
}

} // namespace snugwalk
