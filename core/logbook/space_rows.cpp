// SPDX-License-Identifier: Apache-2.0
// Shared rigs and their control records, as rows.
#include "logbook/receive_rows.hpp"

namespace snugwalk {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

Result<std::vector<std::pair<Id, Hash>>> sharedRigs(Logbook &book)
{
    Result<Statement> rows = book.db().prepare("SELECT id, root FROM space ORDER BY id");
    if (!rows)
        return rows.error();
    std::vector<std::pair<Id, Hash>> found;
    SNUG_TRY(rows->each([&]() -> Status {
        found.emplace_back(Id::fromBytes(rows->bytes(0)), Hash::fromBytes(rows->bytes(1)).value_or(Hash{}));
        return done();
    }));
    return found;
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
    return keepControls(book, space, {{hash, std::string(bytes)}});
}

Status keepControls(Logbook &book, const Id &space, const std::vector<std::pair<Hash, std::string>> &records)
{
    Result<Transaction> transaction = Transaction::begin(book.db());
    if (!transaction)
        return transaction.error();
    for (const auto &[hash, bytes] : records)
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
    SNUG_TRY(rows->each([&]() -> Status {
        found.push_back(rows->bytes(0));
        return done();
    }));
    return found;
}

Result<bool> needsJudging(Logbook &book, const Id &space)
{
    Result<Statement> rows =
        withBytes(book.db(), "SELECT 1 FROM space WHERE judged = 0 AND id = ?", space.view());
    return rows ? rows->step() : Result<bool>(rows.error());
}

} // namespace snugwalk
