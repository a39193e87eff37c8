// SPDX-License-Identifier: Apache-2.0
// SQLite behind values and results. One thread a connection.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "base/result.hpp"

struct sqlite3;
struct sqlite3_stmt;

namespace snugwalk::sqlite {

/// Prepared statements of one connection that wait for their next use, by their text.
using IdleStatements = std::multimap<std::string, sqlite3_stmt *, std::less<>>;

/// A prepared statement; goes back to its connection on destruction, which it must not outlive.
/// Parameters count from 1, columns from 0.
class Statement {
public:
    void bind(int at, std::int64_t value);
    void bind(int at, std::string_view text);
    void bindBytes(int at, std::string_view bytes);
    void bindNull(int at);
    /// The same without a copy: the text or bytes must stay where they are until the statement has run.
    void bindKept(int at, std::string_view text);
    void bindKeptBytes(int at, std::string_view bytes);

    /// True with a row to read, false at the end.
    [[nodiscard]] Result<bool> step();
    /// Runs to the end and makes the statement ready for new parameters.
    [[nodiscard]] Status run();
    void reset();
    /// `visit`, which gives a Status, for each row that is left; the first error ends it.
    template <typename Visit>
    [[nodiscard]] Status each(Visit visit)
    {
        for (;;) {
            const Result<bool> row = step();
            if (!row)
                return row.error();
            if (!*row)
                return done();
            SNUG_TRY(visit());
        }
    }

    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::string bytes(int column) const;
    /// The same without a copy: gone with the next step.
    [[nodiscard]] std::string_view view(int column) const;
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] int columns() const;

private:
    friend class Connection;
    struct GiveBack {
        GiveBack() : idle(nullptr) {}
        explicit GiveBack(IdleStatements *list) : idle(list) {}
        void operator()(sqlite3_stmt *statement) const;
        IdleStatements *idle;
    };
    std::unique_ptr<sqlite3_stmt, GiveBack> m_statement;
};

enum class OpenMode { ReadWrite, Create, ReadOnly };

class Connection {
public:
    [[nodiscard]] static Result<Connection> open(const std::string &file, OpenMode mode);

    [[nodiscard]] Status exec(const char *sql);
    /// The same, waiting for other processes up to 5 s where SQLite itself does not: it refuses a change of
    /// the journal's kind at once while another process opens the file.
    [[nodiscard]] Status execPatiently(const char *sql);
    /// Statements are kept for the next time: preparing one costs more than running it.
    [[nodiscard]] Result<Statement> prepare(std::string_view sql) const;
    /// The first column of the first row as a number; `fallback` without a row.
    [[nodiscard]] Result<std::int64_t> number(std::string_view sql, std::int64_t fallback = 0) const;
    /// How many rows the last statement that wrote has changed.
    [[nodiscard]] std::int64_t changes() const;
    [[nodiscard]] sqlite3 *raw() const { return m_db.get(); }
    [[nodiscard]] const std::string &file() const { return m_file; }

private:
    struct Close {
        void operator()(sqlite3 *db) const;
    };
    struct FinalizeAll {
        void operator()(IdleStatements *idle) const;
    };
    std::unique_ptr<sqlite3, Close> m_db;
    std::unique_ptr<IdleStatements, FinalizeAll> m_idle; // gone before the connection closes
    std::string m_file;
};

/// Takes the write lock at once, and refuses a file that was moved or deleted under the connection; rolls
/// back on destruction unless `commit` succeeded.
class Transaction {
public:
    [[nodiscard]] static Result<Transaction> begin(Connection &db);
    Transaction(Transaction &&other) noexcept;
    Transaction &operator=(Transaction &&) = delete;
    ~Transaction();
    [[nodiscard]] Status commit() &&;

private:
    explicit Transaction(Connection &db) : m_db(&db) {}
    Connection *m_db;
};

/// What SQLite last refused, in words for a person: full disk, locked, damaged, not writable.
[[nodiscard]] Error lastError(sqlite3 *db, const std::string &file);

} // namespace snugwalk::sqlite
