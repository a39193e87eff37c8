// SPDX-License-Identifier: Apache-2.0
// Opening a logbook: file, schema, own stream, projection.
#include "logbook/logbook.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>

#include "logbook/append.hpp"
#include "logbook/schema.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;
using sqlite::Transaction;

// WAL and FULL: an act that was acknowledged survives a killed process and a power cut.
constexpr const char *settings =
    "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
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

bool hasBytes(const std::string &file)
{
    std::error_code fault;
    return std::filesystem::file_size(file, fault) > 0 && !fault;
}

// A file cut short within its last page would read as zeros there. With a journal beside it, SQLite
// itself puts the file in order.
Status refuseCutShort(const std::string &file)
{
    std::array<char, 18> header{};
    std::ifstream in(file, std::ios::binary);
    if (!in.read(header.data(), header.size()) || hasBytes(file + "-wal") || hasBytes(file + "-journal"))
        return done();
    const auto byte = [&](std::size_t at) {
        return static_cast<std::uintmax_t>(static_cast<unsigned char>(header.at(at)));
    };
    const std::uintmax_t told = byte(16) << 8 | byte(17);
    const std::uintmax_t page = told == 1 ? 65536 : told; // SQLite file format, section 1.3.2
    std::error_code fault;
    const std::uintmax_t size = std::filesystem::file_size(file, fault);
    const bool isDatabase = std::string_view(header.data(), 15) == "SQLite format 3";
    if (fault || !isDatabase || page == 0 || size % page == 0)
        return done();
    return Error{Errc::Corrupt, "the logbook is damaged: the file is cut short", file,
                 "do not delete it; open your last backup and keep this file"};
}

} // namespace

Result<Logbook> Logbook::open(const std::string &file, LogbookOptions options)
{
    const auto mode = options.createIfMissing ? sqlite::OpenMode::Create : sqlite::OpenMode::ReadWrite;
    SNUG_TRY(refuseCutShort(file));
    Result<Connection> db = Connection::open(file, mode);
    if (!db) {
        std::error_code fault;
        if (!options.createIfMissing && db.error().code == Errc::Io && !std::filesystem::exists(file, fault))
            return Error{Errc::NotFound, "there is no logbook", file,
                         "give another file, add a rig to begin one, or answer the offer of one (`snugwalk "
                         "device answer`)"};
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
    SNUG_TRY(m_db.execPatiently(settings));
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
    if (!*known) {
        SNUG_TRY(joinNewStream());
    } else {
        m_stream = **known;
        const auto row = streamRow(m_db, m_stream);
        if (!row)
            return row.error();
        m_streamRow = *row;
    }
    return std::move(*transaction).commit();
}

Status Logbook::joinNewStream()
{
    m_stream.device = m_options.device.deviceId();
    const Id fresh = m_options.ids->next();
    std::copy_n(fresh.bytes.begin(), m_stream.incarnation.size(), m_stream.incarnation.begin());
    Result<Statement> insert =
        m_db.prepare("INSERT INTO stream(name, public_key, label, own) VALUES(?, ?, ?, 1)");
    if (!insert)
        return insert.error();
    insert->bindBytes(1, m_stream.bytes());
    insert->bindBytes(2, m_options.device.publicKey());
    insert->bind(3, m_options.label);
    SNUG_TRY(insert->run());
    const auto row = streamRow(m_db, m_stream);
    if (!row)
        return row.error();
    m_streamRow = *row;
    return done();
}

Status Logbook::followStream()
{
    const auto own = ownStream(m_db, m_options.device.deviceId());
    if (!own)
        return own.error();
    if (!*own || **own == m_stream)
        return done();
    const auto row = streamRow(m_db, **own);
    if (!row)
        return row.error();
    m_stream = **own;
    m_streamRow = *row;
    return done();
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
    const std::string mark =
        "INSERT OR REPLACE INTO meta VALUES('projection', " + std::to_string(projectionVersion) + ")";
    SNUG_TRY(m_db.exec(mark.c_str()));
    return std::move(*transaction).commit();
}

Result<Receipt> Logbook::record(const Act &act)
{
    return record([&]() -> Result<Act> { return act; });
}

Result<Receipt> Logbook::record(const std::function<Result<Act>()> &build)
{
    Result<Transaction> transaction = Transaction::begin(m_db);
    if (!transaction)
        return transaction.error();
    // another process or thread may have left our stream meanwhile: what is written to it now would meet
    // another entry of the same number
    SNUG_TRY(followStream());
    const Result<Act> act = build();
    if (!act)
        return act.error();
    Appender appender(m_db, m_streamRow, m_stream);
    const LocalTime at = act->at.value_or(now());
    // one is drawn for each act although it is named by what it holds: what a seed gives after it stays the
    // same
    static_cast<void>(m_options.ids->next());
    const Result<Receipt> receipt = appender.append(*act, at, now().instant);
    if (!receipt)
        return receipt;
    SNUG_TRY(std::move(*transaction).commit());
    return receipt;
}

} // namespace snugwalk
