// SPDX-License-Identifier: Apache-2.0
// finding add, worse, better, same, gone.
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "cli/finding_options.hpp"
#include "compare/findings.hpp"
#include "logbook/query.hpp"
#include "words/finding_words.hpp"

namespace snugwalk::cli {
namespace {

enum class Verb { Worse, Better, Same, Gone };

constexpr const char *where =
    "Written on the open walk where that has the point, else as a look between walks, which marks no point.";

Result<Answer> told(Session &session, const Rig &rig, const MarkReceipt &receipt,
                    const std::vector<Photo> &photos)
{
    const auto histories = findingHistories(**session.book(), rig.id);
    if (!histories)
        return histories.error();
    Answer answer{Value::Map{}, ""};
    for (const FindingHistory &h : *histories) {
        if (h.finding.id == receipt.findings.front()) {
            answer.json = findingJson(h);
            answer.text = findingLine(session, rig, h);
        }
    }
    const Value photosOfFinding = answer.json["photos"];
    tellReceipt(session, receipt, photos, answer);
    answer.json.member("photos") = photosOfFinding;
    answer.text += receipt.walk.isNull() ? "a look between walks: no walk under way has this point\n"
                                         : "on the walk under way\n";
    return answer;
}

Result<Answer> write(Session &session, const Rig &rig, const std::string &point, const FindingDraft &draft,
                     const FindingOptions &o)
{
    const auto readings = readingsFrom(o);
    const Result<Doer> doer = session.doer();
    if (!readings || !doer)
        return readings ? doer.error() : readings.error();
    Logbook &book = **session.book();
    const auto receipt = lookAtFinding(book, session.catalogue(), rig, point, draft, *readings, *doer);
    if (!receipt)
        return receipt.error();
    const auto photos = importAll(session, o.photos, rig, *receipt, *doer);
    if (!photos)
        return photos.error();
    return told(session, rig, *receipt, *photos);
}

Result<Answer> add(Session &session, const std::string &point, const FindingOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    if (Status asked = askWhichFinding(book, *rig, point, o); !asked) {
        Error error = asked.error();
        error.act =
            "say `finding worse|better|same|gone ID` when it is that one, or --new when it is another";
        return error;
    }
    const Result<FindingDraft> draft = findingFrom(book, o);
    if (!draft)
        return draft.error();
    return write(session, *rig, point, *draft, o);
}

// The grade that a verb leaves when none was typed: worse and better need one, or a changed extent.
int gradeFor(Verb verb, const Look &last, const FindingOptions &o)
{
    if (verb == Verb::Gone)
        return 0;
    return o.grade == 0 && (verb == Verb::Same || !o.extent.empty()) ? last.grade : o.grade;
}

// What was typed must say what the verb says: a slip here would show as a mend or as a new fault.
Status checkVerb(Verb verb, const Look &last, int grade, const std::optional<Extent> &extent)
{
    if (verb == Verb::Gone)
        return done();
    const std::string before = "grade " + std::to_string(last.grade);
    if (grade == 0)
        return Error{Errc::Usage, "how bad is it now? it was " + before, "--grade",
                     "give --grade 1 to 5, or --extent for the same grade"};
    const int size = compareExtent(last.extent, extent);
    const int change = grade != last.grade ? (grade > last.grade ? 1 : -1) : size;
    const int wanted = verb == Verb::Worse ? 1 : verb == Verb::Better ? -1 : 0;
    if (verb == Verb::Same ? grade == last.grade : change == wanted)
        return done();
    return Error{Errc::Usage, "grade " + std::to_string(grade) + " after " + before + " says something else",
                 "--grade", "use worse, better or same as it is"};
}

Result<Answer> again(Session &session, Verb verb, const std::string &typed, const FindingOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    const Result<Id> id = idOf(book, "finding", typed);
    const auto histories = findingHistories(book, rig->id);
    if (!id || !histories)
        return id ? histories.error() : id.error();
    for (const FindingHistory &h : *histories) {
        const Look *last = h.finding.id == *id ? lookAt(h, Instant::max()) : nullptr;
        if (last == nullptr)
            continue;
        FindingDraft draft;
        draft.same = *id;
        draft.grade = gradeFor(verb, *last, o);
        draft.extentText = o.extent;
        draft.note = o.note;
        const auto extent = parseExtent(o.extent);
        if (!extent)
            return extent.error();
        SNUG_TRY(checkVerb(verb, *last, draft.grade, *extent));
        return write(session, *rig, h.finding.point, draft, o);
    }
    return Error{Errc::NotFound, "this rig has no such finding", typed, "see `snugwalk finding list --all`"};
}

void addVerb(CLI::App &finding, Registry &registry, Verb verb, const std::string &name,
             const std::string &about, const std::string &example)
{
    auto o = std::make_shared<FindingOptions>();
    auto id = std::make_shared<std::string>();
    CLI::App *sub = finding.add_subcommand(name, about);
    sub->add_option("finding", *id, "its id, see `snugwalk finding list`")->required();
    if (verb != Verb::Gone)
        sub->add_option("--grade", o->grade, gradeHelp);
    addLookOptions(*sub, *o);
    registry.add(*sub, example + "\n" + where, [o, id, verb](Session &s) { return again(s, verb, *id, *o); });
}

} // namespace

void addFindingLookCommands(CLI::App &finding, Registry &registry)
{
    auto o = std::make_shared<FindingOptions>();
    auto point = std::make_shared<std::string>();
    CLI::App *adding = finding.add_subcommand("add", "write down a new finding on a point");
    adding->add_option("point", *point, "a point's slug, see `snugwalk points`")->required();
    adding->add_option("--grade", o->grade, gradeHelp)->required();
    addSpotOptions(*adding, *o);
    addLookOptions(*adding, *o);
    adding->add_flag("--new", o->isNew, "it is another finding than those open on this point");
    registry.add(
        *adding,
        std::string("  snugwalk finding add belly-pan-sheet --defect loose --grade 3 --face underside "
                    "--x \"4.5 m\" \\\n    --y \"-0.6 m\" --extent \"14 mm\" --photo rivet.jpg\n") +
            where,
        [o, point](Session &s) { return add(s, *point, *o); });
    addVerb(finding, registry, Verb::Worse, "worse", "it is still there, and worse",
            "  snugwalk finding worse 3f2a90bc --grade 4 --extent \"18 mm\"");
    addVerb(finding, registry, Verb::Better, "better", "it is still there, and less bad",
            "  snugwalk finding better 3f2a90bc --grade 1");
    addVerb(finding, registry, Verb::Same, "same", "it is still there, as it was",
            "  snugwalk finding same 3f2a90bc --photo rivet.jpg");
    addVerb(finding, registry, Verb::Gone, "gone", "it is not there any more, without a mend",
            "  snugwalk finding gone 3f2a90bc --note \"dry again\"");
}

} // namespace snugwalk::cli
