// SPDX-License-Identifier: Apache-2.0
// Concern from walk to walk.
#include <algorithm>

#include "base/text.hpp"
#include "report/plot/plots.hpp"

namespace snugwalk {
namespace {

constexpr double mendSoonFrom = 50.0; // as concern/concern.cpp has it; common practice

PlotShape shapeOf(Call call)
{
    switch (call) {
    case Call::Hold:
        return PlotShape::Block;
    case Call::MendSoon:
        return PlotShape::Wedge;
    case Call::Watch:
        return PlotShape::Half;
    case Call::None:
        return PlotShape::Dot;
    }
    return PlotShape::Dot;
}

std::string callWords(const ConcernThen &one, const PlotVoice &voice)
{
    return one.closed ? voice.say("closed") : voice.say("call_" + std::string(slug(one.call)));
}

double momentOn(const LocalTime &time)
{
    const Instant local = time.instant + std::chrono::minutes(time.offset.minutes);
    return std::chrono::duration<double, std::chrono::days::period>(local.time_since_epoch()).count();
}

} // namespace

Plot concernPlot(const std::vector<ConcernThen> &concerns, const std::string &what, const PlotVoice &voice)
{
    Plot plot;
    plot.slug = "concern";
    plot.title =
        plotTitle(PlotKind::Concern, voice.texts) + ", " + (what.empty() ? voice.say("concern_worst") : what);
    plot.head = {voice.say("col_date"),  voice.say("col_walk"), voice.say("col_concern"),
                 voice.say("col_range"), voice.say("col_call"), voice.say("col_point")};
    plot.dataHead = {"at", "walk_kind", "concern", "concern_low", "concern_high", "call", "point"};
    if (concerns.empty()) {
        plot.empty = voice.say(what.empty() ? "empty_concern" : "empty_concern_of");
        return plot;
    }
    PlotLine line{{}, {}, PlotStroke::Solid, true};
    std::vector<Call> calls;
    for (const ConcernThen &one : concerns) {
        const double x = momentOn(one.at);
        PlotSpot spot{x, one.number, shapeOf(one.call)};
        if (!one.closed) {
            spot.low = one.low;
            spot.high = one.high;
        }
        line.spots.push_back(spot);
        if (std::find(calls.begin(), calls.end(), one.call) == calls.end())
            calls.push_back(one.call);
        const std::string kind = one.kind.empty() ? voice.say("now") : voice.texts.kindName(one.kind);
        plot.rows.push_back(
            {x,
             {voice.date(civilDate(one.at)), kind, voice.number(one.number, 0),
              one.closed ? "" : voice.range(one.low, one.high, 0), callWords(one, voice),
              one.point.empty() ? "" : voice.texts.point(one.point).title},
             {formatLocal(one.at), one.kind, fixed(one.number, 1), fixed(one.low, 1), fixed(one.high, 1),
              one.closed ? "closed" : std::string(slug(one.call)), one.point}});
    }
    std::sort(calls.begin(), calls.end());
    for (const Call call : calls)
        plot.keys.push_back({shapeOf(call), voice.say("call_" + std::string(slug(call)))});
    const double first = line.spots.front().x;
    const double last = line.spots.back().x;
    const double side = std::max(3.0, (last - first) * 0.04);
    plot.across = voice.dateAxis(first - side, last + side);
    plot.up = voice.numberAxis(voice.say("concern_up"), 0.0, 100.0);
    plot.limits.push_back({mendSoonFrom, voice.say("concern_limit", {voice.number(mendSoonFrom, 0)})});
    plot.lines.push_back(std::move(line));
    plot.about = voice.say("concern_about", {std::to_string(concerns.size()), plot.rows.front().cells[0],
                                             plot.rows.front().cells[2], plot.rows.back().cells[2]});
    plot.notes = {voice.say("concern_note"), voice.say("whisker_note")};
    return plot;
}

} // namespace snugwalk
