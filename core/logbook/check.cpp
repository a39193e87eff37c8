// SPDX-License-Identifier: Apache-2.0
// Reading a whole logbook against its own hashes.
#include "logbook/check.hpp"

#include <map>

#include "base/text.hpp"
#include "logbook/entry_rows.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

std::string nameOf(const Entry &entry)
{
    return "entry " + entry.id.stream.text() + " " + std::to_string(entry.id.seq);
}

bool isSame(const Id &id, const Statement &row, int column)
{
    return id.isNull() ? row.isNull(column) : row.bytes(column) == id.view();
}

bool columnsAgree(const Entry &entry, const Statement &row)
{
    return entry.id.seq == row.integer(1) && entry.hlc == row.integer(4) && isSame(entry.entity, row, 5) &&
           isSame(entry.act, row, 6) && entry.id.stream.bytes() == row.bytes(7) &&
           isSame(entry.scope, row, 8) && isSame(entry.undoes, row, 9);
}

// A device is named by the hash of its key, see core/keys.
Status checkStreams(Connection &db, CheckReport &report)
{
    Result<Statement> rows = db.prepare("SELECT id, name, public_key, partial FROM stream ORDER BY id");
    if (!rows)
        return rows.error();
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return done();
        ++report.streams;
        // a stream that others only named has no key yet
        const bool isOnlyNamed = rows->integer(3) != 0 && rows->bytes(2) == std::string(32, '\0');
        if (!isOnlyNamed &&
            blake2b(rows->bytes(2)).view().substr(0, 16) != std::string_view(rows->bytes(1)).substr(0, 16))
            report.faults.push_back("stream " + std::to_string(rows->integer(0)) +
                                    ": its key is not the device's");
    }
}

// Follows each stream's chain in order of its sequence numbers.
Status checkChains(Connection &db, CheckReport &report)
{
    Result<Statement> rows =
        db.prepare("SELECT entry.stream, seq, bytes, hash, hlc, entity, act, name, scope, "
                   "undoes, partial FROM entry JOIN "
                   "stream ON stream.id = entry.stream ORDER BY entry.stream, seq");
    if (!rows)
        return rows.error();
    std::int64_t stream = 0;
    std::int64_t expected = 1;
    Hash previous;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return done();
        if (rows->integer(0) != stream) {
            stream = rows->integer(0);
            expected = 1;
            previous = Hash{};
        }
        ++report.entries;
        const std::string bytes = rows->bytes(2);
        const Result<Entry> entry = entryFromBytes(bytes);
        const std::string where =
            "stream " + std::to_string(stream) + " entry " + std::to_string(rows->integer(1));
        // What came through sync, or through an export of that, has gaps where its stream wrote about other
        // rigs: the hash is that of an entry alone, and a segment's signature stands for the chain.
        const bool isAlone = rows->integer(10) != 0 && chainHash(Hash{}, bytes).view() == rows->bytes(3);
        const Hash hash = isAlone ? chainHash(Hash{}, bytes) : chainHash(previous, bytes);
        if (!isAlone && rows->integer(1) != expected)
            report.faults.push_back(where + ": entry " + std::to_string(expected) + " is missing before it");
        else if (hash.view() != rows->bytes(3))
            report.faults.push_back(where + ": its bytes or an earlier entry were changed");
        if (!entry)
            report.faults.push_back(where + ": " + entry.error().what);
        else if (!columnsAgree(*entry, *rows) || canonicalBytes(*entry) != bytes)
            report.faults.push_back(nameOf(*entry) + ": its columns differ from its bytes");
        expected = rows->integer(1) + 1;
        previous = hash;
    }
}

Status checkProjection(Connection &db, CheckReport &report)
{
    Result<Transaction> transaction = Transaction::begin(db); // rolled back at the end of this function
    if (!transaction)
        return transaction.error();
    const Result<Hash> stored = projectionHash(db);
    if (!stored)
        return stored.error();
    report.projection = *stored;
    const Status rebuilt = rebuildProjection(db);
    if (!rebuilt) {
        report.faults.push_back("the projection cannot be rebuilt: " + rebuilt.error().what);
        return done();
    }
    const Result<Hash> again = projectionHash(db);
    if (!again)
        return again.error();
    if (*again != *stored)
        report.faults.emplace_back("the tables that are read differ from what the entries say");
    return done();
}

// Runs a pragma that lists faults row by row; "ok" is SQLite's word for none.
Status checkPragma(Connection &db, const char *pragma, CheckReport &report)
{
    Result<Statement> rows = db.prepare(pragma);
    if (!rows)
        return rows.error();
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return done();
        if (rows->text(0) != "ok")
            report.faults.push_back(std::string(pragma) + ": " + rows->text(0));
    }
}

// Bytes that others signed: each row by its own hash.
Status checkSigned(Connection &db, const char *sql, const char *what, CheckReport &report)
{
    Result<Statement> rows = db.prepare(sql);
    if (!rows)
        return rows.error();
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return row.error();
        if (!*row)
            return done();
        if (blake2b(rows->bytes(1)).view() != rows->bytes(0))
            report.faults.push_back(std::string(what) + " " + toHex(rows->bytes(0)).substr(0, 20) +
                                    ": its bytes were changed");
    }
}

// Whether this device, or one whose whole stream is here, took the photo: then its original must be here too.
Result<bool> isOurs(Connection &db, const Id &photo)
{
    const auto entries = entriesOf(db, photo);
    if (!entries)
        return entries.error();
    for (const StoredEntry &stored : *entries) {
        if (stored.entry.fields.count("hash") == 0)
            continue;
        const auto partial =
            db.number("SELECT partial FROM stream WHERE id = " + std::to_string(stored.streamRow));
        if (!partial)
            return partial.error();
        if (*partial == 0)
            return true;
    }
    return false;
}

Status checkPhotos(Logbook &book, bool deep, CheckReport &report)
{
    const auto photos = photosOf(book, Id{});
    if (!photos)
        return photos.error();
    const PhotoStore store(book.photoFolder());
    for (const Photo &photo : *photos) {
        ++report.photos;
        const auto hash = Hash::parse(photo.hash);
        if (!hash) {
            report.faults.push_back("photo " + photo.id.shortText() + ": its name is no hash");
            continue;
        }
        const Status status = deep ? store.verify(*hash) : store.exists(*hash);
        if (!status && status.error().code == Errc::NotFound) {
            const Result<bool> ours = isOurs(book.db(), photo.id);
            if (!ours)
                return ours.error();
            if (!*ours) {
                ++report.photosElsewhere;
                continue;
            }
        }
        if (!status)
            report.faults.push_back("photo " + photo.id.shortText() + ": " + status.error().what);
    }
    return done();
}

} // namespace

Result<CheckReport> checkLogbook(Logbook &book, bool deep)
{
    CheckReport report;
    SNUG_TRY(checkStreams(book.db(), report));
    SNUG_TRY(checkPragma(book.db(), "PRAGMA foreign_key_check", report));
    if (deep)
        SNUG_TRY(checkPragma(book.db(), "PRAGMA integrity_check", report));
    SNUG_TRY(checkChains(book.db(), report));
    SNUG_TRY(checkSigned(book.db(), "SELECT hash, bytes FROM segment", "segment", report));
    SNUG_TRY(checkSigned(book.db(), "SELECT hash, bytes FROM control", "control record", report));
    SNUG_TRY(checkSigned(book.db(), "SELECT hash, bytes FROM twin", "twin", report));
    SNUG_TRY(checkProjection(book.db(), report));
    SNUG_TRY(checkPhotos(book, deep, report));
    return report;
}

} // namespace snugwalk
