// SPDX-License-Identifier: Apache-2.0
// mend: work done, and event: something that makes points due.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "due/band.hpp"
#include "round/history.hpp"
#include "walk/mend_part.hpp"
#include "walk/walk_value.hpp"
#include "words/supply_words.hpp"

namespace snugwalk::cli {
namespace {

struct MendOptions {
    std::vector<std::string> findings;
    Mend mend;
    std::vector<std::string> parts;
    double minutes = -1.0;
};

// Says what was made of each part, so that a slip in typing shows.
std::string understood(Session &session, const Mend &mend)
{
    std::string out;
    for (const MendPart &part : mend.parts) {
        const SupplyItem *item = productSupplies().named(part.name);
        const auto si = item == nullptr ? std::nullopt : amountOf(*item, part.quantity, part.unit);
        out += "  part: " + part.name + ", " + amountText(part.quantity) +
               (part.unit.empty() ? "" : " " + part.unit);
        if (si)
            out += " (" + session.texts().word("supplies", item->slug) + ", " +
                   supplyAmount(*item, *si, session.units()) + ", taken from what is on hand)";
        out += "\n";
    }
    return out;
}

Result<Answer> mend(Session &session, const MendOptions &o)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    const Result<LocalTime> now = session.now();
    if (!rig || !doer || !now)
        return !rig ? rig.error() : !doer ? doer.error() : now.error();
    Logbook &book = **session.book();
    Mend mend = o.mend;
    for (const std::string &typed : o.findings) {
        const Result<Id> id = idOf(book, "finding", typed);
        if (!id)
            return id.error();
        mend.findings.push_back(*id);
    }
    for (const std::string &point : mend.points) {
        if (session.catalogue().find(point) == nullptr)
            return Error{Errc::NotFound, "no such point", point, "see `snugwalk points`"};
    }
    for (const std::string &typed : o.parts) {
        const Result<MendPart> part = parsePart(typed);
        if (!part)
            return part.error();
        mend.parts.push_back(*part);
    }
    mend.rig = rig->id;
    mend.at = *now;
    mend.by = doer->by;
    if (o.minutes >= 0.0)
        mend.minutes = o.minutes;
    const Result<Id> id = addMend(book, mend, *doer);
    if (!id)
        return id.error();
    Value json = toValue(mend);
    json.member("id") = id->text();
    return Answer{json, "mend " + id->shortText() + " written; a pass on the point confirms it\n" +
                            understood(session, mend)};
}

std::string eventList()
{
    std::vector<std::string> kinds;
    for (const auto &[kind, points] : productCatalogue().events())
        kinds.push_back(kind);
    return join(kinds, ", ");
}

struct PointsDue {
    std::vector<std::string> now;
    std::vector<std::pair<std::string, Distance>> later; ///< after how much more driving
};

// Of the points that an event makes due, those that this rig has: due by it now, or once it has been driven
// on.
Result<PointsDue> pointsDue(Session &session, const Happening &happening, const Rig &rig,
                            const std::vector<std::string> &named)
{
    Result<RigHistory> history = loadHistory(**session.book(), rig.id);
    if (!history)
        return history.error();
    weatherHistory(*history, &session.world(), happening.at);
    const auto bands = dueBands(session.catalogue(), *history, happening.at);
    PointsDue due;
    for (const std::string &point : named) {
        const DueBand *band = findBand(bands, point);
        if (band == nullptr)
            continue;
        if (band->dueNow || band->everyMove)
            due.now.push_back(point);
        else if (band->rule == "event:" + happening.kind && band->atDistance)
            due.later.emplace_back(point, *band->atDistance);
    }
    return due;
}

Result<Answer> event(Session &session, const std::string &kind, const std::string &note)
{
    const Result<Rig> rig = session.rig(); // first: the catalogue is then the rig's own
    const auto known = session.catalogue().events().find(kind);
    if (known == session.catalogue().events().end())
        return Error{Errc::NotFound, "no such event", kind, "use one of " + eventList()};
    const Result<Doer> doer = session.doer();
    const Result<LocalTime> now = session.now();
    if (!rig || !doer || !now)
        return !rig ? rig.error() : !doer ? doer.error() : now.error();
    const Happening happening{Id{}, rig->id, kind, *now, note};
    const Result<Id> id = addHappening(**session.book(), happening, *doer);
    if (!id)
        return id.error();
    const auto due = pointsDue(session, happening, *rig, known->second);
    if (!due)
        return due.error();
    Value json = toValue(happening);
    json.member("id") = id->text();
    json.member("due") = Value::List(due->now.begin(), due->now.end());
    Value::List later;
    std::string text = session.texts().word("events", kind) + ": written. ";
    if (due->now.empty() && due->later.empty())
        text += "It makes no point of this rig due.\n";
    if (!due->now.empty())
        text += "Due now:\n";
    for (const std::string &point : due->now)
        text += "  " + point + "  " + session.texts().point(point).title + "\n";
    if (!due->later.empty())
        text += "Due as it is driven:\n";
    for (const auto &[point, distance] : due->later) {
        later.emplace_back(
            Value::Map{{"point", point}, {"after", Value::Map{{"value", distance.si()}, {"unit", "m"}}}});
        text += "  " + point + "  " + session.texts().point(point).title + ", after " +
                format(distance, session.units()) + "\n";
    }
    json.member("later") = later;
    return Answer{json, text};
}

} // namespace

void addMendCommands(CLI::App &app, Registry &registry)
{
    auto o = std::make_shared<MendOptions>();
    CLI::App *mending = app.add_subcommand("mend", "work done: closes findings, restarts clocks");
    mending->add_option("findings", o->findings, "ids of the findings it closes");
    mending->add_option("--point", o->mend.points,
                        "a point worked on without a finding, such as bearing-repack");
    mending->add_option("--action", o->mend.action, join(mendActions(), ", "))->required();
    mending->add_option("--what", o->mend.what, "what was done")->required();
    mending->add_option(
        "--part", o->parts,
        "a part used, such as \"lap sealant, 2 cartridges\" or \"3 x rivet 3/16 in\"; may be repeated");
    mending->add_option("--cost", o->mend.cost, "with its currency");
    mending->add_option("--minutes", o->minutes, "how long it took");
    registry.add(
        *mending,
        "  snugwalk mend 3f2a90bc --action replace --what \"three rivets, large flange\" --part \"3 x rivet "
        "3/16 in\"\n  snugwalk mend 3f2a90bc --action reseal --what \"flange sealed\" --part \"lap sealant, "
        "2 "
        "cartridges\" --cost \"NZD 38\" --minutes 50",
        [o](Session &s) { return mend(s, *o); });
    auto kind = std::make_shared<std::string>();
    auto note = std::make_shared<std::string>();
    CLI::App *happening = app.add_subcommand("event", "something happened that makes points due at once");
    happening->add_option("kind", *kind, eventList())->required();
    happening->add_option("--note", *note, "in your words");
    registry.add(*happening, "  snugwalk event kerb_strike --note \"left rear wheel, gate post\"",
                 [kind, note](Session &s) { return event(s, *kind, *note); });
}

} // namespace snugwalk::cli
