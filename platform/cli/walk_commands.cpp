// SPDX-License-Identifier: Apache-2.0
// walk undo, finish, show, list; start and mark have files of their own.
#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "logbook/query.hpp"
#include "walk/walk_value.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

std::string markWords(const Mark &mark, const Texts &texts, UnitSystem units)
{
    std::string out = stateWords(mark.state, texts);
    if (!mark.reason.empty())
        out += ": " + texts.word("reasons", mark.reason);
    for (const Reading &reading : mark.readings)
        out += "; " + readingWords(reading, texts, units);
    return mark.note.empty() ? out : out + "; " + mark.note;
}

// What a time budget left out is told at the start and with every look at the walk.
std::string leftOutWords(const Walk &walk, const Texts &texts)
{
    if (!walk.budget || walk.budget->leftOut.empty())
        return {};
    std::string out = texts.phrase("budget_left_out", {fixed(walk.budget->minutes, 0)}) + "\n";
    for (const std::string &point : walk.budget->leftOut)
        out += "  " + padded(point, 28) + texts.point(point).title + "\n";
    return out;
}

std::string tapeWords(Session &session, const Walk &walk, const std::vector<Mark> &marks)
{
    const Texts &texts = session.texts();
    const UnitSystem units = session.units();
    std::string out = texts.kindName(walk.kind) + " " + walk.id.shortText() + ", begun " +
                      formatLocalShort(walk.started) + (walk.by.empty() ? "" : " by " + walk.by) +
                      (walk.finished ? ", finished " + formatLocalShort(*walk.finished) : ", not finished") +
                      "\n";
    std::string stand;
    for (const TapeLine &line : walk.tape) {
        const std::string here = standOf(session.catalogue(), line);
        if (here != stand)
            out += texts.standName(here) + "\n";
        stand = here;
        for (const std::string &point : line.points) {
            const Mark *mark = findMark(marks, point);
            out +=
                "  " + padded(point, 28) +
                (mark == nullptr ? stateWords(MarkState::NotLooked, texts) : markWords(*mark, texts, units)) +
                "\n";
        }
    }
    return out + countWords(countMarks(walk, marks), texts) + "\n" + leftOutWords(walk, texts);
}

Result<Answer> show(Session &session, const std::string &typed)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    Result<Walk> walk = Error{};
    if (typed.empty()) {
        walk = session.openWalk();
    } else {
        const Result<Id> id = idOf(**book, "walk", typed);
        walk = id ? walkOf(**book, *id) : Result<Walk>(id.error());
    }
    if (!walk)
        return walk.error();
    SNUG_TRY(session.takeOwn(walk->rig));
    const auto marks = marksOf(**book, walk->id);
    if (!marks)
        return marks.error();
    return Answer{walkJson(*walk, *marks), tapeWords(session, *walk, *marks)};
}

Result<Answer> list(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    const auto walks = walksOf(book, rig->id);
    if (!walks)
        return walks.error();
    Value::List json;
    std::string text;
    for (const Walk &walk : *walks) {
        const auto marks = marksOf(book, walk.id);
        if (!marks)
            return marks.error();
        Value one = toValue(walk);
        one.member("id") = walk.id.text();
        one.member("counts") = countsValue(countMarks(walk, *marks));
        json.push_back(one);
        text += walk.id.shortText() + "  " + formatLocalShort(walk.started) + "  " +
                padded(session.texts().kindName(walk.kind), 16) + (walk.finished ? "" : "not finished, ") +
                countWords(countMarks(walk, *marks), session.texts()) + "\n";
    }
    return Answer{Value::Map{{"walks", json}}, walks->empty() ? "no walk yet\n" : text};
}

Result<Answer> undo(Session &session)
{
    const Result<Walk> walk = session.openWalk();
    const Result<Doer> doer = session.doer();
    if (!walk || !doer)
        return walk ? doer.error() : walk.error();
    const Result<Receipt> receipt = (*session.book())->undo(walk->id, doer->by);
    if (!receipt)
        return receipt.error();
    return Answer{Value::Map{{"undone_by", receipt->act.text()}, {"entries", receipt->entries}},
                  "taken back\n"};
}

Result<Answer> finish(Session &session)
{
    const Result<Walk> walk = session.openWalk();
    const Result<Doer> doer = session.doer();
    if (!walk || !doer)
        return walk ? doer.error() : walk.error();
    SNUG_TRY(finishWalk(**session.book(), *walk, *doer));
    return show(session, walk->id.text());
}

} // namespace

void addWalkCommands(CLI::App &app, Registry &registry)
{
    CLI::App *walk = app.add_subcommand("walk", "a walk round the rig");
    walk->require_subcommand(1);
    auto id = std::make_shared<std::string>();
    addStartCommand(*walk, registry);
    addMarkCommands(*walk, registry);
    registry.add(*walk->add_subcommand("undo", "take the last act of the walk back"), "  snugwalk walk undo",
                 [](Session &s) { return undo(s); });
    registry.add(*walk->add_subcommand("finish", "end the walk; what was not looked at stays so"),
                 "  snugwalk walk finish", [](Session &s) { return finish(s); });
    CLI::App *showing =
        walk->add_subcommand("show", "the tape of a walk with its marks (default: the one under way)");
    showing->add_option("walk", *id, "the walk's id");
    registry.add(*showing, "  snugwalk walk show\n  snugwalk walk show 3f2a90bc --json",
                 [id](Session &s) { return show(s, *id); });
    registry.add(*walk->add_subcommand("list", "all walks of the rig"), "  snugwalk walk list",
                 [](Session &s) { return list(s); });
}

} // namespace snugwalk::cli
