// SPDX-License-Identifier: Apache-2.0
// The peer of a mark: one row of given size, committed by SQLite with the settings of a logbook.
#pragma once

#include <string>

#include "logbook/sqlite.hpp"

namespace snugwalk {

class BareBook {
public:
    BareBook(const std::string &file, std::size_t bytes)
        : m_db(sqlite::Connection::open(file, sqlite::OpenMode::Create).value()), m_bytes(bytes, 'x')
    {
        SNUG_ASSERT(
            m_db.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
                      "CREATE TABLE bare(id INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT")
                .has_value());
    }

    void commit()
    {
        auto transaction = sqlite::Transaction::begin(m_db).value();
        sqlite::Statement insert = m_db.prepare("INSERT INTO bare(bytes) VALUES(?)").value();
        insert.bindBytes(1, m_bytes);
        SNUG_ASSERT(insert.run().has_value());
        SNUG_ASSERT(std::move(transaction).commit().has_value());
    }

private:
    sqlite::Connection m_db;
    std::string m_bytes;
};

/// Bytes of the entry that was written last.
inline std::size_t entrySize(const sqlite::Connection &book)
{
    return static_cast<std::size_t>(
        book.number("SELECT length(bytes) FROM entry ORDER BY hlc DESC LIMIT 1").value());
}

inline std::size_t entrySize(const std::string &file)
{
    return entrySize(sqlite::Connection::open(file, sqlite::OpenMode::ReadWrite).value());
}

} // namespace snugwalk
