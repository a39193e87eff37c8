// SPDX-License-Identifier: Apache-2.0
// snugwalk bench NAME: every command and every flag from the bench's table of questions.
#include <algorithm>
#include <cctype>

#include "base/text.hpp"
#include "bench/ask/ask.hpp"
#include "bench/ask/show.hpp"
#include "cli/bench/bench_answers.hpp"
#include "cli/bench/bench_keep.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "round/bench_of_rig.hpp"
#include "round/history.hpp"

namespace snugwalk::cli {
namespace {

struct Typed {
    std::map<std::string, std::string, std::less<>> texts;
    std::map<std::string, bool, std::less<>> flags;
    bool ofRig = false;
    KeepOptions keep;
};

std::string unitList(const BenchInput &input)
{
    std::vector<std::string> symbols;
    for (const Unit &unit : allUnits()) {
        if (unit.dimension == input.dimension && !unit.symbol.empty())
            symbols.emplace_back(unit.symbol);
    }
    return join(symbols, ", ");
}

// "largest load of one tire [kg, g, t, lb, oz; 22.68 to 2268 kg] (usual: 0.20)".
std::string about(const BenchQuestion &question, const BenchInput &input, const Texts &texts)
{
    std::string line = texts.benchWord(question.name, input.name, "inputs");
    if (input.kind == AskKind::Word)
        line += " {" + replaceAll(std::string(input.words), " ", ",") + "}";
    if (input.kind == AskKind::Quantity || input.kind == AskKind::List) {
        const std::string units = unitList(input);
        line += units.empty() ? "" : " [" + units + "]";
    }
    if (input.kind == AskKind::Date)
        line += " [2026-11-24]";
    if (!input.usual.empty())
        line += " (usual: " + std::string(input.usual) + ")";
    return line;
}

std::string exampleWords(const BenchQuestion &question, const Texts &texts, CivilDate today)
{
    std::string words =
        "  snugwalk bench " + std::string(question.name) + " " + std::string(question.example) + "\n";
    const auto answer = askBench(question, exampleOf(question), UnitSystem::Si, today);
    if (answer) {
        const BenchFigure &first = answer->figures.front();
        words += "    gives " + texts.benchWord(question.name, first.name, "figures") + ": " +
                 showFigure(first, first.estimate.value, UnitSystem::Si) + " (" +
                 showFigure(first, first.estimate.value, UnitSystem::Us) + ")\n";
    }
    return words + "A number without a unit is read in --units, and the answer says so.";
}

// An error of the bench names an input; people typed a flag.
Error flagged(const BenchQuestion &question, Error error)
{
    for (const BenchInput &input : question.inputs) {
        if (input.name != error.where)
            continue;
        if (!input.positional)
            error.where = "--" + error.where;
        else
            std::transform(error.where.begin(), error.where.end(), error.where.begin(),
                           [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
        break;
    }
    return error;
}

Result<Answer> ask(Session &session, const BenchQuestion &question, const Typed &typed)
{
    BenchTexts texts;
    for (const auto &[name, text] : typed.texts) {
        if (!trim(text).empty())
            texts.emplace(name, text);
    }
    for (const auto &[name, set] : typed.flags) {
        if (set)
            texts.emplace(name, "yes");
    }
    const Result<LocalTime> now = session.now();
    if (!now)
        return now.error();
    if (typed.ofRig) {
        const Result<Rig> rig = session.rig();
        if (!rig)
            return rig.error();
        const Result<RigHistory> history = loadHistory(**session.book(), rig->id);
        if (!history)
            return history.error();
        texts = withTextsOfRig(question, std::move(texts), *history, &session.world(), session.units(),
                               civilDate(*now));
    }
    const Result<BenchAnswer> answer = askBench(question, texts, session.units(), civilDate(*now));
    if (!answer)
        return flagged(question, answer.error());
    Answer told{benchJson(question, *answer),
                benchWords(question, *answer, session.texts(), session.units())};
    if (typed.keep.point.empty())
        return told;
    const Status kept = keepReading(session, question, *answer, texts, typed.keep, told);
    if (!kept)
        return kept.error();
    return told;
}

void addQuestion(CLI::App &bench, Registry &registry, const BenchQuestion &question, const Texts &texts)
{
    CLI::App *sub = bench.add_subcommand(std::string(question.name), texts.benchWord(question.name, "about"));
    auto typed = std::make_shared<Typed>();
    for (const BenchInput &input : question.inputs) {
        const std::string name(input.name);
        const std::string words = about(question, input, texts);
        if (input.kind == AskKind::Flag)
            sub->add_flag("--" + name, typed->flags[name], words);
        else
            sub->add_option((input.positional ? "" : "--") + name, typed->texts[name],
                            words + (input.required ? " REQUIRED" : ""));
    }
    sub->add_flag("--of-rig", typed->ofRig,
                  "take what is not typed from the rig in the logbook: placard, sidewall, ratings, studs, "
                  "torque, and for "
                  "moisture the air of the last seven days where it stands");
    addKeepOptions(*sub, question, typed->keep);
    registry.add(*sub, exampleWords(question, texts, civilDate(SystemClock().now())),
                 [&question, typed](Session &s) { return ask(s, question, *typed); });
}

} // namespace

void addBenchCommands(CLI::App &app, Registry &registry, bool asked)
{
    CLI::App *bench =
        app.add_subcommand("bench", "the numbers worked out beside the rig: tires, torque, weights …");
    if (!asked) // other commands need neither the table nor its words
        return;
    bench->require_subcommand(1);
    const Result<Texts> texts = productTexts("en");
    SNUG_ASSERT(texts.has_value());
    for (const BenchQuestion &question : benchQuestions())
        addQuestion(*bench, registry, question, *texts);
}

} // namespace snugwalk::cli
