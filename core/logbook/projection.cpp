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
    int parameter = 5; // the first five are the same in every row
    for (const auto &[field, value] : stored.entry.fields) {
        if (dead->count(field) > 0)
            continue;
        sql += sql.empty() ? "INSERT OR REPLACE INTO head VALUES" : ",";
        sql += "(?1, ?" + std::to_string(parameter + 1) + ", ?2, ?3, ?4, ?" + std::to_string(parameter + 2) +
               ", ?5)";
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
    statement->bind(5, stored.entry.type);
    int at = 5;
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
        const auto row = streamRowOrNew(db, prev.stream);
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

// The type is that of the latest entry whose value is shown, so that it too is the same in any order.
Status refreshThing(Connection &db, const Id &entity)
{
    const auto heads = headsOf(db, entity);
    if (!heads)
        return heads.error();
    Value::Map doc;
    const Head *latest = nullptr;
    for (const auto &[field, values] : *heads) {
        const Head &shown = shownHead(field, values);
        if (shown.value.isNull())
            continue;
        doc[field] = shown.value;
        if (latest == nullptr || std::tie(latest->hlc, latest->id) < std::tie(shown.hlc, shown.id))
            latest = &shown;
    }
    return putThing(db, entity, latest == nullptr ? "" : latest->type, doc);
}

Status projectHeads(Connection &db, const StoredEntry &stored)
{
    for (const auto &[field, value] : stored.entry.fields)
        SNUG_TRY(buryPredecessors(db, stored, field));
    return putHeads(db, stored);
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

Result<std::int64_t> streamRowOrNew(Connection &db, const StreamId &stream, std::string_view publicKey)
{
    Result<Statement> insert = db.prepare("INSERT INTO stream(name, public_key, label, own, partial) "
                                          "VALUES(?1, ?2, '', 0, 1) ON CONFLICT(name) DO UPDATE SET "
                                          "public_key = ?2 WHERE public_key = zeroblob(32)");
    if (!insert)
        return insert.error();
    const Result<std::int64_t> known = streamRow(db, stream);
    if (known && publicKey.empty())
        return known;
    insert->bindBytes(1, stream.bytes());
    insert->bindBytes(2, publicKey.empty() ? std::string(32, '\0') : std::string(publicKey));
    SNUG_TRY(insert->run());
    return streamRow(db, stream);
}

const Head &shownHead(const std::string &field, const std::vector<Head> &heads)
{
    const bool worst = field == "state" && std::any_of(heads.begin(), heads.end(),
                                                       [](const Head &head) { return head.type == "mark"; });
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
        db.prepare("SELECT head.field, head.stream, stream.name, head.seq, head.hlc, head.value, "
                   "head.type FROM head "
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
                                             std::move(value).value(),
                                             statement->text(6)});
    }
}

Status project(Connection &db, const StoredEntry &stored)
{
    SNUG_TRY(projectHeads(db, stored));
    return refreshThing(db, stored.entry.entity);
}

Status project(Connection &db, const std::vector<StoredEntry> &entries)
{
    std::set<Id> touched;
    for (const StoredEntry &stored : entries) {
        SNUG_TRY(projectHeads(db, stored));
        touched.insert(stored.entry.entity);
    }
    for (const Id &entity : touched)
        SNUG_TRY(refreshThing(db, entity));
    return done();
}

Status rebuildProjection(Connection &db)
{
    SNUG_TRY(db.exec("DELETE FROM head; DELETE FROM dead; DELETE FROM thing"));
    std::set<Id> touched;
    SNUG_TRY(eachStoredEntry(db, [&](const StoredEntry &stored) {
        touched.insert(stored.entry.entity);
        return projectHeads(db, stored);
    }));
    for (const Id &entity : touched)
        SNUG_TRY(refreshThing(db, entity));
    return done();
}

Result<Hash> projectionHash(Connection &db)
{
    Hasher hasher;
    // streams by name: their row numbers differ from file to file
    for (const char *sql : {"SELECT entity, field, name, seq, hlc, value, head.type FROM head JOIN stream ON "
                            "stream.id = stream "
                            "ORDER BY entity, field, name, seq",
                            "SELECT entity, field, name, seq FROM dead JOIN stream ON stream.id = stream "
                            "ORDER BY entity, field, name, seq",
                            "SELECT id, type, rig, parent, key, sort, doc FROM thing ORDER BY id"}) {
        Result<Statement> rows = db.prepare(sql);
        if (!rows)
            return rows.error();
        SNUG_TRY(hashRows(*rows, hasher));
    }
    return hasher.finish();
}

} // namespace snugwalk
