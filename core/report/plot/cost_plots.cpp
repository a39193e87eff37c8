// SPDX-License-Identifier: Apache-2.0
// What mends cost, a bar a year, a plot a currency.
#include <algorithm>

#include "base/text.hpp"
#include "report/plot/plots.hpp"

namespace snugwalk {
namespace {

constexpr double halfYear = 182.6;
constexpr std::size_t mostNamed = 6; ///< of costs nobody can read

std::vector<std::string> notesOf(const Costs &costs, const PlotVoice &voice)
{
    std::vector<std::string> notes;
    if (!costs.unread.empty()) {
        std::vector<std::string> named;
        for (std::size_t i = 0; i < costs.unread.size() && i < mostNamed; ++i)
            named.push_back("\u201c" + costs.unread[i]->cost + "\u201d");
        if (costs.unread.size() > mostNamed)
            named.emplace_back("\u2026");
        notes.push_back(voice.say("cost_unread", {std::to_string(costs.unread.size()), join(named, ", ")}));
    }
    if (costs.withoutCost > 0)
        notes.push_back(voice.say("cost_none", {std::to_string(costs.withoutCost)}));
    return notes;
}

Plot begun(const PlotVoice &voice, const std::string &currency)
{
    Plot plot;
    plot.slug = "cost";
    plot.title = plotTitle(PlotKind::Cost, voice.texts);
    plot.head = {voice.say("col_year"), voice.say("col_cost", {currency}), voice.say("col_mends")};
    plot.dataHead = {"year", "cost", "currency", "mends"};
    return plot;
}

Plot plotOf(const CurrencyCosts &costs, const PlotVoice &voice)
{
    const std::string currency = costs.currency.empty() ? voice.say("no_currency") : costs.currency;
    Plot plot = begun(voice, currency);
    plot.slug += costs.currency.size() == 3 ? "-" + lowerAscii(costs.currency) : "";
    plot.title += ", " + currency;
    PlotBars bars{currency, PlotFill::Solid, {}};
    double most = 0.0;
    double whole = 0.0;
    int mends = 0;
    std::vector<PlotTick> years;
    for (const CostYear &year : costs.years) {
        const double from = plotDay(std::chrono::year(year.year) / 1 / 1);
        const double until = plotDay(std::chrono::year(year.year + 1) / 1 / 1);
        bars.bars.push_back({from, until, year.sum});
        years.push_back({from, std::to_string(year.year)});
        most = std::max(most, year.sum);
        whole += year.sum;
        mends += year.mends;
        plot.rows.push_back(
            {(from + until) / 2.0,
             {std::to_string(year.year), voice.number(year.sum, 2), std::to_string(year.mends)},
             {std::to_string(year.year), plotData(year.sum), costs.currency, std::to_string(year.mends)}});
    }
    plot.up = voice.numberAxis(voice.say("cost_up", {currency}), 0.0, most > 0.0 ? most : 1.0);
    plot.across.from = bars.bars.front().from;
    plot.across.to = bars.bars.back().to;
    plot.across.levels = dateLevels(plot.across.from, plot.across.to - 1.0, voice.dateWords());
    std::erase_if(plot.across.levels,
                  [&](const std::vector<PlotTick> &level) { return level.size() >= years.size(); });
    plot.across.levels.insert(plot.across.levels.begin(), years); // nothing finer than a year
    plot.across.shift = halfYear;
    plot.bars.push_back(std::move(bars));
    plot.about = voice.say(
        "cost_about", {voice.number(whole, 2) + (costs.currency.empty() ? "" : "\u00a0" + costs.currency),
                       std::to_string(mends)});
    return plot;
}

} // namespace

std::vector<Plot> costPlots(const Costs &costs, const PlotVoice &voice)
{
    std::vector<Plot> plots;
    for (const CurrencyCosts &currency : costs.currencies)
        plots.push_back(plotOf(currency, voice));
    if (plots.empty()) {
        plots.push_back(begun(voice, {}));
        plots.front().empty = voice.say("empty_cost");
    }
    plots.front().notes = notesOf(costs, voice);
    if (plots.size() > 1)
        plots.front().notes.push_back(voice.say("cost_apart"));
    return plots;
}

} // namespace snugwalk
