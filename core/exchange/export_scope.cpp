// SPDX-License-Identifier: Apache-2.0
// From every entry what it names, then along the names to the rig.
#include "exchange/export_scope.hpp"

#include <array>
#include <map>

#include "base/value.hpp"

namespace snugwalk {
namespace {

constexpr std::array<std::string_view, 6> owners = {"rig", "walk", "finding", "photo", "opened_on", "look"};
using Owners = std::map<Id, std::set<Id>>; // of each entity

void addOwners(const Value &entry, const Id &entity, Owners &all)
{
    std::set<Id> &mine = all[entity];
    for (const std::string_view field : owners) {
        const auto id = Id::parse(entry["fields"][field].asString().value_or(""));
        if (id && !id->isNull())
            mine.insert(*id);
    }
}

} // namespace

Result<std::set<Id>> entitiesOfRig(sqlite::Connection &db, const Id &rig)
{
    Result<sqlite::Statement> rows = db.prepare("SELECT entity, bytes FROM entry ORDER BY stream, seq");
    if (!rows)
        return rows.error();
    Owners all;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            break;
        const Result<Value> entry = decodeCbor(rows->bytes(1));
        if (!entry)
            return entry.error();
        addOwners(*entry, Id::fromBytes(rows->bytes(0)), all);
    }
    std::set<Id> found = {rig};
    for (bool grew = true; grew;) { // as often as the longest chain of names, four or so
        grew = false;
        for (const auto &[entity, names] : all) {
            bool belongs = false;
            for (const Id &name : names)
                belongs = belongs || found.count(name) > 0;
            if (belongs)
                grew = found.insert(entity).second || grew;
        }
    }
    return found;
}

} // namespace snugwalk
