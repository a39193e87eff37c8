// SPDX-License-Identifier: Apache-2.0
// Plots in documents: readings on their way to a limit, and what weather, roads and mends were over time.
#include <algorithm>
#include <set>

#include "papers/parts.hpp"
#include "report/plot/plot_ask.hpp"

namespace snugwalk::papers {
namespace {

constexpr int monthsOnPaper = 36;

struct Approaching {
    Trend trend;
    CivilDate likely{};
};

// Of each reading the place that meets its limit first: four tires alike are told by the worst of them.
std::vector<Approaching> approaching(const Paper &paper)
{
    const PaperSource &source = paper.source();
    std::set<std::string> points;
    for (const WalkRecord &record : paper.history().walks) {
        for (const Mark &mark : record.marks) {
            if (!mark.readings.empty())
                points.insert(mark.point);
        }
    }
    std::vector<Approaching> found;
    for (const std::string &point : points) {
        for (Trend &trend : trendsOf(source.catalogue, paper.history(), point, source.standing.now)) {
            if (!trend.likely)
                continue;
            const auto same = std::find_if(found.begin(), found.end(), [&](const Approaching &one) {
                return one.trend.point == trend.point && one.trend.reading == trend.reading;
            });
            const CivilDate likely = *trend.likely;
            if (same == found.end())
                found.push_back({std::move(trend), likely});
            else if (likely < same->likely)
                *same = {std::move(trend), likely};
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Approaching &a, const Approaching &b) { return a.likely < b.likely; });
    return found;
}

PlotVoice voiceOf(const Paper &paper)
{
    return paperVoice(paper.texts(), paper.options().units, paper.options().language);
}

} // namespace

void readingPlots(Paper &paper, std::size_t most)
{
    std::vector<Approaching> found = approaching(paper);
    if (found.empty() || most == 0)
        return;
    const PlotVoice voice = voiceOf(paper);
    found.resize(std::min(found.size(), most));
    paper.add(HeadingBlock{2, plotTitle(PlotKind::Reading, paper.texts())});
    for (const Approaching &one : found)
        paper.add(PlotBlock{readingPlot(one.trend, civilDate(paper.source().standing.now), voice)});
}

void overTimePlots(Paper &paper)
{
    const PlotVoice voice = voiceOf(paper);
    std::vector<Plot> plots;
    for (const PlotKind kind : {PlotKind::Weathering, PlotKind::Shake, PlotKind::Cost, PlotKind::Concern}) {
        for (Plot &plot : plotsFor({kind, {}, {}, monthsOnPaper}, paper.source().catalogue, paper.history(),
                                   paper.source().standing.now, voice)) {
            if (plot.empty.empty() || (kind == PlotKind::Cost && !plot.notes.empty()))
                plots.push_back(std::move(plot));
        }
    }
    if (plots.empty())
        return;
    paper.heading("over_time");
    for (Plot &plot : plots)
        paper.add(PlotBlock{std::move(plot)});
}

} // namespace snugwalk::papers
