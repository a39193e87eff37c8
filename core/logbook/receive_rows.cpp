// SPDX-License-Identifier: Apache-2.0
// Segments and what is set aside, as rows.
#include "logbook/receive_rows.hpp"

#include "logbook/schema.hpp"
#include "logbook/space_of.hpp"

namespace snugwalk {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

namespace {

Result<KeptSegment> segmentFrom(const Statement &rows)
{
    KeptSegment kept;
    const auto hash = Hash::fromBytes(rows.bytes(1));
    const auto stream = streamFromBytes(rows.bytes(3));
    const auto prev = Hash::fromBytes(rows.bytes(5));
    if (!hash || !stream || !prev)
        return Error{Errc::Corrupt, "a segment whose names cannot be read", "", "run `snugwalk check`"};
    kept.row = rows.integer(0);
    kept.facts = {*hash, Id::fromBytes(rows.bytes(2)), *stream, rows.integer(4), *prev};
    kept.opened = rows.integer(6) != 0;
    return kept;
}

} // namespace

Result<Statement> withBytes(Connection &db, const char *sql, std::string_view bytes)
{
    Result<Statement> rows = db.prepare(sql);
    if (rows)
        rows->bindBytes(1, bytes);
    return rows;
}

Result<KeptSegment> putSegment(Connection &db, const SegmentFacts &facts, std::string_view bytes, bool opened)
{
    Result<Statement> insert =
        db.prepare("INSERT OR IGNORE INTO segment(hash, space, stream, counter, prev, opened, bytes) "
                   "VALUES(?, ?, ?, ?, ?, 0, ?)");
    if (!insert)
        return insert.error();
    insert->bindBytes(1, facts.hash.view());
    insert->bindBytes(2, facts.space.view());
    insert->bindBytes(3, facts.stream.bytes());
    insert->bind(4, facts.counter);
    insert->bindBytes(5, facts.prev.view());
    insert->bindBytes(6, bytes);
    SNUG_TRY(insert->run());
    Result<Statement> find =
        withBytes(db, "SELECT id, hash, space, stream, counter, prev, opened FROM segment WHERE hash = ?",
                  facts.hash.view());
    if (!find)
        return find.error();
    const Result<bool> row = find->step();
    if (!row)
        return row.error();
    SNUG_ASSERT(*row);
    Result<KeptSegment> kept = segmentFrom(*find);
    if (kept && opened && !kept->opened) {
        Result<Statement> mark =
            withBytes(db, "UPDATE segment SET opened = 1 WHERE hash = ?", facts.hash.view());
        if (!mark)
            return mark.error();
        SNUG_TRY(mark->run());
    }
    return kept;
}

Status putAside(Connection &db, std::int64_t stream, std::int64_t seq, const std::string &reason)
{
    Result<Statement> insert = db.prepare("INSERT OR REPLACE INTO aside VALUES(?, ?, ?)");
    if (!insert)
        return insert.error();
    insert->bind(1, stream);
    insert->bind(2, seq);
    insert->bind(3, reason);
    return insert->run();
}

Result<bool> setAside(Connection &db, std::int64_t stream, std::int64_t seq,
                      const std::optional<std::string> &reason)
{
    Result<Statement> gone = db.prepare("DELETE FROM aside WHERE stream = ? AND seq = ?");
    if (!gone)
        return gone.error();
    gone->bind(1, stream);
    gone->bind(2, seq);
    SNUG_TRY(gone->run());
    const auto were = db.number("SELECT changes()");
    if (!were)
        return were.error();
    if (reason)
        SNUG_TRY(putAside(db, stream, seq, *reason));
    return reason.has_value() != (*were > 0);
}

Status dropEntry(Connection &db, std::int64_t stream, std::int64_t seq)
{
    SNUG_TRY(db.exec("DROP TRIGGER entry_never_goes"));
    {
        Result<Statement> gone = db.prepare("DELETE FROM entry WHERE stream = ? AND seq = ?");
        if (!gone)
            return gone.error();
        gone->bind(1, stream);
        gone->bind(2, seq);
        SNUG_TRY(gone->run());
    }
    return db.exec(triggerThatKeeps);
}

Status standAlone(Connection &db, std::int64_t stream)
{
    SNUG_TRY(db.exec("DROP TRIGGER entry_never_changes"));
    {
        Result<Statement> rows = db.prepare("SELECT seq, bytes FROM entry WHERE stream = ?");
        Result<Statement> update = db.prepare("UPDATE entry SET hash = ? WHERE stream = ? AND seq = ?");
        if (!rows || !update)
            return rows ? update.error() : rows.error();
        rows->bind(1, stream);
        std::vector<std::pair<std::int64_t, Hash>> hashes; // no row is changed while they are read
        SNUG_TRY(rows->each([&]() -> Status {
            hashes.emplace_back(rows->integer(0), chainHash(Hash{}, rows->bytes(1)));
            return done();
        }));
        for (const auto &[seq, hash] : hashes) {
            update->bindBytes(1, hash.view());
            update->bind(2, stream);
            update->bind(3, seq);
            SNUG_TRY(update->run());
        }
    }
    return db.exec(triggerThatHolds);
}

Result<bool> judgeRows(Connection &db, const Id &space, const Judge &judge, ReceiveCount &count)
{
    Result<Statement> rows =
        withBytes(db,
                  "SELECT segment.id, segment.hash, segment.space, segment.stream, counter, prev, opened, "
                  "entry.stream, "
                  "entry.seq, entry.bytes, reason FROM segment JOIN entry ON entry.segment = segment.id LEFT "
                  "JOIN aside "
                  "ON aside.stream = entry.stream AND aside.seq = entry.seq WHERE space = ?",
                  space.view());
    if (!rows)
        return rows.error();
    struct Change {
        std::int64_t stream;
        std::int64_t seq;
        std::optional<std::string> reason;
    };
    std::vector<Change> changes;
    bool sidesChanged = false;
    SNUG_TRY(rows->each([&]() -> Status {
        const auto segment = segmentFrom(*rows);
        const auto entry = entryFromBytes(rows->bytes(9));
        if (!segment || !entry)
            return segment ? entry.error() : segment.error();
        const auto reason = judge(*segment, *entry);
        const bool wasAside = !rows->isNull(10);
        if (reason.has_value() == wasAside && (!wasAside || *reason == rows->text(10)))
            return done();
        count.undone += reason && !wasAside ? 1 : 0;
        changes.push_back({rows->integer(7), rows->integer(8), reason});
        return done();
    }));
    for (const Change &change : changes) {
        const auto changed = setAside(db, change.stream, change.seq, change.reason);
        if (!changed)
            return changed.error();
        sidesChanged = sidesChanged || *changed;
    }
    return sidesChanged;
}

Result<std::vector<KeptSegment>> segmentsOf(Logbook &book, const Id &space)
{
    Result<Statement> rows =
        withBytes(book.db(),
                  "SELECT id, hash, space, stream, counter, prev, opened FROM segment WHERE space = ? "
                  "ORDER BY stream, counter, hash",
                  space.view());
    if (!rows)
        return rows.error();
    std::vector<KeptSegment> found;
    SNUG_TRY(rows->each([&]() -> Status {
        Result<KeptSegment> kept = segmentFrom(*rows);
        if (!kept)
            return kept.error();
        found.push_back(std::move(kept).value());
        return done();
    }));
    return found;
}

Result<std::string> segmentBytes(Logbook &book, std::int64_t row)
{
    Result<Statement> rows = book.db().prepare("SELECT bytes FROM segment WHERE id = ?");
    if (!rows)
        return rows.error();
    rows->bind(1, row);
    const Result<bool> found = rows->step();
    if (!found)
        return found.error();
    if (!*found)
        return Error{Errc::NotFound, "no such segment", std::to_string(row), ""};
    return rows->bytes(0);
}

Status keepSegment(Logbook &book, const SegmentFacts &facts, std::string_view bytes)
{
    Result<Transaction> transaction = Transaction::begin(book.db());
    if (!transaction)
        return transaction.error();
    const auto kept = putSegment(book.db(), facts, bytes, false);
    if (!kept)
        return kept.error();
    return std::move(*transaction).commit();
}

Result<std::int64_t> unopenedBytes(Logbook &book, const Id &space)
{
    Result<Statement> rows = withBytes(
        book.db(), "SELECT coalesce(sum(length(bytes)), 0) FROM segment WHERE space = ? AND opened = 0",
        space.view());
    if (!rows)
        return rows.error();
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    return rows->integer(0);
}

Result<std::vector<SetAside>> asideOf(Logbook &book, const Id &space)
{
    Result<Statement> rows =
        withBytes(book.db(),
                  "SELECT entry.bytes, reason FROM aside JOIN entry ON entry.stream = aside.stream AND "
                  "entry.seq = aside.seq JOIN segment ON segment.id = entry.segment WHERE space = ? "
                  "ORDER BY hlc, segment.stream, entry.seq",
                  space.view());
    if (!rows)
        return rows.error();
    std::vector<SetAside> found;
    SNUG_TRY(rows->each([&]() -> Status {
        Result<Entry> entry = entryFromBytes(rows->bytes(0));
        if (!entry)
            return entry.error();
        found.push_back({std::move(entry).value(), rows->text(1)});
        return done();
    }));
    return found;
}

} // namespace snugwalk
