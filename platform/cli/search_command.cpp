// SPDX-License-Identifier: Apache-2.0
// search: anything of the rig by words.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "round/history.hpp"
#include "round/search.hpp"

namespace snugwalk::cli {
namespace {

struct SearchOptions {
    std::vector<std::string> words;
    std::size_t limit = 20;
};

Result<Answer> search(Session &session, const SearchOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<RigHistory> history = loadHistory(**session.book(), rig->id);
    if (!history)
        return history.error();
    const auto index = SearchIndex::make(session.catalogue(), *history, session.texts());
    if (!index)
        return index.error();
    const auto hits = index->find(join(o.words, " "), o.limit);
    if (!hits)
        return hits.error();
    Value::List json;
    std::string text;
    for (const Hit &hit : *hits) {
        Value::Map one{
            {"kind", std::string(slug(hit.kind))}, {"id", hit.id}, {"title", hit.title}, {"part", hit.part}};
        one["at"] = hit.at ? Value(formatLocal(*hit.at)) : Value();
        json.emplace_back(std::move(one));
        const std::string id = hit.kind == HitKind::Point ? hit.id : hit.id.substr(0, 8);
        text += std::string(slug(hit.kind)) + "  " + id + "  " +
                (hit.at ? formatLocalShort(*hit.at) + "  " : "") + hit.title +
                (hit.part == hit.title ? "" : "\n    " + hit.part) + "\n";
    }
    return Answer{Value::Map{{"hits", json}}, text.empty() ? "nothing has these words\n" : text};
}

} // namespace

void addSearchCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub = app.add_subcommand("search", "findings, walks, mends, trips and points by words");
    auto o = std::make_shared<SearchOptions>();
    sub->add_option("words", o->words, "beginnings of words; all must be there, accents do not matter")
        ->required();
    sub->add_option("--limit", o->limit, "at most so many (default: 20)");
    registry.add(*sub, "  snugwalk search sealant vent\n  snugwalk search rivet --json",
                 [o](Session &s) { return search(s, *o); });
}

} // namespace snugwalk::cli
