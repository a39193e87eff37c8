// SPDX-License-Identifier: Apache-2.0
// Entries out of their table, decoded.
#include "logbook/entry_rows.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

const std::string columns =
    "SELECT entry.stream, entry.bytes, entry.hash FROM entry JOIN stream ON stream.id = "
    "entry.stream ";
// What was set aside (core/logbook/receive.hpp) is kept, but nothing that is read is made of it.
const std::string standing =
    "NOT EXISTS(SELECT 1 FROM aside WHERE aside.stream = entry.stream AND aside.seq = entry.seq) ";
const std::string order = " ORDER BY entry.hlc, stream.name, entry.seq";

Result<StoredEntry> storedFrom(const Statement &row)
{
    StoredEntry stored;
    stored.streamRow = row.integer(0);
    stored.bytes = row.bytes(1);
    Result<Entry> entry = entryFromBytes(stored.bytes);
    const auto hash = Hash::fromBytes(row.bytes(2));
    if (!entry)
        return entry.error();
    if (!hash)
        return Error{Errc::Corrupt, "an entry without its hash", "", "run `snugwalk check`"};
    stored.entry = std::move(entry).value();
    stored.hash = *hash;
    return stored;
}

Status visitRows(Statement &rows, const std::function<Status(const StoredEntry &)> &visit)
{
    return rows.each([&]() -> Status {
        const Result<StoredEntry> stored = storedFrom(rows);
        if (!stored)
            return stored.error();
        SNUG_TRY(visit(*stored));
        return done();
    });
}

Result<std::vector<StoredEntry>> entriesWhere(Connection &db, const std::string &condition,
                                              const std::vector<Id> &parameters)
{
    Result<Statement> rows = db.prepare(columns + "WHERE " + condition + " AND " + standing + order);
    if (!rows)
        return rows.error();
    int at = 0;
    for (const Id &id : parameters)
        rows->bindBytes(++at, id.view());
    std::vector<StoredEntry> found;
    const Status status = visitRows(*rows, [&](const StoredEntry &stored) {
        found.push_back(stored);
        return done();
    });
    if (!status)
        return status.error();
    return found;
}

} // namespace

Status eachStoredEntry(Connection &db, const std::function<Status(const StoredEntry &)> &visit)
{
    Result<Statement> rows = db.prepare(columns + "WHERE " + standing + order);
    if (!rows)
        return rows.error();
    return visitRows(*rows, visit);
}

Result<std::vector<StoredEntry>> entriesOf(Connection &db, const Id &entity)
{
    return entriesWhere(db, "entry.entity = ?", {entity});
}

Result<std::vector<StoredEntry>> entriesOfAct(Connection &db, const Id &scope, const Id &act)
{
    if (scope.isNull())
        return entriesWhere(db, "entry.scope IS NULL AND entry.act = ?", {act});
    return entriesWhere(db, "entry.scope = ? AND entry.act = ?", {scope, act});
}

Status hashRows(Statement &rows, Hasher &hasher)
{
    return rows.each([&]() -> Status {
        for (int column = 0; column < rows.columns(); ++column) {
            const std::string bytes = rows.bytes(column);
            hasher.add(std::to_string(bytes.size()) + (rows.isNull(column) ? "n" : ":"));
            hasher.add(bytes);
        }
        return done();
    });
}

} // namespace snugwalk
