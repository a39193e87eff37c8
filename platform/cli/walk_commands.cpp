// SPDX-License-Identifier: Apache-2.0
// walk start, undo, finish, show, list; marking is in mark_commands.cpp.
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "logbook/query.hpp"
#include "walk/walk_value.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct StartOptions {
    std::string kind = "full_round";
    std::vector<std::string> firstOf;
    std::vector<std::string> after;
};

Value walkJson(const Walk &walk, const std::vector<Mark> &marks)
{
    Value value = toValue(walk);
    value.member("id") = walk.id.text();
    value.member("counts") = countsValue(countMarks(walk, marks));
    Value::List list;
    for (const Mark &mark : marks)
        list.push_back(toValue(mark));
    value.member("marks") = list;
    const auto next = nextLine(walk, marks);
    value.member("next_line") = next ? Value(walk.tape[*next].slug) : Value();
    return value;
}

std::string markWords(const Mark &mark, const Texts &texts, UnitSystem units)
{
    std::string out = stateWords(mark.state, texts);
    if (!mark.reason.empty())
        out += ": " + texts.word("reasons", mark.reason);
    for (const Reading &reading : mark.readings)
        out += "; " + readingWords(reading, texts, units);
    return mark.note.empty() ? out : out + "; " + mark.note;
}

std::string tapeWords(const Walk &walk, const std::vector<Mark> &marks, const Texts &texts, UnitSystem units)
{
    std::string out = texts.kindName(walk.kind) + " " + walk.id.shortText() + ", begun " +
                      formatLocalShort(walk.started) + (walk.by.empty() ? "" : " by " + walk.by) +
                      (walk.finished ? ", finished " + formatLocalShort(*walk.finished) : ", not finished") +
                      "\n";
    std::string stand;
    for (const TapeLine &line : walk.tape) {
        const std::string here = standOf(productCatalogue(), line);
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
    return out + countWords(countMarks(walk, marks), texts) + "\n";
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
    const auto marks = marksOf(**book, walk->id);
    if (!marks)
        return marks.error();
    return Answer{walkJson(*walk, *marks), tapeWords(*walk, *marks, session.texts(), session.units())};
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

Result<Answer> start(Session &session, const StartOptions &options)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    std::vector<std::string> sets;
    for (const std::string &occasion : options.firstOf)
        sets.push_back("first_of_" + occasion);
    std::vector<std::string> points;
    for (const std::string &event : options.after) {
        const auto found = productCatalogue().events().find(event);
        if (found == productCatalogue().events().end())
            return Error{Errc::NotFound, "no such event", event, "see `snugwalk event --help`"};
        points.insert(points.end(), found->second.begin(), found->second.end());
    }
    Logbook &book = **session.book();
    const Result<Walk> walk = startWalk(book, productCatalogue(), *rig, options.kind, sets, points, *doer);
    if (!walk)
        return walk.error();
    return Answer{walkJson(*walk, {}), session.texts().kindName(walk->kind) + " " + walk->id.shortText() +
                                           " begun: " + std::to_string(walk->tape.size()) +
                                           (walk->tape.size() == 1 ? " line" : " lines") + "\n"};
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
    auto options = std::make_shared<StartOptions>();
    auto id = std::make_shared<std::string>();
    CLI::App *starting = walk->add_subcommand("start", "begin a walk");
    starting->add_option("kind", options->kind, "full_round, before_road, at_stop … (default: full_round)");
    starting
        ->add_option("--first-of", options->firstOf, "first move of a day or trip: adds what that asks for")
        ->check(CLI::IsMember({"day", "trip"}));
    starting->add_option("--after", options->after, "add the points that an event makes due, such as hail");
    registry.add(
        *starting,
        "  snugwalk walk start full_round --by \"M. Rata\"\n  snugwalk walk start before_road --first-of day",
        [options](Session &s) { return start(s, *options); });
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
