// SPDX-License-Identifier: Apache-2.0
// device list, revoke; and share, which begins it all.
#include "cli/commands.hpp"
#include "cli/sync/offer.hpp"
#include "cli/sync/parts.hpp"
#include "logbook/query.hpp"

namespace snugwalk::cli {
namespace {

Value memberJson(const Member &member, const Id &mine)
{
    const auto role = member.role();
    return Value::Map{{"device", member.device.text()},
                      {"name", member.name},
                      {"role", role ? Value(slugOf(*role)) : Value()},
                      {"since", formatLocal(member.since)},
                      {"until", member.accessUntil},
                      {"revoked", !role},
                      {"reason", member.reason},
                      {"this_device", member.device == mine}};
}

std::string memberLine(const Member &member, const Id &mine, const LocalTime &now)
{
    const auto role = member.role();
    std::string line = member.device.shortText() + "  " + (role ? std::string(slugOf(*role)) : "revoked") +
                       "  " + member.name + (member.device == mine ? " (this device)" : "") + ", since " +
                       formatLocalShort(member.since);
    if (role && !member.accessUntil.empty()) {
        const auto until = parseDate(member.accessUntil);
        const bool isOver = until && daysBetween(*until, civilDate(now)) > 0;
        line += ", until " + member.accessUntil +
                (isOver ? " (over: revoke it to end it)" : " (a hint; revoking ends it)");
    }
    if (!role && !member.reason.empty())
        line += ", " + member.reason;
    return line + "\n";
}

Result<Answer> list(Session &session)
{
    const auto keys = keysOf(session);
    const auto rig = sharedRig(session);
    const auto now = session.now();
    if (!keys || !rig || !now)
        return keys ? rig ? now.error() : rig.error() : keys.error();
    const auto members = membersOf(**session.book(), *rig);
    if (!members)
        return members.error();
    Value::List json;
    std::string text;
    for (const auto &item : members->members) {
        json.push_back(memberJson(item.second, keys->device.deviceId()));
        text += memberLine(item.second, keys->device.deviceId(), *now);
    }
    if (members->members.empty())
        text = "this device has no records of the rig yet: sync first\n";
    return Answer{Value::Map{{"rig", rig->text()}, {"devices", json}}, text};
}

Result<Member> memberTyped(const RigMembers &members, const std::string &typed)
{
    std::vector<Member> found;
    for (const auto &item : members.members) {
        const bool starts = typed.size() >= 4 && item.first.text().compare(0, typed.size(), typed) == 0;
        if (starts || item.second.name == typed)
            found.push_back(item.second);
    }
    if (found.size() == 1)
        return found.front();
    return Error{found.empty() ? Errc::NotFound : Errc::Usage,
                 found.empty() ? "no such device belongs to this rig" : "more than one device is called so",
                 typed, "give the first digits of its id, as `snugwalk device list` has them"};
}

Result<Answer> revoke(Session &session, const std::string &typed, const std::string &reason)
{
    const auto keys = keysOf(session);
    const auto rig = sharedRig(session);
    if (!keys || !rig)
        return keys ? rig.error() : keys.error();
    Logbook &book = **session.book();
    const auto members = membersOf(book, *rig);
    if (!members)
        return members.error();
    const auto member = memberTyped(*members, typed);
    if (!member)
        return member.error();
    SNUG_TRY(revokeDevice(book, *keys, *rig, member->device, reason));
    const auto after = membersOf(book, *rig);
    if (!after)
        return after.error();
    return Answer{memberJson(*after->find(member->device), keys->device.deviceId()),
                  member->name +
                      " is revoked: what has arrived here counts, what it writes from now on is set "
                      "aside.\nThe others get a new key with the next sync. What it has read already it "
                      "keeps; nothing can take that back.\n"};
}

Result<Answer> share(Session &session, const std::string &name, const OfferTyped &typed)
{
    const auto keys = keysOf(session);
    if (!keys)
        return keys.error();
    SNUG_TRY(checkUntil(typed.until)); // before the sharing begins
    if (typed.role.empty() && (!typed.until.empty() || !typed.qr.empty()))
        return Error{Errc::Usage, "an offer needs the role it offers", "--role", "such as --role technician"};
    Logbook &book = **session.book();
    const auto rig = findRig(book, name);
    const auto shared = sharedRigs(book);
    if (!rig || !shared)
        return rig ? shared.error() : rig.error();
    bool isShared = false;
    for (const auto &item : *shared)
        isShared = isShared || item.first == rig->id;
    if (!isShared)
        SNUG_TRY(shareRig(book, *keys, rig->id));
    if (!typed.role.empty())
        return offer(session, rig->id, typed);
    return Answer{Value::Map{{"rig", rig->id.text()}, {"began", !isShared}},
                  rig->name +
                      (isShared ? " is shared already\n"
                                : " is shared from now on; this device is its owner. `snugwalk key backup` "
                                  "prints a key for the day it is lost.\n")};
}

} // namespace

void addShareCommand(CLI::App &app, Registry &registry)
{
    auto rig = std::make_shared<std::string>();
    auto typed = std::make_shared<OfferTyped>();
    CLI::App *sub = app.add_subcommand(
        "share", "share one rig: begin, and offer another device a place in it (good for ten minutes)");
    sub->add_option("name", *rig, "name or id of the rig")->required();
    addOfferOptions(*sub, *typed);
    registry.add(*sub,
                 "  snugwalk share Heron\n"
                 "  snugwalk share Heron --role technician --until 2026-12-24 --qr offer.png",
                 [=](Session &s) { return share(s, *rig, *typed); });
}

void addDeviceCommands(CLI::App &app, Registry &registry)
{
    CLI::App *device = app.add_subcommand("device", "who belongs to a shared rig, and with which role");
    device->require_subcommand(1);
    addOfferCommands(*device, registry);
    registry.add(*device->add_subcommand("list", "the devices of the rig, revoked ones too"),
                 "  snugwalk device list", [](Session &s) { return list(s); });
    auto typed = std::make_shared<std::string>();
    auto reason = std::make_shared<std::string>();
    CLI::App *revoking = device->add_subcommand(
        "revoke",
        "end a device's part: lost, sold, job done. What has arrived here still counts, later entries are "
        "set aside");
    revoking->add_option("device", *typed, "its name, or the first digits of its id")->required();
    revoking->add_option("--reason", *reason, "why, for the others");
    registry.add(*revoking, "  snugwalk device revoke 3f2a90bc --reason \"phone lost\"",
                 [=](Session &s) { return revoke(s, *typed, *reason); });
}

} // namespace snugwalk::cli
