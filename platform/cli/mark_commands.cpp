// SPDX-License-Identifier: Apache-2.0
// walk mark and walk unseen: what a point got, with readings, a finding and photos.
#include <algorithm>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/finding_options.hpp"
#include "logbook/query.hpp"
#include "walk/walk_value.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct MarkOptions {
    std::string point;
    std::string state;
    std::string how = "looked";
    std::string reason;
    FindingOptions finding;
};

Result<MarkDraft> draftFrom(Logbook &book, const Rig &rig, const MarkOptions &o)
{
    MarkDraft draft;
    draft.point = o.point;
    const auto state = parseMarkState(replaceAll(o.state, "-", "_"));
    draft.state = state.value_or(MarkState::NotLooked);
    draft.how = parseLookedHow(o.how).value_or(LookedHow::Looked);
    draft.reason = replaceAll(o.reason, "-", "_");
    draft.note = o.finding.note;
    auto readings = readingsFrom(o.finding);
    if (!readings)
        return readings.error();
    draft.readings = std::move(readings).value();
    if (draft.state != MarkState::Attention && !o.finding.gone)
        return draft;
    SNUG_TRY(askWhichFinding(book, rig, o.point, o.finding));
    const Result<FindingDraft> finding = findingFrom(book, o.finding);
    if (!finding)
        return finding.error();
    draft.findings.push_back(*finding);
    return draft;
}

Result<Answer> answer(Session &session, const MarkDraft &draft, const MarkReceipt &receipt,
                      const std::vector<Photo> &photos)
{
    Answer answer{Value::Map{{"point", draft.point}, {"state", slug(draft.state)}},
                  draft.point + ": " + stateWords(draft.state, session.texts()) + "\n"};
    tellReceipt(session, receipt, photos, answer);
    return answer;
}

// Passing a tape line of several points marks each that has no mark yet.
Result<Answer> wholeLine(Session &session, const Walk &walk, const TapeLine &line, const MarkDraft &draft,
                         const Doer &doer)
{
    SNUG_TRY(markLine(**session.book(), walk, line, draft.state, draft.how, draft.reason, doer));
    Value::List points(line.points.begin(), line.points.end());
    return Answer{Value::Map{{"line", line.slug}, {"points", points}, {"state", slug(draft.state)}},
                  line.slug + " (" + join(line.points, ", ") +
                      "): " + stateWords(draft.state, session.texts()) + "\n"};
}

const TapeLine *groupedLine(const Walk &walk, const std::string &slug)
{
    const auto found = std::find_if(walk.tape.begin(), walk.tape.end(), [&](const TapeLine &line) {
        return line.slug == slug && (line.points.size() > 1 || line.points.front() != slug);
    });
    return found == walk.tape.end() ? nullptr : &*found;
}

Result<Answer> mark(Session &session, const MarkOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<Walk> walk = session.openWalk();
    const Result<Doer> doer = session.doer();
    if (!walk || !doer)
        return walk ? doer.error() : walk.error();
    Logbook &book = **session.book();
    const Result<MarkDraft> draft = draftFrom(book, *rig, o);
    if (!draft)
        return draft.error();
    if (const TapeLine *line = groupedLine(*walk, o.point); line != nullptr) {
        if (draft->state == MarkState::Attention || !draft->readings.empty())
            return Error{Errc::Usage, "this line holds several points", o.point,
                         "mark one of: " + join(line->points, ", ")};
        return wholeLine(session, *walk, *line, *draft, *doer);
    }
    const Result<MarkReceipt> receipt = markPoint(book, session.catalogue(), *rig, *walk, *draft, *doer);
    if (!receipt)
        return receipt.error();
    const auto photos = importAll(session, o.finding.photos, *rig, *receipt, *doer);
    if (!photos)
        return photos.error();
    return answer(session, *draft, *receipt, *photos);
}

} // namespace

void addMarkCommands(CLI::App &walk, Registry &registry)
{
    auto o = std::make_shared<MarkOptions>();
    CLI::App *marking = walk.add_subcommand("mark", "mark a point, or a whole tape line");
    marking->add_option("point", o->point, "a point's or a line's slug")->required();
    marking->add_option("state", o->state, "pass, attention or not_fitted")
        ->required()
        ->check(CLI::IsMember({"pass", "attention", "not_fitted", "not-fitted"}));
    marking->add_option("--how", o->how, "how a pass was looked at")
        ->check(CLI::IsMember({"glance", "looked", "measured"}));
    addSpotOptions(*marking, o->finding);
    addLookOptions(*marking, o->finding);
    marking->add_option("--grade", o->finding.grade, gradeHelp);
    marking->add_option("--same", o->finding.same, "it is this finding, looked at again");
    marking->add_flag("--new", o->finding.isNew, "it is another finding than those open on this point");
    marking->add_flag("--gone", o->finding.gone, "with --same: it is not there any more, without a mend");
    registry.add(*marking,
                 "  snugwalk walk mark tread-depth pass --how measured --reading \"tread@wheel 1L=7/32 in\"\n"
                 "  snugwalk walk mark belly-pan-sheet attention --defect loose --grade 3 --face underside "
                 "--x \"4.5 m\" \\\n"
                 "    --y \"-0.6 m\" --extent \"14 mm\" --photo rivet.jpg --note \"third rivet aft of the "
                 "rear axle\"\n"
                 "  snugwalk walk mark belly-pan-sheet attention --same 3f2a90bc --grade 4",
                 [o](Session &s) { return mark(s, *o); });
    CLI::App *unseen = walk.add_subcommand("unseen", "say that a point could not be looked at, and why");
    unseen->add_option("point", o->point, "a point's or a line's slug")->required();
    unseen->add_option("reason", o->reason, join(reasons(), ", "))->required();
    unseen->add_option("--note", o->finding.note, "in your words");
    registry.add(*unseen, "  snugwalk walk unseen roof-membrane wet_or_icy", [o](Session &s) {
        o->state = "could_not_look";
        return mark(s, *o);
    });
}

} // namespace snugwalk::cli
