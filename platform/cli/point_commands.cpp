// SPDX-License-Identifier: Apache-2.0
// points: what this rig has to be looked at, the whole catalogue, or one point in full.
#include "base/text.hpp"
#include "catalogue/pick.hpp"
#include "cli/answers.hpp"
#include "cli/budget_answers.hpp"
#include "cli/commands.hpp"
#include "cli/point_answers.hpp"
#include "data/embedded.hpp"
#include "round/tape.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct ListOptions {
    std::string point;
    std::string zone;
    std::string kind;
    std::string minutes;
    bool all = false;
};

std::string pointLine(const Point &point, const Texts &texts)
{
    std::string line =
        padded(point.slug, 28) + padded(texts.standName(point.stand), 22) + texts.point(point.slug).title;
    if (point.own)
        line += " (" + texts.phrase("own_point") + ")";
    if (point.hidden)
        line += " (" + texts.phrase("hidden_by", {point.hidden->by, formatDate(point.hidden->date)}) + ")";
    return line + "\n";
}

Result<Answer> answerOf(const std::vector<const Point *> &points, const ListOptions &o,
                        const Catalogue &catalogue, const Texts &texts)
{
    Value::List json;
    std::string text;
    for (const Point *point : points) {
        if (!o.zone.empty() && point->zone != o.zone)
            continue;
        json.push_back(pointValue(*point, catalogue, texts));
        text += pointLine(*point, texts);
    }
    if (json.empty())
        return Error{Errc::NotFound, "no point lies there", o.zone.empty() ? o.kind : "zone " + o.zone,
                     "see `snugwalk points`"};
    text += std::to_string(json.size()) + (json.size() == 1 ? " point\n" : " points\n");
    return Answer{Value::Map{{"points", json}}, text};
}

void addPoints(const Catalogue &catalogue, const std::vector<TapeLine> &lines,
               std::vector<const Point *> &points)
{
    for (const TapeLine &line : lines) {
        for (const std::string &slug : line.points) {
            const Point *point = catalogue.find(slug);
            if (point != nullptr && std::find(points.begin(), points.end(), point) == points.end())
                points.push_back(point);
        }
    }
}

// The whole catalogue, or all a kind of walk can ask for: no rig and no logbook are needed.
Result<Answer> listAll(Session &session, const ListOptions &o)
{
    if (!o.minutes.empty())
        return Error{Errc::Usage, "a time budget needs a rig", "--all --minutes", "leave one of them out"};
    const Catalogue &catalogue = productCatalogue();
    const WalkKind *kind = o.kind.empty() ? nullptr : catalogue.kind(o.kind);
    if (!o.kind.empty() && kind == nullptr)
        return Error{Errc::NotFound, "no such kind of walk", o.kind, "see `snugwalk walk start --help`"};
    std::vector<const Point *> points;
    if (kind == nullptr || kind->all) {
        for (const Point &point : catalogue.points())
            points.push_back(&point);
    } else {
        for (const std::string &set : kind->sets)
            addPoints(catalogue, catalogue.set(set), points);
    }
    return answerOf(points, o, catalogue, session.texts());
}

Result<Answer> listKind(Session &session, const ListOptions &o)
{
    const auto minutes = budgetMinutes(o.minutes);
    const Result<Standing> now = standing(session);
    if (!minutes || !now)
        return minutes ? now.error() : minutes.error();
    const Catalogue &catalogue = session.catalogue();
    const std::string kind = o.kind.empty() ? "full_round" : o.kind;
    auto tape = tapeForWalk(catalogue, now->history, kind, {}, {}, now->now);
    if (!tape)
        return tape.error();
    std::optional<BudgetedTape> fitted;
    if (*minutes)
        fitted = fitBudget(catalogue, *now, kind, *tape, **minutes);
    std::vector<const Point *> points;
    addPoints(catalogue, fitted ? fitted->tape : *tape, points);
    Result<Answer> answer = answerOf(points, o, catalogue, session.texts());
    if (!answer || !fitted)
        return answer;
    answer->json.member("budget") = budgetJson(*fitted, **minutes);
    answer->text += budgetWords(*fitted, **minutes, session.texts());
    return answer;
}

Result<Answer> listRig(Session &session, const ListOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    // hidden ones too: here they can be seen and shown again
    std::vector<const Point *> points;
    for (const Point &point : session.catalogue().points()) {
        if (isOnRig(point, *rig))
            points.push_back(&point);
    }
    Result<Answer> answer = answerOf(points, o, session.catalogue(), session.texts());
    if (answer)
        answer->json.member("hidden") = hiddenJson(session.catalogue(), *rig);
    return answer;
}

Result<Answer> onePoint(Session &session, const ListOptions &o)
{
    if (!o.all)
        (void)session.rig(); // its own point, where there is a rig
    const Point *point = session.catalogue().find(o.point);
    if (point == nullptr)
        return Error{Errc::NotFound, "no such point", o.point, "see `snugwalk points`"};
    return Answer{pointValue(*point, session.catalogue(), session.texts()),
                  pointWords(*point, session, session.texts())};
}

Result<Answer> points(Session &session, const ListOptions &o)
{
    if (!o.point.empty())
        return onePoint(session, o);
    if (o.all)
        return listAll(session, o);
    return o.kind.empty() && o.minutes.empty() ? listRig(session, o) : listKind(session, o);
}

} // namespace

void addPointCommands(CLI::App &app, Registry &registry)
{
    CLI::App *list = app.add_subcommand("points", "the points this rig has, or one of them in full");
    auto o = std::make_shared<ListOptions>();
    list->add_option("point", o->point, "a point's slug");
    list->add_flag("--all", o->all, "the whole catalogue, whatever the rig; needs no logbook");
    list->add_option("--zone", o->zone, "only this zone, such as tires-and-wheels");
    list->add_option("--kind", o->kind, "what a walk of this kind asks for, such as before_road");
    list->add_option("--minutes", o->minutes, "what fits into this time: 10, 25, 60 or any");
    addOwnCommands(*list, registry);
    registry.add(*list,
                 "  snugwalk points --zone roof\n  snugwalk points belly-pan-sheet\n"
                 "  snugwalk points --all --json\n  snugwalk points --kind full_round --minutes 25",
                 [o](Session &s) { return points(s, *o); });
}

} // namespace snugwalk::cli
