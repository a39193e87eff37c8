// SPDX-License-Identifier: Apache-2.0
// Segments, control records and what is set aside, as rows.
#include "logbook/receive_rows.hpp"

#include "logbook/schema.hpp"
#include "logbook/space_of.hpp"

namespace snugwalk {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

namespace {

// Runs a prepared statement with one blob.
Result<Statement> withBytes(Connection &db, const char *sql, std::string_view bytes)
{
    Result<Statement> rows = db.prepare(sql);
    if (rows)
        rows->bindBytes(1, bytes);
    return rows;
}

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
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            break;
        const auto segment = segmentFrom(*rows);
        const auto entry = entryFromBytes(rows->bytes(9));
        if (!segment || !entry)
            return segment ? entry.error() : segment.error();
        const auto reason = judge(*segment, *entry);
        const bool wasAside = !rows->isNull(10);
        if (reason.has_value() == wasAside && (!wasAside || *reason == rows->text(10)))
            continue;
        sidesChanged = sidesChanged || reason.has_value() != wasAside;
        count.undone += reason && !wasAside ? 1 : 0;
        changes.push_back({rows->integer(7), rows->integer(8), reason});
    }
    for (const Change &change : changes) {
        if (change.reason) {
            SNUG_TRY(putAside(db, change.stream, change.seq, *change.reason));
            continue;
        }
        Result<Statement> back = db.prepare("DELETE FROM aside WHERE stream = ? AND seq = ?");
        if (!back)
            return back.error();
        back->bind(1, change.stream);
        back->bind(2, change.seq);
        SNUG_TRY(back->run());
    }
    return sidesChanged;
}

Result<std::vector<std::pair<Id, Hash>>> sharedRigs(Logbook &book)
{
    Result<Statement> rows = book.db().prepare("SELECT id, root FROM space ORDER BY id");
    if (!rows)
        return rows.error();
    std::vector<std::pair<Id, Hash>> found;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return found;
        found.emplace_back(Id::fromBytes(rows->bytes(0)), Hash::fromBytes(rows->bytes(1)).value_or(Hash{}));
    }
}

Status putControl(Connection &db, const Id &space, const Hash &hash, std::string_view bytes)
{
    Result<Statement> insert = db.prepare("INSERT OR IGNORE INTO control VALUES(?, ?, ?)");
    if (!insert)
        return insert.error();
    insert->bindBytes(1, hash.view());
    insert->bindBytes(2, space.view());
    insert->bindBytes(3, bytes);
    SNUG_TRY(insert->run());
    Result<Statement> mark = withBytes(db, "UPDATE space SET judged = 0 WHERE id = ?", space.view());
    return mark ? mark->run() : Status(mark.error());
}

Status putRig(Connection &db, const Id &space, const Hash &root)
{
    Result<Statement> known = withBytes(db, "SELECT root FROM space WHERE id = ?", space.view());
    if (!known)
        return known.error();
    const Result<bool> row = known->step();
    if (!row)
        return row.error();
    if (*row && known->bytes(0) != root.view())
        return Error{Errc::Conflict, "this rig is shared already", space.shortText(),
                     "use the sharing that is there"};
    Result<Statement> insert = db.prepare("INSERT OR IGNORE INTO space VALUES(?, ?, 0)");
    if (!insert)
        return insert.error();
    insert->bindBytes(1, space.view());
    insert->bindBytes(2, root.view());
    return insert->run();
}

Status markJudged(Connection &db, const Id &space)
{
    Result<Statement> mark = withBytes(db, "UPDATE space SET judged = 1 WHERE id = ?", space.view());
    return mark ? mark->run() : Status(mark.error());
}

Status keepControl(Logbook &book, const Id &space, const Hash &hash, std::string_view bytes)
{
    Result<Transaction> transaction = Transaction::begin(book.db());
    if (!transaction)
        return transaction.error();
    SNUG_TRY(putControl(book.db(), space, hash, bytes));
    return std::move(*transaction).commit();
}

Status keepRoot(Logbook &book, const Id &space, const Hash &root, std::string_view bytes)
{
    Result<Transaction> transaction = Transaction::begin(book.db());
    if (!transaction)
        return transaction.error();
    SNUG_TRY(putRig(book.db(), space, root));
    SNUG_TRY(putControl(book.db(), space, root, bytes));
    return std::move(*transaction).commit();
}

Status joinRig(Logbook &book, const Id &space, const Hash &root)
{
    Result<Transaction> transaction = Transaction::begin(book.db());
    if (!transaction)
        return transaction.error();
    SNUG_TRY(putRig(book.db(), space, root));
    return std::move(*transaction).commit();
}

Result<std::vector<std::string>> controlsOf(Logbook &book, const Id &space)
{
    Result<Statement> rows =
        withBytes(book.db(), "SELECT bytes FROM control WHERE space = ? ORDER BY hash", space.view());
    if (!rows)
        return rows.error();
    std::vector<std::string> found;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return found;
        found.push_back(rows->bytes(0));
    }
}

Result<bool> needsJudging(Logbook &book, const Id &space)
{
    Result<Statement> rows =
        withBytes(book.db(), "SELECT 1 FROM space WHERE judged = 0 AND id = ?", space.view());
    return rows ? rows->step() : Result<bool>(rows.error());
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
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return found;
        Result<KeptSegment> kept = segmentFrom(*rows);
        if (!kept)
            return kept.error();
        found.push_back(std::move(kept).value());
    }
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
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return found;
        Result<Entry> entry = entryFromBytes(rows->bytes(0));
        if (!entry)
            return entry.error();
        found.push_back({std::move(entry).value(), rows->text(1)});
    }
}

} // namespace snugwalk
