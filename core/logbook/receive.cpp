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

Status dropTwin(Connection &db, std::int64_t stream, std::int64_t seq, const Hash &hash)
{
    Result<Statement> gone = db.prepare("DELETE FROM twin WHERE stream = ? AND seq = ? AND hash = ?");
    if (!gone)
        return gone.error();
    gone->bind(1, stream);
    gone->bind(2, seq);
    gone->bindBytes(3, hash.view());
    return gone->run();
}

// Who says that an entry is so. The device that wrote it goes before one that carries it for others, or any
// member could push an entry of another one aside with bytes that hash lower; among equals the lower hash.
struct Claim {
    bool carried = false;
    Hash bytes;
    Hash segment;
    friend auto operator<=>(const Claim &, const Claim &) = default;
};

struct Present {
    std::string bytes;
    std::optional<std::int64_t> segment;
    Claim claim;
};

Result<std::optional<Present>> presentAt(Connection &db, const Id &self, const EntryId &id, std::int64_t row)
{
    Result<Statement> rows =
        db.prepare("SELECT entry.bytes, segment, segment.stream, segment.hash FROM entry LEFT JOIN segment "
                   "ON segment.id = segment WHERE entry.stream = ? AND seq = ?");
    if (!rows)
        return rows.error();
    rows->bind(1, row);
    rows->bind(2, id.seq);
    const Result<bool> any = rows->step();
    if (!any)
        return any.error();
    if (!*any)
        return std::optional<Present>();
    Present present{rows->bytes(0), {}, {self != id.stream.device, blake2b(rows->bytes(0)), {}}};
    if (!rows->isNull(1)) {
        present.segment = rows->integer(1);
        present.claim.carried = rows->bytes(2).substr(0, 16) != id.stream.device.view();
        present.claim.segment = Hash::fromBytes(rows->bytes(3)).value_or(Hash{});
    }
    return std::optional(std::move(present));
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
    Receiver(Logbook &book, const Judge &judge)
        : m_db(book.db()), m_self(book.stream().device), m_insert(book.db()), m_judge(judge)
    {}

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
        const auto present = presentAt(m_db, m_self, id, *row);
        if (!present)
            return present.error();
        if (!present->has_value())
            return Error{Errc::Io, "the logbook did not keep an entry", m_db.file(), "run `snugwalk check`"};
        const Claim claim{segment.facts.stream.device != id.stream.device, blake2b(stored.bytes),
                          segment.facts.hash};
        if ((*present)->bytes != stored.bytes)
            return takeTwin(segment, std::move(stored), **present, claim);
        const bool isBetter = !(*present)->segment || claim < (*present)->claim;
        return isBetter ? takeOver(segment, stored) : done();
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

    // The same entry is answered for by this segment from now on, and judged by it.
    Status takeOver(const KeptSegment &segment, const StoredEntry &stored)
    {
        const std::int64_t seq = stored.entry.id.seq;
        SNUG_TRY(runOn(m_db, "UPDATE entry SET segment = ?3 WHERE stream = ?1 AND seq = ?2", stored.streamRow,
                       seq, segment.row));
        const auto changed = setAside(m_db, stored.streamRow, seq, m_judge(segment, stored.entry));
        if (!changed)
            return changed.error();
        m_rebuild = m_rebuild || *changed;
        return done();
    }

    // The better claim stands, whichever came first.
    Status takeTwin(const KeptSegment &segment, StoredEntry stored, const Present &present,
                    const Claim &claim)
    {
        const EntryId id = stored.entry.id;
        const std::int64_t row = stored.streamRow;
        ++count.twins;
        if (present.claim < claim)
            return putTwin(m_db, row, id.seq, segment.row, stored.bytes);
        SNUG_TRY(putTwin(m_db, row, id.seq, present.segment.value_or(0), present.bytes));
        SNUG_TRY(dropEntry(m_db, row, id.seq));
        SNUG_TRY(runOn(m_db, "DELETE FROM aside WHERE stream = ?1 AND seq = ?2 AND ?3 = 0", row, id.seq, 0));
        SNUG_TRY(dropTwin(m_db, row, id.seq, claim.bytes)); // that came before from a lesser place
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
    Id m_self;
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
    Receiver receiver(book, judge);
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
