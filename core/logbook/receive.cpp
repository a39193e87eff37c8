// SPDX-License-Identifier: Apache-2.0
// Foreign entries into the log and the projection.
#include "logbook/receive.hpp"

#include <algorithm>
#include <map>

#include "logbook/append.hpp"
#include "logbook/entry_rows.hpp"
#include "logbook/receive_rows.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

struct Present {
    std::string bytes;
    std::optional<std::int64_t> segment;
};

Result<std::optional<Present>> presentAt(Connection &db, std::int64_t stream, std::int64_t seq)
{
    Result<Statement> rows = db.prepare("SELECT bytes, segment FROM entry WHERE stream = ? AND seq = ?");
    if (!rows)
        return rows.error();
    rows->bind(1, stream);
    rows->bind(2, seq);
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    if (!*row)
        return std::optional<Present>();
    return std::optional(
        Present{rows->bytes(0), rows->isNull(1) ? std::nullopt : std::optional(rows->integer(1))});
}

Status runOn(Connection &db, const char *sql, std::int64_t a, std::int64_t b, std::int64_t c)
{
    Result<Statement> statement = db.prepare(sql);
    if (!statement)
        return statement.error();
    statement->bind(1, a);
    statement->bind(2, b);
    statement->bind(3, c);
    return statement->run();
}

Status putTwin(Connection &db, std::int64_t stream, std::int64_t seq, std::int64_t segment,
               std::string_view bytes)
{
    Result<Statement> insert = db.prepare("INSERT OR IGNORE INTO twin VALUES(?, ?, ?, ?, ?)");
    if (!insert)
        return insert.error();
    insert->bind(1, stream);
    insert->bind(2, seq);
    insert->bindBytes(3, blake2b(bytes).view());
    insert->bind(4, segment);
    insert->bindBytes(5, bytes);
    return insert->run();
}

// Entries of several segments, within a transaction.
class Receiver {
public:
    Receiver(Connection &db, const Judge &judge) : m_db(db), m_insert(db), m_judge(judge) {}

    Status take(const KeptSegment &segment, IncomingEntry incoming)
    {
        const EntryId id = incoming.entry.id;
        const auto row = rowOf(id.stream);
        if (!row)
            return row.error();
        StoredEntry stored{*row, std::move(incoming.entry), std::move(incoming.bytes), {}};
        stored.hash = chainHash(Hash{}, stored.bytes);
        const Result<bool> isFresh = m_insert.putIfAbsent(stored, segment.row);
        if (!isFresh)
            return isFresh.error();
        if (*isFresh)
            return admit(segment, std::move(stored));
        const auto present = presentAt(m_db, *row, id.seq);
        if (!present)
            return present.error();
        if (!present->has_value())
            return Error{Errc::Io, "the logbook did not keep an entry", m_db.file(), "run `snugwalk check`"};
        if ((*present)->bytes != stored.bytes)
            return takeTwin(segment, std::move(stored), **present);
        if ((*present)->segment)
            return done();
        return runOn(m_db, "UPDATE entry SET segment = ?3 WHERE stream = ?1 AND seq = ?2", *row, id.seq,
                     segment.row);
    }

    Status finish()
    {
        if (m_rebuild)
            return rebuildProjection(m_db);
        return project(m_db, m_admitted);
    }

    ReceiveCount count;

private:
    Status admit(const KeptSegment &segment, StoredEntry stored)
    {
        ++count.fresh;
        if (const auto reason = m_judge(segment, stored.entry)) {
            ++count.aside;
            return putAside(m_db, stored.streamRow, stored.entry.id.seq, *reason);
        }
        m_admitted.push_back(std::move(stored));
        return done();
    }

    // The one that hashes lower stands, whichever came first.
    Status takeTwin(const KeptSegment &segment, StoredEntry stored, const Present &present)
    {
        const EntryId id = stored.entry.id;
        const std::int64_t row = stored.streamRow;
        ++count.twins;
        if (blake2b(present.bytes) < blake2b(stored.bytes))
            return putTwin(m_db, row, id.seq, segment.row, stored.bytes);
        SNUG_TRY(putTwin(m_db, row, id.seq, present.segment.value_or(0), present.bytes));
        SNUG_TRY(dropEntry(m_db, row, id.seq));
        SNUG_TRY(runOn(m_db, "DELETE FROM aside WHERE stream = ?1 AND seq = ?2 AND ?3 = 0", row, id.seq, 0));
        std::erase_if(m_admitted, [&](const StoredEntry &s) { return s.entry.id == id; });
        m_rebuild = true;
        const Result<bool> isPut = m_insert.putIfAbsent(stored, segment.row);
        if (!isPut)
            return isPut.error();
        return admit(segment, std::move(stored));
    }

    Result<std::int64_t> rowOf(const StreamId &stream)
    {
        if (const auto known = m_rows.find(stream); known != m_rows.end())
            return known->second;
        const auto row = streamRowOrNew(m_db, stream);
        if (row)
            m_rows.emplace(stream, *row);
        return row;
    }

    Connection &m_db;
    EntryInsert m_insert;
    const Judge &m_judge;
    std::map<StreamId, std::int64_t> m_rows;
    std::vector<StoredEntry> m_admitted;
    bool m_rebuild = false;
};

} // namespace

Result<ReceiveCount> receive(Logbook &book, const SegmentFacts &facts, std::string_view bytes,
                             std::string_view publicKey, const std::vector<IncomingEntry> &entries,
                             const Judge &judge)
{
    return receive(book, {{facts, std::string(bytes), std::string(publicKey), entries}}, judge);
}

Result<ReceiveCount> receive(Logbook &book, std::vector<OpenedSegment> segments, const Judge &judge)
{
    Connection &db = book.db();
    Result<Transaction> transaction = Transaction::begin(db);
    if (!transaction)
        return transaction.error();
    Receiver receiver(db, judge);
    for (OpenedSegment &opened : segments) {
        const auto segment = putSegment(db, opened.facts, opened.bytes, true);
        if (!segment)
            return segment.error();
        if (segment->opened)
            continue;
        const auto stream = streamRowOrNew(db, opened.facts.stream, opened.publicKey);
        if (!stream)
            return stream.error();
        for (IncomingEntry &entry : opened.entries)
            SNUG_TRY(receiver.take(*segment, std::move(entry)));
        opened = {};
    }
    SNUG_TRY(receiver.finish());
    SNUG_TRY(std::move(*transaction).commit());
    return receiver.count;
}

Status keepOwnSegment(Logbook &book, const SegmentFacts &facts, std::string_view bytes,
                      const std::vector<IncomingEntry> &entries, const Judge &judge)
{
    Connection &db = book.db();
    Result<Transaction> transaction = Transaction::begin(db);
    if (!transaction)
        return transaction.error();
    const auto segment = putSegment(db, facts, bytes, true);
    if (!segment)
        return segment.error();
    bool rebuild = false;
    for (const IncomingEntry &carried : entries) {
        const EntryId &id = carried.entry.id;
        const auto row = streamRow(db, id.stream);
        if (!row)
            return row.error();
        SNUG_TRY(runOn(db, "UPDATE entry SET segment = ?3 WHERE stream = ?1 AND seq = ?2", *row, id.seq,
                       segment->row));
        if (const auto reason = judge(*segment, carried.entry)) {
            SNUG_TRY(putAside(db, *row, id.seq, *reason));
            rebuild = true;
        }
    }
    if (rebuild)
        SNUG_TRY(rebuildProjection(db));
    return std::move(*transaction).commit();
}

Result<ReceiveCount> judgeAll(Logbook &book, const Id &space, const Judge &judge)
{
    Connection &db = book.db();
    Result<Transaction> transaction = Transaction::begin(db);
    if (!transaction)
        return transaction.error();
    ReceiveCount count;
    const auto changed = judgeRows(db, space, judge, count);
    if (!changed)
        return changed.error();
    if (*changed)
        SNUG_TRY(rebuildProjection(db));
    SNUG_TRY(markJudged(db, space));
    SNUG_TRY(std::move(*transaction).commit());
    return count;
}

} // namespace snugwalk
