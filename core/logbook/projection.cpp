// SPDX-License-Identifier: Apache-2.0
// Heads register: a value stands until an entry that names it as predecessor arrives; among values
// that did not know of each other the latest by (hlc, stream, seq) is shown, for marks the worst.
#include "logbook/projection.hpp"

#include <algorithm>
#include <set>
#include <tuple>

#include "logbook/entry_rows.hpp"
#include "logbook/thing.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Status runOnCell(Connection &db, const char *sql, const Id &entity, std::string_view field,
                 std::int64_t stream, std::int64_t seq)
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

// Fields of the entry whose successor came first: they are dead on arrival.
Result<std::set<std::string>> deadFields(Connection &db, const StoredEntry &stored)
{
    Result<Statement> rows = db.prepare("SELECT field FROM dead WHERE entity = ? AND stream = ? AND seq = ?");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, stored.entry.entity.view());
    rows->bind(2, stored.streamRow);
    rows->bind(3, stored.entry.id.seq);
    std::set<std::string> dead;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return dead;
        dead.insert(rows->text(0));
    }
}

// All fields in one statement: it takes a third of the time of one each.
Status putHeads(Connection &db, const StoredEntry &stored)
{
    const auto dead = deadFields(db, stored);
    if (!dead)
        return dead.error();
    std::string sql;
    int parameter = 4; // the first four are the same in every row
    for (const auto &[field, value] : stored.entry.fields) {
        if (dead->count(field) > 0)
            continue;
        sql += sql.empty() ? "INSERT OR REPLACE INTO head VALUES" : ",";
        sql += "(?1, ?" + std::to_string(parameter + 1) + ", ?2, ?3, ?4, ?" + std::to_string(parameter + 2) +
               ")";
        parameter += 2;
    }
    if (sql.empty())
        return done();
    Result<Statement> statement = db.prepare(sql);
    if (!statement)
        return statement.error();
    statement->bindBytes(1, stored.entry.entity.view());
    statement->bind(2, stored.streamRow);
    statement->bind(3, stored.entry.id.seq);
    statement->bind(4, stored.entry.hlc);
    int at = 4;
    for (const auto &[field, value] : stored.entry.fields) {
        if (dead->count(field) > 0)
            continue;
        statement->bind(++at, field);
        statement->bindBytes(++at, encodeCbor(value));
    }
    return statement->run();
}

// A predecessor may arrive after its successor: it is remembered as dead either way.
Status buryPredecessors(Connection &db, const StoredEntry &stored, const std::string &field)
{
    for (const EntryId &prev : stored.entry.prev) {
        const auto row = streamRow(db, prev.stream);
        if (!row)
            return row.error();
        SNUG_TRY(runOnCell(db, "INSERT OR IGNORE INTO dead VALUES(?, ?, ?, ?)", stored.entry.entity, field,
                           *row, prev.seq));
        SNUG_TRY(runOnCell(db, "DELETE FROM head WHERE entity = ? AND field = ? AND stream = ? AND seq = ?",
                           stored.entry.entity, field, *row, prev.seq));
    }
    return done();
}

// A state of a newer version ranks worst: it is shown as needing a person.
int markRank(const Value &value)
{
    if (value.isNull())
        return 0;
    const std::string state = value.asString().value_or("");
    if (state == "attention")
        return 4;
    if (state == "could_not_look")
        return 3;
    if (state == "pass")
        return 2;
    return state == "not_fitted" ? 1 : 5;
}

Status refreshThing(Connection &db, const Id &entity, const std::string &type)
{
    const auto heads = headsOf(db, entity);
    if (!heads)
        return heads.error();
    Value::Map doc;
    for (const auto &[field, values] : *heads) {
        const Value &value = shownHead(type, field, values).value;
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

const Head &shownHead(const std::string &type, const std::string &field, const std::vector<Head> &heads)
{
    const bool worst = type == "mark" && field == "state";
    const auto rank = [&](const Head &head) {
        return worst ? markRank(head.value) : head.value.isNull() ? 0 : 1;
    };
    return *std::max_element(heads.begin(), heads.end(), [&](const Head &a, const Head &b) {
        return std::make_tuple(rank(a), a.hlc, a.id) < std::make_tuple(rank(b), b.hlc, b.id);
    });
}

Result<HeadsByField> headsOf(Connection &db, const Id &entity)
{
    Result<Statement> statement =
        db.prepare("SELECT head.field, head.stream, stream.name, head.seq, head.hlc, head.value FROM head "
                   "JOIN stream ON "
                   "stream.id = head.stream WHERE entity = ? ORDER BY hlc, name, seq");
    if (!statement)
        return statement.error();
    statement->bindBytes(1, entity.view());
    HeadsByField heads;
    for (;;) {
        const Result<bool> row = statement->step();
        if (!row)
            return row.error();
        if (!*row)
            return heads;
        const Result<StreamId> stream = streamFromBytes(statement->bytes(2));
        Result<Value> value = decodeCbor(statement->bytes(5));
        if (!stream || !value)
            return Error{Errc::Corrupt, "a projected value cannot be read", db.file(),
                         "run `snugwalk check`"};
        heads[statement->text(0)].push_back({statement->integer(1),
                                             {*stream, statement->integer(3)},
                                             statement->integer(4),
                                             std::move(value).value()});
    }
}

Status project(Connection &db, const StoredEntry &stored)
{
    const Entry &entry = stored.entry;
    for (const auto &[field, value] : entry.fields)
        SNUG_TRY(buryPredecessors(db, stored, field));
    SNUG_TRY(putHeads(db, stored));
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
    for (const char *sql :
         {"SELECT entity || field, stream, seq, hlc, value FROM head ORDER BY entity, field, stream, seq",
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
