// SPDX-License-Identifier: Apache-2.0
// The only calls into SQLite's C interface besides backup.
#include "logbook/sqlite.hpp"

#include <sqlite3.h>
#include <utility>

namespace snugwalk::sqlite {

Error lastError(sqlite3 *db, const std::string &file)
{
    const int code = sqlite3_extended_errcode(db);
    const std::string detail = sqlite3_errmsg(db);
    switch (code & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {Errc::Conflict, "another program is writing to this logbook", file, "close it or try again"};
    case SQLITE_FULL:
        return {Errc::Io, "no room left on the disk; nothing was written", file,
                "free some space and try again"};
    case SQLITE_NOTADB:
        return {Errc::Corrupt, "not a logbook, or damaged", file,
                "give another file, or open your last backup"};
    case SQLITE_CORRUPT:
        return {Errc::Corrupt, "the logbook is damaged: " + detail, file,
                "do not delete it; open your last backup and keep this file"};
    case SQLITE_READONLY:
        return {Errc::Io, "the logbook cannot be written", file,
                "check the folder's and the file's permissions"};
    case SQLITE_CANTOPEN:
        return {Errc::Io, "the logbook cannot be opened", file,
                "check that the folder exists and may be written"};
    case SQLITE_IOERR:
        return {Errc::Io, "the disk refused: " + detail, file,
                "check the disk and its free space, then try again"};
    default:
        return {Errc::Io, "the store refused: " + detail, file,
                "try again; if it stays, run `snugwalk check`"};
    }
}

void Statement::GiveBack::operator()(sqlite3_stmt *statement) const
{
    sqlite3_reset(statement);
    sqlite3_clear_bindings(statement);
    idle->emplace(sqlite3_sql(statement), statement);
}

void Connection::FinalizeAll::operator()(IdleStatements *idle) const
{
    for (const auto &[sql, statement] : *idle)
        sqlite3_finalize(statement);
    delete idle;
}

void Statement::bind(int at, std::int64_t value)
{
    SNUG_ASSERT(sqlite3_bind_int64(m_statement.get(), at, value) == SQLITE_OK);
}

void Statement::bind(int at, std::string_view text)
{
    const char *data = text.empty() ? "" : text.data();
    SNUG_ASSERT(sqlite3_bind_text64(m_statement.get(), at, data, text.size(), SQLITE_TRANSIENT,
                                    SQLITE_UTF8) == SQLITE_OK);
}

void Statement::bindBytes(int at, std::string_view bytes)
{
    // a null pointer would bind NULL instead of no bytes
    const char *data = bytes.empty() ? "" : bytes.data();
    SNUG_ASSERT(sqlite3_bind_blob64(m_statement.get(), at, data, bytes.size(), SQLITE_TRANSIENT) ==
                SQLITE_OK);
}

void Statement::bindKept(int at, std::string_view text)
{
    const char *data = text.empty() ? "" : text.data();
    SNUG_ASSERT(sqlite3_bind_text64(m_statement.get(), at, data, text.size(), SQLITE_STATIC, SQLITE_UTF8) ==
                SQLITE_OK);
}

void Statement::bindKeptBytes(int at, std::string_view bytes)
{
    const char *data = bytes.empty() ? "" : bytes.data();
    SNUG_ASSERT(sqlite3_bind_blob64(m_statement.get(), at, data, bytes.size(), SQLITE_STATIC) == SQLITE_OK);
}

void Statement::bindNull(int at) { SNUG_ASSERT(sqlite3_bind_null(m_statement.get(), at) == SQLITE_OK); }

Result<bool> Statement::step()
{
    const int code = sqlite3_step(m_statement.get());
    if (code == SQLITE_ROW)
        return true;
    if (code == SQLITE_DONE)
        return false;
    sqlite3 *db = sqlite3_db_handle(m_statement.get());
    const char *name = sqlite3_db_filename(db, "main");
    const Error error = lastError(db, name == nullptr ? "" : name);
    reset();
    return error;
}

Status Statement::run()
{
    for (;;) {
        const Result<bool> row = step();
        if (!row)
            return row.error();
        if (!*row)
            break;
    }
    reset();
    return done();
}

void Statement::reset()
{
    sqlite3_reset(m_statement.get());
    sqlite3_clear_bindings(m_statement.get());
}

std::int64_t Statement::integer(int column) const { return sqlite3_column_int64(m_statement.get(), column); }

std::string Statement::text(int column) const { return bytes(column); }

std::string Statement::bytes(int column) const { return std::string(view(column)); }

std::string_view Statement::view(int column) const
{
    const void *data = sqlite3_column_blob(m_statement.get(), column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column));
    return data == nullptr ? std::string_view() : std::string_view(static_cast<const char *>(data), size);
}

bool Statement::isNull(int column) const
{
    return sqlite3_column_type(m_statement.get(), column) == SQLITE_NULL;
}

int Statement::columns() const { return sqlite3_column_count(m_statement.get()); }

void Connection::Close::operator()(sqlite3 *db) const { sqlite3_close(db); }

Result<Connection> Connection::open(const std::string &file, OpenMode mode)
{
    if (file.empty()) // SQLite would make one that is gone when it is closed
        return Error{Errc::InvalidInput, "a logbook without a name", "", "name a file"};
    int flags = SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE;
    flags |= mode == OpenMode::ReadOnly ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE;
    flags |= mode == OpenMode::Create ? SQLITE_OPEN_CREATE : 0;
    sqlite3 *raw = nullptr;
    const int code = sqlite3_open_v2(file.c_str(), &raw, flags, nullptr);
    Connection db;
    db.m_db.reset(raw);
    db.m_idle.reset(new IdleStatements);
    db.m_file = file;
    if (code != SQLITE_OK)
        return lastError(raw, file);
    sqlite3_busy_timeout(raw, 5000);
    return db;
}

Status Connection::exec(const char *sql)
{
    if (sqlite3_exec(m_db.get(), sql, nullptr, nullptr, nullptr) != SQLITE_OK)
        return lastError(m_db.get(), m_file);
    return done();
}

Status Connection::execPatiently(const char *sql)
{
    Status result = exec(sql);
    for (int tries = 0; !result && result.error().code == Errc::Conflict && tries < 100; ++tries) {
        sqlite3_sleep(50);
        result = exec(sql);
    }
    return result;
}

Result<Statement> Connection::prepare(std::string_view sql) const
{
    sqlite3_stmt *raw = nullptr;
    const auto idle = m_idle->find(sql);
    if (idle != m_idle->end()) {
        raw = idle->second;
        m_idle->erase(idle);
    } else if (sqlite3_prepare_v3(m_db.get(), sql.data(), static_cast<int>(sql.size()),
                                  SQLITE_PREPARE_PERSISTENT, &raw, nullptr) != SQLITE_OK) {
        return lastError(m_db.get(), m_file);
    }
    Statement statement;
    statement.m_statement = {raw, Statement::GiveBack(m_idle.get())};
    return statement;
}

Result<std::int64_t> Connection::number(std::string_view sql, std::int64_t fallback) const
{
    Result<Statement> statement = prepare(sql);
    if (!statement)
        return statement.error();
    const Result<bool> row = statement->step();
    if (!row)
        return row.error();
    return *row && !statement->isNull(0) ? statement->integer(0) : fallback;
}

std::int64_t Connection::changes() const { return sqlite3_changes64(m_db.get()); }

Result<Transaction> Transaction::begin(Connection &db)
{
    int isMoved = 0;
    sqlite3_file_control(db.raw(), "main", SQLITE_FCNTL_HAS_MOVED, &isMoved);
    if (isMoved != 0)
        return Error{Errc::Io, "the logbook's file was moved or deleted while it was open", db.file(),
                     "put it back, or close the program and open the file where it is now"};
    Result<Statement> begin = db.prepare("BEGIN IMMEDIATE");
    if (!begin)
        return begin.error();
    SNUG_TRY(begin->run());
    return Transaction(db);
}

Transaction::Transaction(Transaction &&other) noexcept : m_db(std::exchange(other.m_db, nullptr)) {}

Transaction::~Transaction()
{
    if (m_db != nullptr)
        sqlite3_exec(m_db->raw(), "ROLLBACK", nullptr, nullptr, nullptr);
}

Status Transaction::commit() &&
{
    Result<Statement> end = m_db->prepare("COMMIT");
    if (!end)
        return end.error();
    SNUG_TRY(end->run());
    m_db = nullptr;
    return done();
}

} // namespace snugwalk::sqlite
