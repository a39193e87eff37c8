// SPDX-License-Identifier: Apache-2.0
// aside list, adopt: entries that came and do not count.
#include <algorithm>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"

namespace snugwalk::cli {
namespace {

struct Typed {
    std::vector<std::string> entries;
    bool all = false;
};

Value asideJson(const SetAside &item)
{
    return Value::Map{{"entry", entryName(item.entry.id)},
                      {"device", item.entry.id.stream.device.text()},
                      {"type", item.entry.type},
                      {"of", item.entry.entity.text()},
                      {"fields", Value(item.entry.fields)},
                      {"by", item.entry.by},
                      {"at", formatLocal(item.entry.at)},
                      {"reason", item.reason}};
}

std::string asideLine(const SetAside &item)
{
    const Value fields(item.entry.fields);
    std::string what = item.entry.type;
    for (const char *member : {"point", "state", "what"}) {
        if (const auto text = fields[member].asString())
            what += " " + *text;
    }
    return entryName(item.entry.id) + "  " + what + "  by " +
           (item.entry.by.empty() ? "somebody" : item.entry.by) + " on " +
           item.entry.id.stream.device.shortText() + ", " + formatLocalShort(item.entry.at) + ": " +
           item.reason + "\n";
}

Result<Answer> list(Session &session)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    const auto rig = sharedRig(session);
    if (!rig)
        return rig.error();
    const auto aside = asideOf(**book, *rig);
    if (!aside)
        return aside.error();
    Value::List json;
    std::string text;
    for (const SetAside &item : *aside) {
        json.push_back(asideJson(item));
        text += asideLine(item);
    }
    return Answer{Value::Map{{"aside", json}}, aside->empty() ? "nothing is set aside\n" : text};
}

Result<std::vector<EntryId>> named(const std::vector<SetAside> &aside, const Typed &typed)
{
    std::vector<EntryId> ids;
    if (typed.all == !typed.entries.empty())
        return Error{Errc::Usage, "name entries, or --all", "", "one of both; see `snugwalk aside list`"};
    for (const SetAside &item : aside) {
        if (typed.all)
            ids.push_back(item.entry.id);
    }
    for (const std::string &name : typed.entries) {
        const auto found = std::find_if(aside.begin(), aside.end(), [&](const SetAside &item) {
            return name.size() >= 4 && entryName(item.entry.id).compare(0, name.size(), name) == 0;
        });
        if (found == aside.end())
            return Error{Errc::NotFound, "no such entry is set aside", name, "see `snugwalk aside list`"};
        ids.push_back(found->entry.id);
    }
    if (ids.empty())
        return Error{Errc::NotFound, "nothing is set aside", "", "there is nothing to adopt"};
    return ids;
}

Result<Answer> adopt(Session &session, const Typed &typed)
{
    const auto keys = keysOf(session);
    if (!keys)
        return keys.error();
    const auto rig = sharedRig(session);
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    const auto aside = asideOf(book, *rig);
    if (!aside)
        return aside.error();
    const auto ids = named(*aside, typed);
    if (!ids)
        return ids.error();
    SNUG_TRY(adoptEntries(book, *keys, *rig, *ids));
    const auto left = asideOf(book, *rig);
    if (!left)
        return left.error();
    return Answer{Value::Map{{"adopted", ids->size()}, {"aside", left->size()}},
                  counted(static_cast<std::int64_t>(ids->size()), "entry counts", "entries count") +
                      " from now on, in your name; " + std::to_string(left->size()) + " still set aside\n"};
}

} // namespace

void addAsideCommands(CLI::App &app, Registry &registry)
{
    CLI::App *aside = app.add_subcommand(
        "aside", "entries that do not count: of revoked devices, out of a role. Kept, shown, never applied");
    aside->require_subcommand(1);
    registry.add(*aside->add_subcommand("list", "each with who wrote it and why it does not count"),
                 "  snugwalk aside list", [](Session &s) { return list(s); });
    auto typed = std::make_shared<Typed>();
    CLI::App *adopting =
        aside->add_subcommand("adopt", "an owner takes entries over: they count from now on, everywhere");
    adopting->add_option("entries", typed->entries, "as the list names them");
    adopting->add_flag("--all", typed->all, "all that are set aside");
    registry.add(*adopting, "  snugwalk aside adopt 3f2a90bc 7d10c2aa\n  snugwalk aside adopt --all",
                 [typed](Session &s) { return adopt(s, *typed); });
}

} // namespace snugwalk::cli
