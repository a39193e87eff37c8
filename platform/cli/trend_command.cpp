// SPDX-License-Identifier: Apache-2.0
// trend: a reading over all walks, and when it meets its limit.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/compare_json.hpp"
#include "round/history.hpp"
#include "words/compare_words.hpp"

namespace snugwalk::cli {
namespace {

struct TrendOptions {
    std::string point;
    std::string reading;
    std::string place;
};

Error nothingRead(const TrendOptions &o, const Point *point)
{
    if (point != nullptr && point->readings.empty())
        return {Errc::NotFound, "this point takes no reading", o.point, "see `snugwalk points`"};
    std::string where = o.point;
    for (const std::string &part : {o.reading, o.place})
        where += part.empty() ? "" : ", " + part;
    return {Errc::NotFound, "nothing was read here yet", where,
            "read it on a walk: `snugwalk walk mark " + o.point + " pass --reading ...`"};
}

Result<Answer> trend(Session &session, const TrendOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<LocalTime> now = session.now();
    if (!now)
        return now.error();
    const Result<RigHistory> history = loadHistory(**session.book(), rig->id);
    if (!history)
        return history.error();
    const Catalogue &catalogue = session.catalogue();
    Value::List json;
    std::string text;
    for (const Trend &t : trendsOf(catalogue, *history, o.point, *now)) {
        const bool wanted =
            (o.reading.empty() || o.reading == t.reading) && (o.place.empty() || o.place == t.place);
        if (!wanted)
            continue;
        json.push_back(trendJson(t));
        text += trendWords(t, session.texts(), session.units());
    }
    if (!json.empty())
        return Answer{Value::Map{{"trends", json}}, text};
    if (catalogue.find(o.point) == nullptr)
        return Error{Errc::NotFound, "no such point", o.point, "see `snugwalk points`"};
    return nothingRead(o, catalogue.find(o.point));
}

} // namespace

void addTrendCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub = app.add_subcommand("trend", "a reading over all walks, and when it meets its limit");
    auto o = std::make_shared<TrendOptions>();
    sub->add_option("point", o->point, "a point's slug")->required();
    sub->add_option("--reading", o->reading, "only this reading, such as tread-depth");
    sub->add_option("--place", o->place, "only this place, such as \"wheel 1L\"");
    registry.add(*sub,
                 "  snugwalk trend tread-depth\n  snugwalk trend tread-depth --place \"wheel 1L\" --json",
                 [o](Session &s) { return trend(s, *o); });
}

} // namespace snugwalk::cli
