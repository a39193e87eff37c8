// SPDX-License-Identifier: Apache-2.0
// conflict list, settle.
#include <algorithm>
#include <set>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "logbook/conflicts.hpp"

namespace snugwalk::cli {
namespace {

struct Typed {
    std::string id;
    std::vector<std::string> keep;
    std::vector<std::string> fields;
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

// In each field the value of the one version kept that stands there.
Result<Value::Map> chosenOf(const Conflict &conflict, const Typed &typed)
{
    Value::Map chosen;
    std::set<std::string> used;
    for (const FieldConflict &field : conflict.fields) {
        const bool isAsked = typed.fields.empty() || std::find(typed.fields.begin(), typed.fields.end(),
                                                               field.field) != typed.fields.end();
        for (const Version &version : field.versions) {
            const std::string name = entryName(version.entry);
            const auto kept =
                std::find_if(typed.keep.begin(), typed.keep.end(), [&](const std::string &keep) {
                    return keep.size() >= 4 && name.compare(0, keep.size(), keep) == 0;
                });
            if (!isAsked || kept == typed.keep.end())
                continue;
            if (chosen.count(field.field) > 0 && chosen[field.field] != version.value)
                return Error{Errc::Usage, "two versions of one field cannot both be kept", field.field,
                             "keep one"};
            chosen[field.field] = version.value;
            used.insert(*kept);
        }
    }
    for (const std::string &keep : typed.keep) {
        if (used.count(keep) == 0)
            return Error{Errc::NotFound, "no such version: " + keep, conflict.entity.shortText(),
                         "see `snugwalk conflict list`; it may have changed since"};
    }
    return chosen;
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
    const auto chosen = chosenOf(*conflict, typed);
    if (!chosen)
        return chosen.error();
    const auto receipt = resolveConflict(**session.book(), conflict->entity, *chosen, *doer);
    if (!receipt)
        return receipt.error();
    std::vector<std::string> left;
    for (const FieldConflict &field : conflict->fields) {
        if (chosen->count(field.field) == 0)
            left.push_back(field.field);
    }
    return Answer{Value::Map{{"id", conflict->entity.text()},
                             {"settled", Value(*chosen)},
                             {"left", Value::List(left.begin(), left.end())}},
                  counted(static_cast<std::int64_t>(chosen->size()), "field", "fields") +
                      " settled by an entry; the other versions stay in the logbook" +
                      (left.empty() ? "" : "; still open: " + join(left, ", ")) + "\n"};
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
        ->required();
    settling->add_option("--field", typed->fields,
                         "only this field (default: all in which that version stands)");
    registry.add(*settling, "  snugwalk --by \"M. Rata\" conflict settle 3f2a90bc --keep 7d10c2aa",
                 [typed](Session &s) { return settle(s, *typed); });
}

} // namespace snugwalk::cli
