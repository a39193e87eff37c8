// SPDX-License-Identifier: Apache-2.0
// From an entry to its rig.
#include "logbook/space_of.hpp"

#include <array>

#include "logbook/entry_rows.hpp"

namespace snugwalk {
namespace {

constexpr int maxSteps = 6; // mark, walk, rig is 3; a circle of references ends here
constexpr std::array references = {"walk", "finding", "photo", "opened_on", "look", "findings", "trip"};

std::optional<Id> idIn(const Value &value) { return Id::parse(value.asString().value_or("")); }

} // namespace

Result<Id> RigFinder::fromFields(const Value &fields, int depth)
{
    if (const auto rig = idIn(fields["rig"]))
        return *rig;
    for (const char *field : references) {
        const Value &value = fields[field];
        const auto target = idIn(value.list().empty() ? value : value.list().front());
        if (!target)
            continue;
        const Result<Id> rig = rigOfEntity(*target, depth + 1);
        if (!rig || !rig->isNull())
            return rig;
    }
    return Id{};
}

Result<Id> RigFinder::rigOfEntity(const Id &entity, int depth)
{
    if (const auto known = m_known.find(entity); known != m_known.end())
        return known->second;
    if (depth > maxSteps)
        return Id{};
    const auto entries = entriesOf(m_db, entity);
    if (!entries)
        return entries.error();
    for (const StoredEntry &stored : *entries) {
        const Entry &entry = stored.entry;
        Result<Id> rig = entry.type == "rig" ? Result<Id>(entity) : fromFields(Value(entry.fields), depth);
        if (rig && rig->isNull() && !entry.scope.isNull() && entry.scope != entity)
            rig = rigOfEntity(entry.scope, depth + 1);
        if (!rig)
            return rig;
        if (!rig->isNull()) {
            m_known[entity] = *rig;
            return rig;
        }
    }
    return Id{};
}

Result<Id> RigFinder::rigOf(const Entry &entry)
{
    if (entry.type == "rig")
        return entry.entity;
    Result<Id> rig = fromFields(Value(entry.fields), 0);
    if (rig && rig->isNull())
        rig = rigOfEntity(entry.entity, 0);
    if (rig && rig->isNull() && !entry.scope.isNull())
        rig = rigOfEntity(entry.scope, 0);
    return rig;
}

} // namespace snugwalk
