// SPDX-License-Identifier: Apache-2.0
// Heads register: a value stands until an entry that names it as predecessor arrives; among values
// that did not know of each other the latest by (hlc, stream, seq) is shown, for marks the worst.
#include "logbook/projection.hpp"

#include <algorithm>
#include <map>

#include "logbook/entry_rows.hpp"
#include "logbook/thing.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Status runOnCell(Connection &db, const char *sql, const Id &entity, std::string_view field, std::int64_t stream,
                 std::int64_t seq)
{
    Result<Statement> statement = db.prepare(sql);
    if (!statement)
        return statement.error();
    statement->bindBytes(1, entity.view());
    statement->bind(2, field);
    statement->bind(3, stream);
    statement->bind(4, seq);
    return statement->run();
}

Result<bool> isDead(Connection &db, const Id &entity, std::string_view field, std::int64_t stream, std::int64_t seq)
{
    Result<Statement> statement =
        db.prepare("SELECT 1 FROM dead WHERE entity = ? AND field = ? AND stream = ? AND seq = ?");
    if (!statement)
        return statement.error();
    statement->bindBytes(1, entity.view());
    statement->bind(2, field);
    statement->bind(3, stream);
    statement->bind(4, seq);
    return statement->step();
}

Status putHead(Connection &db, const StoredEntry &stored, const std::string &field, const Value &value)
{
    Result<Statement> statement = db.prepare("INSERT OR REPLACE INTO head VALUES(?, ?, ?, ?, ?, ?)");
    if (!statement)
        return statement.error();
    statement->bindBytes(1, stored.entry.entity.view());
    statement->bind(2, field);
    statement->bind(3, stored.streamRow);
    statement->bind(4, stored.entry.id.seq);
    statement->bind(5, stored.entry.hlc);
    statement->bindBytes(6, encodeCbor(value));
    return statement->run();
}

// A predecessor may arrive after its successor: it is remembered as dead either way.
Status buryPredecessors(Connection &db, const StoredEntry &stored, const std::string &field)
{
    for (const EntryId &prev : stored.entry.prev) {
        const auto row = streamRow(db, prev.stream);
        if (!row)
            return row.error();
        SNUG_TRY(runOnCell(db, "INSERT OR IGNORE INTO dead VALUES(?, ?, ?, ?)", stored.entry.entity, field, *row, prev.seq));
        SNUG_TRY(runOnCell(db, "DELETE FROM head WHERE entity = ? AND field = ? AND stream = ? AND seq = ?",
                           stored.entry.entity, field, *row, prev.seq));
    }
    return done();
}

int markRank(const Value &value)
{
    const std::string state = value.asString().value_or("");
    if (state == "attention")
        return 4;
    if (state == "could_not_look")
        return 3;
    if (state == "pass")
        return 2;
    return state == "not_fitted" ? 1 : 0;
}

const Head &shown(const std::string &type, const std::string &field, const std::vector<Head> &heads)
{
    const bool worst = type == "mark" && field == "state";
    return *std::max_element(heads.begin(), heads.end(), [&](const Head &a, const Head &b) {
        if (worst && markRank(a.value) != markRank(b.value))
            return markRank(a.value) < markRank(b.value);
        return std::tie(a.hlc, a.id) < std::tie(b.hlc, b.id);
    });
}

Status refreshThing(Connection &db, const Id &entity, const std::string &type)
{
    Result<Statement> fields = db.prepare("SELECT DISTINCT field FROM head WHERE entity = ? ORDER BY field");
    if (!fields)
        return fields.error();
    fields->bindBytes(1, entity.view());
    Value::Map doc;
    for (;;) {
        const Result<bool> row = fields->step();
        if (!row)
            return row.error();
        if (!*row)
            break;
        const std::string field = fields->text(0);
        const auto heads = headsOf(db, entity, field);
        if (!heads)
            return heads.error();
        const Value &value = shown(type, field, *heads).value;
        if (!value.isNull())
            doc[field] = value;
    }
    return putThing(db, entity, type, doc);
}

} // namespace

Result<std::int64_t> streamRow(Connection &db, const StreamId &stream)
{
    Result<Statement> find = db.prepare("SELECT id FROM stream WHERE name = ?");
    if (!find)
        return find.error();
    find->bindBytes(1, stream.bytes());
    const Result<bool> row = find->step();
    if (!row)
        return row.error();
    if (*row)
        return find->integer(0);
    return Error{Errc::Corrupt, "an entry names a stream that this logbook does not know", stream.text(),
                 "run `snugwalk check`"};
}

Result<std::vector<Head>> headsOf(Connection &db, const Id &entity, std::string_view field)
{
    Result<Statement> statement =
        db.prepare("SELECT head.stream, stream.name, head.seq, head.hlc, head.value FROM head JOIN stream ON "
                   "stream.id = head.stream WHERE entity = ? AND field = ? ORDER BY hlc, name, seq");
    if (!statement)
        return statement.error();
    statement->bindBytes(1, entity.view());
    statement->bind(2, field);
    std::vector<Head> heads;
    for (;;) {
        const Result<bool> row = statement->step();
        if (!row)
            return row.error();
        if (!*row)
            return heads;
        const Result<StreamId> stream = streamFromBytes(statement->bytes(1));
        Result<Value> value = decodeCbor(statement->bytes(4));
        if (!stream || !value)
            return Error{Errc::Corrupt, "a projected value cannot be read", db.file(), "run `snugwalk check`"};
        heads.push_back({statement->integer(0), {*stream, statement->integer(2)}, statement->integer(3),
                         std::move(value).value()});
    }
}

Status project(Connection &db, const StoredEntry &stored)
{
    const Entry &entry = stored.entry;
    for (const auto &[field, value] : entry.fields) {
        SNUG_TRY(buryPredecessors(db, stored, field));
        const auto dead = isDead(db, entry.entity, field, stored.streamRow, entry.id.seq);
        if (!dead)
            return dead.error();
        if (!*dead)
            SNUG_TRY(putHead(db, stored, field, value));
    }
    return refreshThing(db, entry.entity, entry.type);
}

Status rebuildProjection(Connection &db)
{
    SNUG_TRY(db.exec("DELETE FROM head; DELETE FROM dead; DELETE FROM thing"));
    return eachStoredEntry(db, [&](const StoredEntry &stored) { return project(db, stored); });
}

Result<Hash> projectionHash(Connection &db)
{
    Hasher hasher;
    for (const char *sql : {"SELECT entity || field, stream, seq, hlc, value FROM head ORDER BY entity, field, stream, seq",
                            "SELECT entity || field, stream, seq FROM dead ORDER BY entity, field, stream, seq",
                            "SELECT id, type, rig, parent, key, sort, doc FROM thing ORDER BY id"}) {
        Result<Statement> rows = db.prepare(sql);
        if (!rows)
            return rows.error();
        SNUG_TRY(hashRows(*rows, hasher));
    }
    return hasher.finish();
}

} // namespace snugwalk
