// SPDX-License-Identifier: Apache-2.0
// walk start: what the walk asks for today, within the time there is.
#include "cli/answers.hpp"
#include "cli/budget_answers.hpp"
#include "cli/commands.hpp"
#include "round/tape.hpp"

namespace snugwalk::cli {
namespace {

struct StartOptions {
    std::string kind = "full_round";
    std::vector<std::string> firstOf;
    std::vector<std::string> after;
    std::string minutes;
};

Result<std::vector<std::string>> pointsOfEvents(const Catalogue &catalogue,
                                                const std::vector<std::string> &events)
{
    std::vector<std::string> points;
    for (const std::string &event : events) {
        const auto found = catalogue.events().find(event);
        if (found == catalogue.events().end())
            return Error{Errc::NotFound, "no such event", event, "see `snugwalk event --help`"};
        points.insert(points.end(), found->second.begin(), found->second.end());
    }
    return points;
}

Result<std::vector<TapeLine>> wholeTape(const Session &session, const Standing &now,
                                        const StartOptions &options)
{
    std::vector<std::string> sets;
    for (const std::string &occasion : options.firstOf)
        sets.push_back("first_of_" + occasion);
    const auto points = pointsOfEvents(session.catalogue(), options.after);
    if (!points)
        return points.error();
    return tapeForWalk(session.catalogue(), now.history, options.kind, sets, *points, now.now);
}

WalkBudget kept(const BudgetedTape &fitted, double minutes)
{
    WalkBudget budget{minutes, {}};
    for (const LeftOut &left : fitted.leftOut)
        budget.leftOut.push_back(left.point);
    return budget;
}

Result<Answer> start(Session &session, const StartOptions &options)
{
    const auto minutes = budgetMinutes(options.minutes);
    if (!minutes)
        return minutes.error();
    const Result<Standing> now = standing(session);
    const Result<Doer> doer = session.doer();
    if (!now || !doer)
        return now ? doer.error() : now.error();
    auto tape = wholeTape(session, *now, options);
    if (!tape)
        return tape.error();
    std::optional<BudgetedTape> fitted;
    std::optional<WalkBudget> budget;
    if (*minutes) {
        fitted = fitBudget(session.catalogue(), *now, options.kind, *tape, **minutes);
        if (fitted->tape.empty())
            return Error{Errc::OutOfRange, "no line of this walk fits into that", "--minutes",
                         "give it more time"};
        budget = kept(*fitted, **minutes);
        tape = fitted->tape;
    }
    const Rig &rig = now->history.rig;
    const Result<Walk> walk =
        startWalk(**session.book(), rig, options.kind, std::move(tape).value(), budget, *doer);
    if (!walk)
        return walk.error();
    const Texts &texts = session.texts();
    Value json = walkJson(*walk, {});
    json.member("hidden") = hiddenJson(session.catalogue(), rig);
    json.member("budget") = fitted ? budgetJson(*fitted, **minutes) : Value();
    return Answer{json, texts.kindName(walk->kind) + " " + walk->id.shortText() +
                            " begun: " + std::to_string(walk->tape.size()) +
                            (walk->tape.size() == 1 ? " line" : " lines") + "\n" +
                            (fitted ? budgetWords(*fitted, **minutes, texts) : "") +
                            hiddenWords(session.catalogue(), rig, texts)};
}

} // namespace

void addStartCommand(CLI::App &walk, Registry &registry)
{
    auto options = std::make_shared<StartOptions>();
    CLI::App *starting = walk.add_subcommand("start", "begin a walk");
    starting->add_option("kind", options->kind, "full_round, before_road, at_stop … (default: full_round)");
    starting
        ->add_option("--first-of", options->firstOf, "first move of a day or trip: adds what that asks for")
        ->check(CLI::IsMember({"day", "trip"}));
    starting->add_option("--after", options->after, "add the points that an event makes due, such as hail");
    starting->add_option(
        "--minutes", options->minutes,
        "fit it into this time, such as 10, 25 or 60 (default: any); tells what is left out");
    registry.add(*starting,
                 "  snugwalk walk start full_round --by \"M. Rata\"\n"
                 "  snugwalk walk start full_round --minutes 25\n"
                 "  snugwalk walk start before_road --first-of day",
                 [options](Session &s) { return start(s, *options); });
}

} // namespace snugwalk::cli
