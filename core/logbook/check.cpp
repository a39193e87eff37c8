// SPDX-License-Identifier: Apache-2.0
// Reading a whole logbook against its own hashes.
#include "logbook/check.hpp"

#include <map>

#include "base/text.hpp"
#include "logbook/entry_rows.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"
#include "logbook/schema.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

std::string nameOf(const EntryId &id) { return "entry " + id.stream.text() + " " + std::to_string(id.seq); }

// By the row's own columns, whatever its bytes say.
std::string nameOfRow(std::string_view stream, std::int64_t seq)
{
    const Result<StreamId> name = streamFromBytes(stream);
    return name ? nameOf({*name, seq}) : "entry " + std::to_string(seq) + " of a stream without a name";
}

// Damage that stops one question does not stop the others.
Status noted(Status status, const char *what, CheckReport &report)
{
    if (status || status.error().code != Errc::Corrupt)
        return status;
    report.faults.push_back(std::string(what) + ": " + status.error().what);
    return done();
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
    return rows->each([&]() -> Status {
        ++report.streams;
        // a stream that others only named has no key yet
        const bool isOnlyNamed = rows->integer(3) != 0 && rows->bytes(2) == std::string(32, '\0');
        if (!isOnlyNamed &&
            blake2b(rows->bytes(2)).view().substr(0, 16) != std::string_view(rows->bytes(1)).substr(0, 16))
            report.faults.push_back("stream " + std::to_string(rows->integer(0)) +
                                    ": its key is not the device's");
        return done();
    });
}

// Tables, indexes and triggers against those of a new logbook.
Status checkSchema(Connection &db, CheckReport &report)
{
    const auto found = schemaTexts(db);
    const auto wanted = schemaWanted();
    if (!found || !wanted)
        return found ? wanted.error() : found.error();
    if (*found != *wanted)
        report.faults.emplace_back("the tables' own description is not that of a logbook");
    return done();
}

// Which entries are gone with a page that cannot be read: an index has their numbers too.
Status nameLost(Connection &db, CheckReport &report)
{
    Result<Statement> listed =
        db.prepare("SELECT entry.stream, seq, name FROM entry INDEXED BY entry_by_time "
                   "JOIN stream ON stream.id = entry.stream");
    Result<Statement> one = db.prepare("SELECT bytes FROM entry WHERE stream = ? AND seq = ?");
    if (!listed || !one)
        return listed ? one.error() : listed.error();
    return listed->each([&]() -> Status {
        one->bind(1, listed->integer(0));
        one->bind(2, listed->integer(1));
        const Result<bool> found = one->step();
        if (!found || !*found)
            report.faults.push_back(nameOfRow(listed->bytes(2), listed->integer(1)) + ": it cannot be read");
        one->reset();
        return done();
    });
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
    return rows->each([&]() -> Status {
        if (rows->integer(0) != stream) {
            stream = rows->integer(0);
            expected = 1;
            previous = Hash{};
        }
        ++report.entries;
        const std::string bytes = rows->bytes(2);
        const Result<Entry> entry = entryFromBytes(bytes);
        const std::string where = nameOfRow(rows->bytes(7), rows->integer(1));
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
            report.faults.push_back(where + ": its columns differ from its bytes");
        expected = rows->integer(1) + 1;
        previous = hash;
        return done();
    });
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
    return rows->each([&]() -> Status {
        if (rows->text(0) != "ok")
            report.faults.push_back(std::string(pragma) + ": " + rows->text(0));
        return done();
    });
}

// Bytes that are kept as they came: each row by its own hash. `sql` has hash, bytes, stream and a number.
Status checkKept(Connection &db, const char *sql, const char *what, CheckReport &report)
{
    Result<Statement> rows = db.prepare(sql);
    if (!rows)
        return rows.error();
    return rows->each([&]() -> Status {
        if (blake2b(rows->bytes(1)).view() == rows->bytes(0))
            return done();
        const Result<StreamId> stream = streamFromBytes(rows->bytes(2));
        report.faults.push_back(std::string(what) + " " +
                                (stream ? stream->text() + " " + std::to_string(rows->integer(3))
                                        : toHex(rows->bytes(0)).substr(0, 20)) +
                                ": its bytes or its hash were changed");
        return done();
    });
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
    Connection &db = book.db();
    SNUG_TRY(noted(checkSchema(db, report), "the tables' own description", report));
    SNUG_TRY(noted(checkStreams(db, report), "streams", report));
    SNUG_TRY(noted(checkPragma(db, "PRAGMA foreign_key_check", report), "tables", report));
    const Status chains = checkChains(db, report);
    if (!chains)
        SNUG_TRY(noted(nameLost(db, report), "the list of entries", report));
    SNUG_TRY(noted(chains, "entries", report));
    const auto kept = [&](const char *sql, const char *what) {
        return noted(checkKept(db, sql, what, report), what, report);
    };
    SNUG_TRY(kept("SELECT hash, bytes, stream, counter FROM segment", "file of entries"));
    SNUG_TRY(kept("SELECT hash, bytes, NULL, 0 FROM control", "record of members"));
    SNUG_TRY(kept("SELECT hash, bytes, name, seq FROM twin LEFT JOIN stream ON id = twin.stream",
                  "twin of entry"));
    SNUG_TRY(noted(checkPhotos(book, deep, report), "photos", report));
    SNUG_TRY(noted(checkProjection(db, report), "the tables that are read", report));
    if (deep)
        SNUG_TRY(noted(checkPragma(db, "PRAGMA integrity_check", report), "pages", report));
    return report;
}

} // namespace snugwalk
