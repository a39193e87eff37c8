// SPDX-License-Identifier: Apache-2.0
// What waits to be sent; and what happens to it when a copy of the logbook went on elsewhere.
#include <algorithm>
#include <map>

#include "logbook/append.hpp"
#include "logbook/entry_rows.hpp"
#include "logbook/receive_rows.hpp"
#include "logbook/space_of.hpp"

namespace snugwalk {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

Result<std::vector<IncomingEntry>> unsentOf(Logbook &book, const Id &space, std::size_t limit,
                                            std::size_t maxBytes,
                                            const std::function<bool(const StreamId &)> &mayCarry)
{
    Result<Statement> rows =
        book.db().prepare("SELECT bytes FROM entry WHERE segment IS NULL ORDER BY stream, seq");
    if (!rows)
        return rows.error();
    RigFinder finder(book.db());
    std::vector<IncomingEntry> found;
    std::size_t size = 0;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return found;
        std::string bytes = rows->bytes(0);
        Result<Entry> entry = entryFromBytes(bytes);
        if (!entry)
            return entry.error();
        if (!mayCarry(entry->id.stream))
            continue;
        const Result<Id> rig = finder.rigOf(*entry);
        if (!rig)
            return rig.error();
        if (*rig != space)
            continue;
        size += bytes.size();
        if (!found.empty() && (found.size() == limit || size > maxBytes))
            return found;
        found.push_back({std::move(entry).value(), std::move(bytes)});
    }
}

namespace {

Result<std::vector<StoredEntry>> unsentOfStream(Connection &db, std::int64_t row)
{
    Result<Statement> rows =
        db.prepare("SELECT bytes FROM entry WHERE segment IS NULL AND stream = ? ORDER BY seq");
    if (!rows)
        return rows.error();
    rows->bind(1, row);
    std::vector<StoredEntry> found;
    for (;;) {
        const Result<bool> any = rows->step();
        if (!any)
            return any.error();
        if (!*any)
            return found;
        Result<Entry> entry = entryFromBytes(rows->bytes(0));
        if (!entry)
            return entry.error();
        found.push_back({row, std::move(entry).value(), {}, {}});
    }
}

// The same entries at the beginning of another stream.
std::vector<StoredEntry> rewritten(std::vector<StoredEntry> entries, const StreamId &stream, std::int64_t row)
{
    std::map<EntryId, EntryId> renamed;
    Hash previous;
    std::int64_t seq = 0;
    for (StoredEntry &stored : entries) {
        Entry &entry = stored.entry;
        const EntryId fresh{stream, ++seq};
        renamed[entry.id] = fresh;
        entry.id = fresh;
        for (EntryId &prev : entry.prev) {
            const auto found = renamed.find(prev);
            prev = found == renamed.end() ? prev : found->second;
        }
        std::sort(entry.prev.begin(), entry.prev.end());
        stored.streamRow = row;
        stored.bytes = canonicalBytes(entry);
        stored.hash = chainHash(previous, stored.bytes);
        previous = stored.hash;
    }
    return entries;
}

Status beginAnother(Logbook &book)
{
    Connection &db = book.db();
    Result<Transaction> transaction = Transaction::begin(db);
    if (!transaction)
        return transaction.error();
    const auto old = streamRow(db, book.stream());
    if (!old)
        return old.error();
    // from now on it may have gaps: what the other copy wrote comes through segments
    SNUG_TRY(db.exec("UPDATE stream SET own = 0, partial = 1 WHERE own = 1"));
    SNUG_TRY(book.joinNewStream());
    const auto fresh = streamRow(db, book.stream());
    if (!fresh)
        return fresh.error();
    const auto waiting = unsentOfStream(db, *old);
    if (!waiting)
        return waiting.error();
    for (const StoredEntry &stored : *waiting)
        SNUG_TRY(dropEntry(db, *old, stored.entry.id.seq));
    // one that was never sent, of another rig, may have stood before one that was
    SNUG_TRY(standAlone(db, *old));
    for (const StoredEntry &stored : rewritten(*waiting, book.stream(), *fresh))
        SNUG_TRY(insertEntry(db, stored, std::nullopt));
    if (!waiting->empty())
        SNUG_TRY(rebuildProjection(db));
    return std::move(*transaction).commit();
}

} // namespace

Status startIncarnation(Logbook &book)
{
    const Status begun = beginAnother(book);
    if (!begun) // nothing of it is in the file: neither may the open logbook think so
        static_cast<void>(book.followStream());
    return begun;
}

Result<bool> isNewsOfOwn(Logbook &book, const std::vector<IncomingEntry> &entries)
{
    Result<Statement> rows = book.db().prepare(
        "SELECT 1 FROM entry JOIN stream ON stream.id = stream WHERE name = ? AND seq = ? AND bytes = ?");
    if (!rows)
        return rows.error();
    for (const IncomingEntry &incoming : entries) {
        if (incoming.entry.id.stream != book.stream())
            continue;
        rows->bindBytes(1, incoming.entry.id.stream.bytes());
        rows->bind(2, incoming.entry.id.seq);
        rows->bindBytes(3, incoming.bytes);
        const Result<bool> row = rows->step();
        if (!row || !*row)
            return row ? Result<bool>(true) : row;
        rows->reset();
    }
    return false;
}

namespace {

Status onWanted(Logbook &book, const char *sql, const Hash &photo)
{
    Result<Transaction> transaction = Transaction::begin(book.db());
    if (!transaction)
        return transaction.error();
    {
        Result<Statement> statement = book.db().prepare(sql);
        if (!statement)
            return statement.error();
        statement->bindBytes(1, photo.view());
        SNUG_TRY(statement->run());
    }
    return std::move(*transaction).commit();
}

} // namespace

Status wantPhoto(Logbook &book, const Hash &photo)
{
    return onWanted(book, "INSERT OR IGNORE INTO wanted VALUES(?)", photo);
}

Status photoArrived(Logbook &book, const Hash &photo)
{
    return onWanted(book, "DELETE FROM wanted WHERE hash = ?", photo);
}

Result<std::vector<Hash>> wantedPhotos(Logbook &book)
{
    Result<Statement> rows = book.db().prepare("SELECT hash FROM wanted ORDER BY hash");
    if (!rows)
        return rows.error();
    std::vector<Hash> found;
    SNUG_TRY(rows->each([&]() -> Status {
        if (const auto hash = Hash::fromBytes(rows->bytes(0)))
            found.push_back(*hash);
        return done();
    }));
    return found;
}

} // namespace snugwalk
