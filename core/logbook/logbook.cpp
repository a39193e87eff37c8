// SPDX-License-Identifier: Apache-2.0
// Opening a logbook: file, schema, own stream, projection.
#include "logbook/logbook.hpp"

#include <algorithm>

#include "logbook/append.hpp"
#include "logbook/schema.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

// WAL and FULL: an act that was acknowledged survives a killed process and a power cut.
constexpr const char *settings = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
                                 "PRAGMA trusted_schema = OFF";

Result<std::optional<StreamId>> ownStream(Connection &db, const Id &device)
{
    Result<Statement> rows = db.prepare("SELECT name FROM stream WHERE own = 1 AND substr(name, 1, 16) = ?");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, device.view());
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    if (!*row)
        return std::optional<StreamId>();
    const Result<StreamId> stream = streamFromBytes(rows->bytes(0));
    if (!stream)
        return stream.error();
    return std::optional(*stream);
}

} // namespace

Result<Logbook> Logbook::open(const std::string &file, LogbookOptions options)
{
    const auto mode = options.createIfMissing ? sqlite::OpenMode::Create : sqlite::OpenMode::ReadWrite;
    Result<Connection> db = Connection::open(file, mode);
    if (!db) {
        if (!options.createIfMissing && db.error().code == Errc::Io)
            return Error{Errc::NotFound, "there is no logbook", file, "give another file, or add a rig to begin one"};
        return db.error();
    }
    Logbook book(std::move(db).value(), std::move(options));
    const Status started = book.start();
    if (!started)
        return started.error();
    return book;
}

Status Logbook::start()
{
    // The schema is looked at before WAL is asked for, so that a file that is not ours stays as it was.
    SNUG_TRY(prepareSchema(m_db));
    SNUG_TRY(m_db.exec(settings));
    SNUG_TRY(joinStream());
    return refreshProjection();
}

Status Logbook::joinStream()
{
    Result<Transaction> transaction = Transaction::begin(m_db);
    if (!transaction)
        return transaction.error();
    const auto known = ownStream(m_db, m_options.device.deviceId());
    if (!known)
        return known.error();
    if (*known) {
        m_stream = **known;
    } else {
        m_stream.device = m_options.device.deviceId();
        const Id fresh = m_options.ids->next();
        std::copy_n(fresh.bytes.begin(), m_stream.incarnation.size(), m_stream.incarnation.begin());
        Result<Statement> insert = m_db.prepare("INSERT INTO stream(name, public_key, label, own) VALUES(?, ?, ?, 1)");
        if (!insert)
            return insert.error();
        insert->bindBytes(1, m_stream.bytes());
        insert->bindBytes(2, m_options.device.publicKey());
        insert->bind(3, m_options.label);
        SNUG_TRY(insert->run());
    }
    const auto row = streamRow(m_db, m_stream);
    if (!row)
        return row.error();
    m_streamRow = *row;
    return std::move(*transaction).commit();
}

Status Logbook::refreshProjection()
{
    const auto version = m_db.number("SELECT value FROM meta WHERE key = 'projection'", 0);
    if (!version)
        return version.error();
    if (*version == projectionVersion)
        return done();
    Result<Transaction> transaction = Transaction::begin(m_db);
    if (!transaction)
        return transaction.error();
    SNUG_TRY(rebuildProjection(m_db));
    const std::string mark = "INSERT OR REPLACE INTO meta VALUES('projection', " + std::to_string(projectionVersion) + ")";
    SNUG_TRY(m_db.exec(mark.c_str()));
    return std::move(*transaction).commit();
}

Result<Receipt> Logbook::record(const Act &act)
{
    Result<Transaction> transaction = Transaction::begin(m_db);
    if (!transaction)
        return transaction.error();
    Appender appender(m_db, m_streamRow, m_stream);
    const LocalTime at = act.at.value_or(now());
    const Result<Receipt> receipt = appender.append(act, m_options.ids->next(), at, now().instant);
    if (!receipt)
        return receipt;
    SNUG_TRY(std::move(*transaction).commit());
    return receipt;
}

} // namespace snugwalk
