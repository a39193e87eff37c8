// SPDX-License-Identifier: Apache-2.0
// compare: then and now.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "round/compare.hpp"
#include "round/history.hpp"
#include "round/state.hpp"
#include "walk/walk_value.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

Value ids(const std::vector<Id> &list)
{
    Value::List out;
    for (const Id &id : list)
        out.push_back(id.text());
    return out;
}

Value strings(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Value findingChangeJson(const FindingChange &f)
{
    return Value::Map{{"finding", f.finding.text()},
                      {"change", slug(f.change)},
                      {"reason", f.reason},
                      {"then_grade", Value(f.thenGrade)},
                      {"now_grade", Value(f.nowGrade)},
                      {"then_extent", f.thenExtent ? toValue(*f.thenExtent) : Value()},
                      {"now_extent", f.nowExtent ? toValue(*f.nowExtent) : Value()},
                      {"then_photos", ids(f.thenPhotos)},
                      {"now_photos", ids(f.nowPhotos)}};
}

Value readingChangeJson(const ReadingChange &r)
{
    return Value::Map{{"reading", r.slug}, {"place", r.place},     {"unit", siSymbol(r.dimension)},
                      {"then", r.thenSi},  {"now", r.nowSi},       {"uncertainty", r.uncertainty},
                      {"z", r.z},          {"changed", r.changed}, {"change", slug(r.change)}};
}

Value pointChangeJson(const PointChange &p)
{
    Value::List findings;
    for (const FindingChange &f : p.findings)
        findings.push_back(findingChangeJson(f));
    Value::List readings;
    for (const ReadingChange &r : p.readings)
        readings.push_back(readingChangeJson(r));
    return Value::Map{{"point", p.point},         {"then", slug(p.then)}, {"now", slug(p.now)},
                      {"change", slug(p.change)}, {"carried", p.carried}, {"findings", findings},
                      {"readings", readings}};
}

Value countsJson(const ChangeCounts &counts)
{
    Value::Map out;
    for (const Change change : allChanges)
        out[std::string(slug(change))] = counts.of(change);
    return out;
}

std::string findingChangeWords(const FindingChange &f, const RigHistory &history, const Texts &texts,
                               UnitSystem units)
{
    const FindingHistory *h = findHistory(history, f.finding);
    std::string out = "    finding " + f.finding.shortText() + (h ? " " + h->finding.defect : "") + ": " +
                      changeWords(f.change, texts);
    const auto side = [&](const std::optional<int> &grade, const std::optional<Extent> &extent) {
        return !grade ? std::string("-")
                      : "grade " + std::to_string(*grade) + (extent ? ", " + extentWords(extent, units) : "");
    };
    out += " (" + side(f.thenGrade, f.thenExtent) + " to " + side(f.nowGrade, f.nowExtent) + ")";
    if (!f.reason.empty())
        out += ", " + replaceAll(f.reason, "_", " ");
    const auto photos = f.thenPhotos.size() + f.nowPhotos.size();
    return out +
           (photos > 0 ? ", photos then " + std::to_string(f.thenPhotos.size()) + ", now " +
                             std::to_string(f.nowPhotos.size())
                       : "") +
           "\n";
}

std::string comparisonWords(const Comparison &c, const RigHistory &history, const Texts &texts,
                            UnitSystem units)
{
    std::string head;
    for (const Change change : allChanges) {
        if (c.pointCounts.of(change) > 0)
            head += (head.empty() ? "" : ", ") + std::to_string(c.pointCounts.of(change)) + " " +
                    changeWords(change, texts);
    }
    std::string out = head + "\n";
    for (const PointChange &p : c.points) {
        bool moved = p.change != Change::Same && p.change != Change::FirstLook;
        for (const ReadingChange &r : p.readings)
            moved = moved || r.changed;
        if (!moved && p.findings.empty())
            continue;
        out += padded(changeWords(p.change, texts), 16) + padded(texts.point(p.point).title, 34) +
               stateWords(p.then, texts) + " to " + stateWords(p.now, texts) + "\n";
        for (const FindingChange &f : p.findings)
            out += findingChangeWords(f, history, texts, units);
        for (const ReadingChange &r : p.readings) {
            if (r.changed)
                out += "    " + texts.word("readings", r.slug) + (r.place.empty() ? "" : " at " + r.place) +
                       ": " + formatFor(r.dimension, r.thenSi, units) + " to " +
                       formatFor(r.dimension, r.nowSi, units) + "\n";
        }
    }
    return out;
}

Result<WalkPair> pairFrom(Logbook &book, const RigHistory &history, const std::string &a,
                          const std::string &b)
{
    if (a.empty())
        return lastTwo(history);
    const Result<Id> then = idOf(book, "walk", a);
    if (!then)
        return then.error();
    if (!b.empty()) {
        const Result<Id> now = idOf(book, "walk", b);
        return now ? Result<WalkPair>(WalkPair{*then, *now}) : now.error();
    }
    if (history.walks.back().walk.id == *then)
        return Error{Errc::Usage, "that is the last walk itself", a, "name an earlier one, or two"};
    return WalkPair{*then, history.walks.back().walk.id};
}

Result<Answer> compare(Session &session, const std::string &a, const std::string &b)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    const Result<RigHistory> history = loadHistory(book, rig->id);
    if (!history)
        return history.error();
    const Result<WalkPair> pair = pairFrom(book, *history, a, b);
    if (!pair)
        return pair.error();
    const Comparison c = compareWalks(productCatalogue(), *history, pair->then, pair->now);
    Value::List points;
    for (const PointChange &p : c.points)
        points.push_back(pointChangeJson(p));
    return Answer{Value::Map{{"then", c.thenWalk.text()},
                             {"now", c.nowWalk.text()},
                             {"points", points},
                             {"point_counts", countsJson(c.pointCounts)},
                             {"finding_counts", countsJson(c.findingCounts)},
                             {"only_then", strings(c.onlyThen)},
                             {"only_now", strings(c.onlyNow)}},
                  "then " + c.thenWalk.shortText() + ", now " + c.nowWalk.shortText() + ": " +
                      comparisonWords(c, *history, session.texts(), session.units())};
}

} // namespace

void addCompareCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub =
        app.add_subcommand("compare", "what changed between two walks (default: the last two like ones)");
    auto a = std::make_shared<std::string>();
    auto b = std::make_shared<std::string>();
    sub->add_option("then", *a, "a walk's id");
    sub->add_option("now", *b, "a later walk's id (default: the last)");
    registry.add(*sub, "  snugwalk compare\n  snugwalk compare 3f2a90bc 77ab01cd --json",
                 [a, b](Session &s) { return compare(s, *a, *b); });
}

} // namespace snugwalk::cli
