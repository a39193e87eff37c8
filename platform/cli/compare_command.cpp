// SPDX-License-Identifier: Apache-2.0
// compare: then and now.
#include <algorithm>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/compare_json.hpp"
#include "round/history.hpp"
#include "round/state.hpp"
#include "words/compare_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct CompareOptions {
    std::string then;
    std::string now;
    std::string kind;
    bool detail = false;
};

struct Words {
    const RigHistory &history;
    const Texts &texts;
    UnitSystem units;
};

std::string findingChangeWords(const FindingChange &f, const Words &w)
{
    const FindingHistory *h = findHistory(w.history, f.finding);
    std::string out = "    finding " + f.finding.shortText() + (h ? " " + h->finding.defect : "") + ": " +
                      changeWords(f.change, w.texts);
    const auto side = [&](const std::optional<int> &grade, const std::optional<Extent> &extent) {
        return !grade
                   ? std::string("-")
                   : "grade " + std::to_string(*grade) + (extent ? ", " + extentWords(extent, w.units) : "");
    };
    out += " (" + side(f.thenGrade, f.thenExtent) + " to " + side(f.nowGrade, f.nowExtent) + ")";
    if (!f.reason.empty())
        out += ", " + replaceAll(f.reason, "_", " ");
    if (!f.thenPhotos.empty() || !f.nowPhotos.empty())
        out += ", photos then " + std::to_string(f.thenPhotos.size()) + ", now " +
               std::to_string(f.nowPhotos.size());
    return out + "\n";
}

std::string pointWords(const PointChange &p, const Words &w)
{
    const bool told = std::any_of(p.readings.begin(), p.readings.end(), isTold);
    const bool quiet = p.change == Change::Same || p.change == Change::FirstLook;
    if (quiet && !told && p.findings.empty())
        return {};
    std::string out = padded(changeWords(p.change, w.texts), 16) + padded(w.texts.point(p.point).title, 34) +
                      stateWords(p.then, w.texts) + " to " + stateWords(p.now, w.texts) + "\n";
    for (const FindingChange &f : p.findings)
        out += findingChangeWords(f, w);
    for (const ReadingChange &r : p.readings) {
        if (isTold(r))
            out += "    " + readingChangeWords(r, w.texts, w.units) + "\n";
    }
    return out;
}

std::string comparisonWords(const Comparison &c, const Words &w, bool detail)
{
    std::vector<std::string> counts;
    for (const Change change : allChanges) {
        if (const int n = c.pointCounts.of(change); n > 0)
            counts.push_back(std::to_string(n) + " " + changeWords(change, w.texts));
    }
    std::string out = join(counts, ", ") + "\n";
    if (const std::string rig = rigChangesWords(c.rigChanges, w.texts, w.units); !rig.empty())
        out += rig + "\n";
    for (const PointChange &p : c.points)
        out += pointWords(p, w);
    out += pointListsWords(c, w.texts);
    return detail ? out + ratesWords(c.rates, w.texts) : out;
}

// "Full round, 2026-05-01 10:00 (3f2a90bc), against …: the last of its kind".
std::string pairWords(const Comparison &c, PairedBy by, const Words &w)
{
    std::vector<std::string> arguments;
    for (const Id &id : {c.nowWalk, c.thenWalk}) {
        const auto record = std::find_if(w.history.walks.begin(), w.history.walks.end(),
                                         [&](const WalkRecord &r) { return r.walk.id == id; });
        const bool known = record != w.history.walks.end();
        arguments.push_back(known ? w.texts.kindName(record->walk.kind) : "-");
        arguments.push_back(known ? formatLocalShort(record->walk.started) : "-");
        arguments.push_back(id.shortText());
    }
    arguments.push_back(w.texts.phrase("pair_" + std::string(slug(by))));
    return w.texts.phrase("pair", arguments) + "\n";
}

Result<WalkPair> pairFrom(const Session &session, Logbook &book, const RigHistory &history,
                          const CompareOptions &o)
{
    if (!o.kind.empty() && session.catalogue().kind(o.kind) == nullptr)
        return Error{Errc::NotFound, "no such kind of walk", o.kind, "see `snugwalk walk start --help`"};
    if (!o.kind.empty() && !o.then.empty())
        return Error{Errc::Usage, "a kind and a walk at once", o.kind, "give either"};
    if (o.then.empty())
        return lastTwo(history, o.kind);
    const Result<Id> then = idOf(book, "walk", o.then);
    if (!then)
        return then.error();
    if (!o.now.empty()) {
        const Result<Id> now = idOf(book, "walk", o.now);
        return now ? Result<WalkPair>(WalkPair{*then, *now}) : now.error();
    }
    if (history.walks.back().walk.id == *then) // the last walk itself: against the last of its kind
        return lastOfKind(history, *then);
    return WalkPair{*then, history.walks.back().walk.id};
}

// An id of another rig's walk would compare with nothing and look like a result.
Status checkOwn(const RigHistory &history, const WalkPair &pair)
{
    for (const Id &id : {pair.then, pair.now}) {
        const bool own = std::any_of(history.walks.begin(), history.walks.end(),
                                     [&](const WalkRecord &r) { return r.walk.id == id; });
        if (!own)
            return Error{Errc::NotFound, "this walk is of another rig", id.shortText(),
                         "name the rig with --rig, see `snugwalk walk list`"};
    }
    return done();
}

Result<Answer> compare(Session &session, const CompareOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    const Result<RigHistory> history = loadHistory(book, rig->id);
    if (!history)
        return history.error();
    const Result<WalkPair> pair = pairFrom(session, book, *history, o);
    if (!pair)
        return pair.error();
    SNUG_TRY(checkOwn(*history, *pair));
    const Comparison c = compareWalks(session.catalogue(), *history, pair->then, pair->now);
    const Words words{*history, session.texts(), session.units()};
    return Answer{comparisonJson(c, pair->by),
                  pairWords(c, pair->by, words) + comparisonWords(c, words, o.detail)};
}

} // namespace

void addCompareCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub = app.add_subcommand(
        "compare", "what changed between two walks (default: the last and the one before of its kind)");
    auto o = std::make_shared<CompareOptions>();
    sub->add_option("then", o->then, "a walk's id");
    sub->add_option("now", o->now, "a later walk's id (default: the last)");
    sub->add_option("--kind", o->kind, "the last two of this kind, such as full_round");
    sub->add_flag("--detail", o->detail, "how likely the counts are chance alone");
    registry.add(*sub,
                 "  snugwalk compare\n  snugwalk compare --kind full_round --detail\n"
                 "  snugwalk compare 3f2a90bc 77ab01cd --json",
                 [o](Session &s) { return compare(s, *o); });
}

} // namespace snugwalk::cli
