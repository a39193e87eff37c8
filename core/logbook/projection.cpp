// SPDX-License-Identifier: Apache-2.0
// Streams by row, heads as values, and the whole projection from the log.
#include "logbook/projection.hpp"

#include <algorithm>
#include <set>
#include <tuple>

#include "logbook/entry_rows.hpp"
#include "logbook/projector.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

// How many entries are taken into memory at once when all are read again.
constexpr std::size_t portion = 5000;

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
    const auto rank = [&](const Head &head) { return rankOf(encodeCbor(head.value), worst); };
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
    SNUG_TRY(statement->each([&]() -> Status {
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
        return done();
    }));
    return heads;
}

Status project(Connection &db, const StoredEntry &stored) { return Projector(db).apply({&stored}); }

Status project(Connection &db, const std::vector<StoredEntry> &entries)
{
    std::vector<const StoredEntry *> pointers;
    pointers.reserve(entries.size());
    for (const StoredEntry &stored : entries)
        pointers.push_back(&stored);
    return Projector(db).apply(pointers);
}

Status rebuildProjection(Connection &db)
{
    SNUG_TRY(db.exec("DELETE FROM head; DELETE FROM dead; DELETE FROM thing"));
    std::vector<StoredEntry> waiting;
    SNUG_TRY(eachStoredEntry(db, [&](const StoredEntry &stored) {
        waiting.push_back(stored);
        if (waiting.size() < portion)
            return done();
        const Status applied = project(db, waiting);
        waiting.clear();
        return applied;
    }));
    return project(db, waiting);
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
