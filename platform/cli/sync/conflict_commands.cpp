// SPDX-License-Identifier: Apache-2.0
// conflict list, settle.
#include <algorithm>
#include <set>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "logbook/keep_version.hpp"

namespace snugwalk::cli {
namespace {

struct Typed {
    std::string id;
    std::vector<std::string> keep;
};

Value conflictJson(const Conflict &conflict)
{
    Value::List fields;
    for (const FieldConflict &field : conflict.fields) {
        Value::List versions;
        for (const Version &version : field.versions)
            versions.emplace_back(Value::Map{{"version", entryName(version.entry)},
                                             {"value", version.value},
                                             {"by", version.by},
                                             {"at", formatLocal(version.at)},
                                             {"device", version.device}});
        fields.emplace_back(
            Value::Map{{"field", field.field}, {"shown", field.shown}, {"versions", versions}});
    }
    return Value::Map{{"id", conflict.entity.text()}, {"type", conflict.type}, {"fields", fields}};
}

std::string valueText(const Value &value)
{
    return value.isNull() ? "taken away" : value.asString() ? *value.asString() : toJson(value, false);
}

std::string conflictText(Session &session, const Conflict &conflict)
{
    std::string text = conflict.entity.shortText() + "  " + conflict.type;
    const auto doc = thing((*session.book())->db(), conflict.type, conflict.entity);
    const auto point = doc ? doc->doc["point"].asString() : std::nullopt;
    text += point ? " " + *point + "\n" : "\n";
    for (const FieldConflict &field : conflict.fields) {
        text += "  " + field.field + ", shown: " + valueText(field.shown) + "\n";
        for (const Version &version : field.versions)
            text += "    " + entryName(version.entry) + "  " + valueText(version.value) + "  by " +
                    (version.by.empty() ? "somebody" : version.by) + ", " + formatLocalShort(version.at) +
                    (version.device.empty() ? "" : ", " + version.device) + "\n";
    }
    return text;
}

Result<std::vector<Conflict>> conflicts(Session &session)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    return conflictsOf(**book, rig->id);
}

Result<Answer> list(Session &session)
{
    const auto found = conflicts(session);
    if (!found)
        return found.error();
    Value::List json;
    std::string text;
    for (const Conflict &conflict : *found) {
        json.push_back(conflictJson(conflict));
        text += conflictText(session, conflict);
    }
    return Answer{Value::Map{{"conflicts", json}},
                  found->empty() ? "nothing that people wrote differently\n" : text};
}

// The entries that were named, each once.
Result<std::vector<EntryId>> keptOf(const Conflict &conflict, const Typed &typed)
{
    std::vector<EntryId> kept;
    for (const std::string &keep : typed.keep) {
        std::set<EntryId> found;
        for (const FieldConflict &field : conflict.fields) {
            for (const Version &version : field.versions) {
                if (keep.size() >= 4 && entryName(version.entry).compare(0, keep.size(), keep) == 0)
                    found.insert(version.entry);
            }
        }
        if (found.size() != 1)
            return Error{Errc::NotFound, "no such version: " + keep, conflict.entity.shortText(),
                         "see `snugwalk conflict list`; it may have changed since"};
        kept.push_back(*found.begin());
    }
    return kept;
}

Result<Answer> settle(Session &session, const Typed &typed)
{
    const auto found = conflicts(session);
    const auto doer = session.doer();
    if (!found || !doer)
        return found ? doer.error() : found.error();
    const auto starts = [&](const Conflict &conflict) {
        return typed.id.size() >= 4 && conflict.entity.text().compare(0, typed.id.size(), typed.id) == 0;
    };
    const auto conflict = std::find_if(found->begin(), found->end(), starts);
    if (conflict == found->end() || std::count_if(found->begin(), found->end(), starts) > 1)
        return Error{Errc::NotFound, "no one conflict of that id", typed.id, "see `snugwalk conflict list`"};
    const auto kept = keptOf(*conflict, typed);
    if (!kept)
        return kept.error();
    const auto settled = keepVersion(**session.book(), conflict->entity, *kept, *doer);
    if (!settled)
        return settled.error();
    return Answer{Value::Map{{"id", conflict->entity.text()},
                             {"settled", Value(settled->settled)},
                             {"gone", Value::List(settled->gone.begin(), settled->gone.end())},
                             {"left", Value::List(settled->left.begin(), settled->left.end())}},
                  counted(static_cast<std::int64_t>(settled->settled.size()), "field", "fields") +
                      " settled by an entry; the other versions stay in the logbook" +
                      (settled->left.empty() ? "" : "; still open: " + join(settled->left, ", ")) + "\n"};
}

} // namespace

void addConflictCommands(CLI::App &app, Registry &registry)
{
    CLI::App *conflict =
        app.add_subcommand("conflict", "what people wrote differently without knowing of each other");
    conflict->require_subcommand(1);
    registry.add(
        *conflict->add_subcommand("list", "both versions, by whom and when, and which is shown until then"),
        "  snugwalk conflict list", [](Session &s) { return list(s); });
    auto typed = std::make_shared<Typed>();
    CLI::App *settling =
        conflict->add_subcommand("settle", "choose a version; an entry that has seen all of them");
    settling->add_option("id", typed->id, "of the conflict")->required();
    settling
        ->add_option("--keep", typed->keep,
                     "the version to keep, as the list names it; one for each writer kept")
        ->required()
        ->allow_extra_args(false);
    registry.add(*settling, "  snugwalk --by \"M. Rata\" conflict settle 3f2a90bc --keep 7d10c2aa",
                 [typed](Session &s) { return settle(s, *typed); });
}

} // namespace snugwalk::cli
