// SPDX-License-Identifier: Apache-2.0
// How SQLite is set while a lot arrives.
#pragma once

#include "logbook/sqlite.hpp"

namespace snugwalk::sqlite {

/// For a lot of writing in several transactions: pages stay in memory between them, and the journal goes into
/// the file once, at the end, not after each. Every commit is on the disk as ever.
class ManyWrites {
public:
    explicit ManyWrites(Connection &db);
    ManyWrites(const ManyWrites &) = delete;
    ManyWrites &operator=(const ManyWrites &) = delete;
    ~ManyWrites();

private:
    Connection &m_db;
};

} // namespace snugwalk::sqlite
