// SPDX-License-Identifier: Apache-2.0
// holds: every hold rule with its source; accept: moving once although a look failed.
#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "round/accept.hpp"
#include "walk/walk_value.hpp"
#include "words/rule_words.hpp"
#include "words/state_words.hpp"

namespace snugwalk::cli {
namespace {

Value strings(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Value figureJson(const HoldFigure &f)
{
    return Value::Map{{"name", f.name},
                      {"value", f.si},
                      {"unit", siSymbol(f.dimension)},
                      {"printed", f.printed},
                      {"printed_unit", f.unit},
                      {"set_by", f.setBy},
                      {"source", strings(fullSources({f.source}, productCatalogue()))}};
}

Value triggersJson(const HoldRule &rule)
{
    Value::List out;
    for (const DefectHold &d : rule.defects)
        out.push_back(Value::Map{{"point", d.point}, {"defect", d.defect}, {"from_grade", d.leastGrade}});
    for (const ReadingHold &r : rule.readings)
        out.push_back(Value::Map{{"point", r.point},
                                 {"reading", r.reading},
                                 {"below", r.below ? figureJson(*r.below) : Value()},
                                 {"above", r.above ? figureJson(*r.above) : Value()},
                                 {"kinds", strings(r.kinds)},
                                 {"places", strings(r.places)},
                                 {"gross_over", r.grossOver ? figureJson(*r.grossOver) : Value()}});
    for (const HoldCheck &c : rule.checks) {
        Value::List figures;
        for (const HoldFigure &figure : c.figures)
            figures.push_back(figureJson(figure));
        out.push_back(Value::Map{{"check", c.name},
                                 {"points", strings(c.points)},
                                 {"reading", c.reading},
                                 {"events", strings(c.events)},
                                 {"consequences", strings(c.consequences)},
                                 {"except", strings(c.except)},
                                 {"figures", figures}});
    }
    return out;
}

Answer holds(Session &session)
{
    const Texts &texts = session.texts();
    Value::List json;
    std::string text;
    for (const HoldRule &rule : productCatalogue().holds().all()) {
        const std::vector<std::string> sources = fullSources(rule.sources, productCatalogue());
        json.push_back(Value::Map{{"rule", rule.key},
                                  {"forbids", rule.forbids},
                                  {"reason", texts.word("holds", rule.key)},
                                  {"could_not_look_holds", rule.missedLookHolds},
                                  {"sources", strings(sources)},
                                  {"triggers", triggersJson(rule)}});
        text += rule.key + ". " + texts.word("holds", rule.key) + "\n    " +
                texts.phrase("rule_forbids", {texts.word("forbids", rule.forbids)}) + "\n";
        for (const std::string &line : triggerLines(rule, texts, session.units()))
            text += "    - " + line + "\n";
        text += "    " + texts.phrase("rule_sources") + " " + join(sources, "; ") + "\n\n";
    }
    for (const char *general : {"grade_5", "could_not_look"}) {
        json.push_back(Value::Map{{"rule", general}, {"reason", texts.word("holds", general)}});
        text += std::string(general) + ". " + texts.word("holds", general) + "\n    - " +
                texts.phrase("rule_general") + "\n\n";
    }
    return {Value::Map{{"holds", json}}, text};
}

struct AcceptOptions {
    std::string point;
    std::string because;
    std::string knowing;
    std::string role = "owner";
    bool once = false;
};

Result<Answer> accept(Session &session, const AcceptOptions &o)
{
    const Result<Standing> now = standing(session);
    const Result<Doer> doer = session.doer();
    const std::optional<Role> role = parseRole(o.role);
    if (!now || !doer)
        return now ? doer.error() : now.error();
    if (productCatalogue().find(o.point) == nullptr)
        return Error{Errc::NotFound, "no such point", o.point, "see `snugwalk state`"};
    Result<Acceptance> acceptance = acceptable(*now, o.point);
    if (!acceptance)
        return acceptance.error();
    acceptance->reason = o.because;
    acceptance->knowing = o.knowing;
    acceptance->by = doer->by;
    acceptance->at = now->now;
    const std::string sentence = acceptanceSentence(*acceptance, session.texts());
    if (!o.once)
        return Error{Errc::Usage, "nothing is written yet. You would say: " + sentence, o.point,
                     "if that is your decision, run it again with --i-move-it-once"};
    const Result<Id> id = acceptMissed(**session.book(), *acceptance, role.value_or(Role::Viewer), *doer);
    if (!id)
        return id.error();
    Value json = toValue(*acceptance);
    json.member("id") = id->text();
    json.member("sentence") = sentence;
    return Answer{json, sentence + "\n" + acceptedWords(*acceptance, session.texts()) + "\n"};
}

} // namespace

void addHoldCommands(CLI::App &app, Registry &registry)
{
    registry.add(*app.add_subcommand("holds", "every rule that forbids moving, sleeping, plugging in or "
                                              "lighting, what fires it, and its source"),
                 "  snugwalk holds\n  snugwalk --language es holds",
                 [](Session &s) { return Result<Answer>(holds(s)); });
    auto o = std::make_shared<AcceptOptions>();
    CLI::App *accepting = app.add_subcommand(
        "accept", "move once although one point could not be looked at; never for a hold that was found");
    accepting->add_option("point", o->point, "the point")->required();
    accepting->add_option("--because", o->because, "why it could not be looked at")->required();
    accepting->add_option("--knowing", o->knowing, "what may follow, in your words")->required();
    accepting->add_option("--as", o->role, "your part: only an owner accepts")
        ->check(CLI::IsMember({"owner", "helper", "technician", "renter", "viewer"}));
    accepting->add_flag("--i-move-it-once", o->once,
                        "yes, it is my own decision; ends when the rig is uncoupled "
                        "or after 24 hours");
    registry.add(
        *accepting,
        "  snugwalk accept pull-away-lap --because \"dark, and ice on the ground\" --knowing \"a step "
        "left down\" \\\n    --i-move-it-once",
        [o](Session &s) { return accept(s, *o); });
}

} // namespace snugwalk::cli
