// SPDX-License-Identifier: Apache-2.0
// Two settings, and back.
#include "logbook/many_writes.hpp"

#include <sqlite3.h>

namespace snugwalk::sqlite {

ManyWrites::ManyWrites(Connection &db) : m_db(db)
{
    // a wish, not a need: refused, everything goes on more slowly
    sqlite3_exec(db.raw(), "PRAGMA cache_size = -98304; PRAGMA wal_autocheckpoint = 65536", nullptr, nullptr,
                 nullptr);
}

ManyWrites::~ManyWrites()
{
    // SQLite's own defaults again
    sqlite3_exec(
        m_db.raw(),
        "PRAGMA wal_checkpoint(PASSIVE); PRAGMA wal_autocheckpoint = 1000; PRAGMA cache_size = -2000",
        nullptr, nullptr, nullptr);
}

} // namespace snugwalk::sqlite
