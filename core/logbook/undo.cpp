// SPDX-License-Identifier: Apache-2.0
// Taking an act back: new entries that set every field to what it was before.
#include <algorithm>

#include "logbook/entry_rows.hpp"
#include "logbook/logbook.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Result<Id> lastAct(Connection &db, const Id &walk)
{
    Result<Statement> rows = db.prepare(
        "SELECT act FROM entry WHERE scope = ?1 AND undoes IS NULL AND act NOT IN "
        "(SELECT undoes FROM entry WHERE scope = ?1 AND undoes IS NOT NULL) ORDER BY hlc DESC, seq DESC LIMIT 1");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, walk.view());
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    if (!*row)
        return Error{Errc::NotFound, "nothing to undo on this walk", walk.shortText(), ""};
    return Id::fromBytes(rows->bytes(0));
}

// What `field` was among the entry's predecessors: the latest of them that set it.
Result<Value> valueBefore(Connection &db, const Entry &entry, const std::string &field)
{
    const auto history = entriesWhere(db, "entry.entity = ?", entry.entity.view());
    if (!history)
        return history.error();
    Value before;
    for (const StoredEntry &stored : *history) {
        const bool known =
            std::find(entry.prev.begin(), entry.prev.end(), stored.entry.id) != entry.prev.end();
        const auto found = stored.entry.fields.find(field);
        if (known && found != stored.entry.fields.end())
            before = found->second;
    }
    return before;
}

} // namespace

Result<Receipt> Logbook::undo(const Id &walk, const std::string &by)
{
    const Result<Id> undone = lastAct(m_db, walk);
    if (!undone)
        return undone.error();
    const auto entries = entriesWhere(m_db, "entry.act = ?", undone->view());
    if (!entries)
        return entries.error();
    Act act;
    act.by = by;
    act.scope = walk;
    act.undoes = *undone;
    for (auto it = entries->rbegin(); it != entries->rend(); ++it) {
        Change change{it->entry.entity, it->entry.type, {}};
        for (const auto &[field, value] : it->entry.fields) {
            Result<Value> before = valueBefore(m_db, it->entry, field);
            if (!before)
                return before.error();
            change.fields[field] = std::move(before).value();
        }
        act.changes.push_back(std::move(change));
    }
    return record(act);
}

} // namespace snugwalk
