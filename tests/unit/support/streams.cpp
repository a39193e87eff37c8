// SPDX-License-Identifier: Apache-2.0
// Rows of the log tables, written as they came.
#include "support/streams.hpp"

#include "logbook/entry_rows.hpp"

namespace snugwalk::test {
namespace {

using sqlite::Connection;
using sqlite::Statement;

// Every stream that `from` knows, with its key: predecessors may lie in any of them.
void addStreams(Connection &db, Connection &from)
{
    Statement rows = from.prepare("SELECT name, public_key, label FROM stream ORDER BY id").value();
    while (rows.step().value()) {
        Statement insert =
            db.prepare("INSERT OR IGNORE INTO stream(name, public_key, label, own) VALUES(?, ?, ?, 0)")
                .value();
        insert.bindBytes(1, rows.bytes(0));
        insert.bindBytes(2, rows.bytes(1));
        insert.bind(3, rows.text(2));
        SNUG_ASSERT(insert.run().has_value());
    }
}

bool isStored(Connection &db, std::int64_t row, std::int64_t seq)
{
    Statement find = db.prepare("SELECT 1 FROM entry WHERE stream = ? AND seq = ?").value();
    find.bind(1, row);
    find.bind(2, seq);
    return find.step().value();
}

void storeRow(Connection &db, const StoredEntry &stored)
{
    Statement insert = db.prepare("INSERT INTO entry(stream, seq, hlc, entity, act, scope, undoes, bytes, "
                                  "hash) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)")
                           .value();
    const Entry &entry = stored.entry;
    insert.bind(1, stored.streamRow);
    insert.bind(2, entry.id.seq);
    insert.bind(3, entry.hlc);
    int at = 4;
    for (const Id &id : {entry.entity, entry.act, entry.scope, entry.undoes}) {
        if (id.isNull())
            insert.bindNull(at++);
        else
            insert.bindBytes(at++, id.view());
    }
    insert.bindBytes(8, stored.bytes);
    insert.bindBytes(9, stored.hash.view());
    SNUG_ASSERT(insert.run().has_value());
}

} // namespace

std::vector<StoredEntry> ownEntries(Logbook &book)
{
    std::vector<StoredEntry> own;
    SNUG_ASSERT(eachStoredEntry(book.db(), [&](const StoredEntry &stored) {
                    if (stored.entry.id.stream == book.stream())
                        own.push_back(stored);
                    return done();
                }).has_value());
    return own;
}

void receive(Logbook &book, Logbook &from, const std::vector<StoredEntry> &entries)
{
    auto transaction = sqlite::Transaction::begin(book.db()).value();
    addStreams(book.db(), from.db());
    for (StoredEntry stored : entries) {
        stored.streamRow = streamRow(book.db(), stored.entry.id.stream).value();
        if (isStored(book.db(), stored.streamRow, stored.entry.id.seq))
            continue;
        storeRow(book.db(), stored);
        SNUG_ASSERT(project(book.db(), stored).has_value());
    }
    SNUG_ASSERT(std::move(transaction).commit().has_value());
}

} // namespace snugwalk::test
