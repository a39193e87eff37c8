// SPDX-License-Identifier: Apache-2.0
// Worked out under the write lock, so that a version that arrives meanwhile is seen.
#include "logbook/keep_version.hpp"

#include <algorithm>
#include <set>

#include "logbook/projection.hpp"

namespace snugwalk {
namespace {

using Names = std::set<EntryId>;

Result<KeptVersion> chosenOf(const Conflict &conflict, const Names &kept)
{
    KeptVersion chosen;
    Names used;
    for (const FieldConflict &field : conflict.fields) {
        for (const Version &version : field.versions) {
            if (kept.count(version.entry) == 0)
                continue;
            const auto [at, isNew] = chosen.settled.emplace(field.field, version.value);
            if (!isNew && at->second != version.value)
                return Error{Errc::InvalidInput, "two versions of one field cannot both be kept", field.field,
                             "keep one of them"};
            used.insert(version.entry);
        }
        if (chosen.settled.count(field.field) == 0)
            chosen.left.push_back(field.field);
    }
    if (used != kept || kept.empty())
        return Error{Errc::NotFound, "this version is no longer among those that differ",
                     conflict.entity.shortText(), "list the conflicts again"};
    return chosen;
}

// Fields in which nothing stands but what versions not kept wrote.
std::vector<std::string> onlyOthers(const Conflict &conflict, const Names &kept,
                                    const std::map<std::string, std::vector<Head>> &heads)
{
    Names others;
    for (const FieldConflict &field : conflict.fields) {
        for (const Version &version : field.versions) {
            if (kept.count(version.entry) == 0)
                others.insert(version.entry);
        }
    }
    std::vector<std::string> gone;
    for (const auto &[field, values] : heads) {
        const bool all = std::all_of(values.begin(), values.end(), [&](const Head &head) {
            return others.count(head.id) > 0 && !head.value.isNull();
        });
        if (all && !values.empty())
            gone.push_back(field);
    }
    return gone;
}

} // namespace

Result<KeptVersion> keepVersion(Logbook &book, const Id &entity, const std::vector<EntryId> &kept,
                                const Doer &doer)
{
    KeptVersion answer;
    const auto receipt = book.record([&]() -> Result<Act> {
        const auto conflicts = conflictsOf(book, Id{});
        const auto heads = headsOf(book.db(), entity);
        if (!conflicts || !heads)
            return conflicts ? heads.error() : conflicts.error();
        const auto conflict = std::find_if(conflicts->begin(), conflicts->end(),
                                           [&](const Conflict &c) { return c.entity == entity; });
        if (conflict == conflicts->end())
            return Error{Errc::NotFound, "nobody disagrees about this", entity.shortText(),
                         "list the conflicts first"};
        const Names names(kept.begin(), kept.end());
        auto chosen = chosenOf(*conflict, names);
        if (!chosen)
            return chosen.error();
        Value::Map fields = chosen->settled;
        for (const auto &[field, values] : *heads) { // by whom and when goes with what
            for (const Head &head : values) {
                if (values.size() > 1 && names.count(head.id) > 0)
                    fields.emplace(field, head.value);
            }
        }
        for (const std::string &field : onlyOthers(*conflict, names, *heads)) {
            if (fields.emplace(field, Value()).second)
                chosen->gone.push_back(field);
        }
        answer = std::move(chosen).value();
        return Act{doer.by, doer.at, doer.where, Id{}, Id{}, {{entity, conflict->type, fields}}};
    });
    return receipt ? Result<KeptVersion>(answer) : receipt.error();
}

} // namespace snugwalk
