// SPDX-License-Identifier: Apache-2.0
// Taking foreign streams in: keys, chain, canonical bytes, then rows and projection.
#include "logbook/import_entries.hpp"

#include <algorithm>
#include <limits>
#include <map>

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

// A stamp beyond this (the year 6429) would leave our own clock no room to go on.
constexpr std::int64_t lastHlc = std::numeric_limits<std::int64_t>::max() - (std::int64_t{1} << 32);

std::string nameOf(const EntryId &id) { return "entry " + id.stream.text() + " " + std::to_string(id.seq); }

Error corrupt(const std::string &what, const std::string &where)
{
    return {Errc::Corrupt, what, where, "fetch the file again from where it was made"};
}

// The end of what is stored of a stream.
struct Tail {
    std::int64_t row = 0;
    std::int64_t seq = 0;
    Hash hash;
};

Status addStream(Connection &db, const ForeignStream &stream, ImportCount &count)
{
    const std::string name = stream.name.bytes();
    const bool isTheirs = stream.publicKey.size() == 32 &&
                          blake2b(stream.publicKey).view().substr(0, 16) == stream.name.device.view();
    if (!isTheirs && !stream.isOnlyNamed())
        return corrupt("a stream whose key is not the device's", stream.name.text());
    Result<Statement> insert = db.prepare(
        "INSERT INTO stream(name, public_key, label, own, partial) SELECT ?1, ?2, ?3, 0, ?4 WHERE NOT "
        "EXISTS(SELECT 1 FROM stream WHERE name = ?1)");
    if (!insert)
        return insert.error();
    insert->bindBytes(1, name);
    insert->bindBytes(2, stream.publicKey);
    insert->bind(3, stream.label);
    insert->bind(4, std::int64_t{stream.partial});
    SNUG_TRY(insert->run());
    const auto changed = db.number("SELECT changes()");
    if (!changed)
        return changed.error();
    count.streams += *changed;
    if (*changed > 0 || !isTheirs)
        return done();
    const auto learned = streamRowOrNew(db, stream.name, stream.publicKey); // where it was only named before
    return learned ? done() : Status(learned.error());
}

Result<Tail> tailOf(Connection &db, const StreamId &stream)
{
    const auto row = streamRow(db, stream);
    if (!row)
        return row.error();
    Result<Statement> rows =
        db.prepare("SELECT seq, hash FROM entry WHERE stream = ? ORDER BY seq DESC LIMIT 1");
    if (!rows)
        return rows.error();
    rows->bind(1, *row);
    const Result<bool> found = rows->step();
    if (!found)
        return found.error();
    if (!*found)
        return Tail{*row, 0, {}};
    return Tail{*row, rows->integer(0), Hash::fromBytes(rows->bytes(1)).value_or(Hash{})};
}

// Whether an entry of that name is stored; then it must be this one. Its hash may differ: of an entry that
// came by itself it is that of the entry alone, where its stream is whole it names the one before.
Result<bool> isStored(Connection &db, const Tail &tail, const ForeignEntry &entry)
{
    Result<Statement> rows = db.prepare("SELECT bytes = ? FROM entry WHERE stream = ? AND seq = ?");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, entry.bytes);
    rows->bind(2, tail.row);
    rows->bind(3, entry.id.seq);
    const Result<bool> found = rows->step();
    if (!found)
        return found.error();
    if (!*found)
        return false;
    if (rows->integer(0) == 1)
        return true;
    return Error{Errc::Conflict, "this logbook holds another entry of the same name", nameOf(entry.id),
                 "one device went on from a restored copy; keep both files and ask the owner"};
}

// Came through sync, where its stream may have written about other rigs in between: nothing before it is
// needed.
bool isAlone(const ForeignEntry &foreign) { return chainHash(Hash{}, foreign.bytes) == foreign.hash; }

Result<Entry> verified(const ForeignEntry &foreign, const Tail &tail)
{
    const bool alone = isAlone(foreign);
    if (!alone && foreign.id.seq != tail.seq + 1)
        return Error{Errc::NotFound, "entry " + std::to_string(tail.seq + 1) + " is missing before it",
                     nameOf(foreign.id), "export the whole logbook where it was written"};
    if (!alone && chainHash(tail.hash, foreign.bytes) != foreign.hash)
        return corrupt("its bytes or an earlier entry were changed", nameOf(foreign.id));
    Result<Entry> entry = entryFromBytes(foreign.bytes);
    if (!entry)
        return Error{entry.error().code, entry.error().what, nameOf(foreign.id), entry.error().act};
    if (entry->id != foreign.id || canonicalBytes(*entry) != foreign.bytes)
        return corrupt("an entry that is not written as entries are", nameOf(foreign.id));
    if (entry->hlc < 0 || entry->hlc > lastHlc)
        return corrupt("an entry whose clock is no time", nameOf(foreign.id));
    return entry;
}

Status storeRow(Connection &db, const StoredEntry &stored)
{
    Result<Statement> insert = db.prepare("INSERT INTO entry(stream, seq, hlc, entity, act, scope, undoes, "
                                          "bytes, hash) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)");
    if (!insert)
        return insert.error();
    insert->bind(1, stored.streamRow);
    insert->bind(2, stored.entry.id.seq);
    insert->bind(3, stored.entry.hlc);
    int at = 4;
    for (const Id &id : {stored.entry.entity, stored.entry.act, stored.entry.scope, stored.entry.undoes}) {
        if (id.isNull())
            insert->bindNull(at++);
        else
            insert->bindBytes(at++, id.view());
    }
    insert->bindBytes(8, stored.bytes);
    insert->bindBytes(9, stored.hash.view());
    return insert->run();
}

Status takeIn(Connection &db, const ForeignEntry &foreign, Tail &tail, ImportCount &count)
{
    if (foreign.id.seq <= tail.seq) {
        const Result<bool> stored = isStored(db, tail, foreign);
        if (!stored)
            return stored.error();
        count.known += *stored ? 1 : 0;
        if (*stored)
            return done();
    }
    Result<Entry> entry = verified(foreign, tail);
    if (!entry)
        return entry.error();
    const StoredEntry stored{tail.row, std::move(entry).value(), foreign.bytes, foreign.hash};
    if (chainHash(tail.hash, foreign.bytes) != foreign.hash)
        SNUG_TRY(db.exec(("UPDATE stream SET partial = 1 WHERE id = " + std::to_string(tail.row)).c_str()));
    SNUG_TRY(storeRow(db, stored));
    SNUG_TRY(project(db, stored));
    if (foreign.id.seq > tail.seq) {
        tail.seq = foreign.id.seq;
        tail.hash = foreign.hash;
    }
    ++count.added;
    return done();
}

// A stream that others know further than we do was written after this file was copied: to go on with
// its numbers could give one number to two entries.
Status closeOwnStream(Connection &db, const Tail &tail, ImportCount &count)
{
    Result<Statement> close = db.prepare("UPDATE stream SET own = 0 WHERE id = ?");
    if (!close)
        return close.error();
    close->bind(1, tail.row);
    count.mustReopen = true;
    return close->run();
}

} // namespace

Result<ImportCount> importEntries(Logbook &book, const std::vector<ForeignStream> &streams,
                                  std::vector<ForeignEntry> entries,
                                  const std::function<Status()> &beforeCommit)
{
    std::sort(entries.begin(), entries.end(),
              [](const ForeignEntry &a, const ForeignEntry &b) { return a.id < b.id; });
    Connection &db = book.db();
    Result<Transaction> transaction = Transaction::begin(db);
    if (!transaction)
        return transaction.error();
    ImportCount count;
    for (const ForeignStream &stream : streams)
        SNUG_TRY(addStream(db, stream, count));
    std::map<StreamId, Tail> tails;
    for (const ForeignEntry &entry : entries) {
        auto found = tails.find(entry.id.stream);
        if (found == tails.end()) {
            const Result<Tail> tail = tailOf(db, entry.id.stream);
            if (!tail)
                return tail.error();
            found = tails.emplace(entry.id.stream, *tail).first;
        }
        const std::int64_t before = found->second.seq;
        SNUG_TRY(takeIn(db, entry, found->second, count));
        if (found->second.seq != before && entry.id.stream == book.stream() && !count.mustReopen)
            SNUG_TRY(closeOwnStream(db, found->second, count));
    }
    if (beforeCommit)
        SNUG_TRY(beforeCommit());
    SNUG_TRY(std::move(*transaction).commit());
    return count;
}

} // namespace snugwalk
