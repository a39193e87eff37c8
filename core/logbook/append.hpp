// SPDX-License-Identifier: Apache-2.0
// Turning an act into entries at the end of one's own stream.
#pragma once

#include "logbook/logbook.hpp"

namespace snugwalk {

/// Call within a transaction.
class Appender {
public:
    Appender(sqlite::Connection &db, std::int64_t row, const StreamId &stream)
        : m_db(db), m_row(row), m_stream(stream)
    {}

    /// \param at what the person's clock showed; \param physical the clock for ordering.
    [[nodiscard]] Result<Receipt> append(const Act &act, const LocalTime &at, Instant physical);

private:
    [[nodiscard]] Status readTail(Instant physical);
    [[nodiscard]] Result<bool> appendChange(const Act &act, const EntityChange &change, Entry entry);
    [[nodiscard]] Status store(const StoredEntry &stored);

    sqlite::Connection &m_db;
    std::int64_t m_row;
    const StreamId &m_stream;
    Id m_act; ///< of the act at hand, once its first entry is known
    std::int64_t m_seq = 0;
    std::int64_t m_hlc = 0;
    Hash m_hash;
};

/// Writes rows of entries; holds its statement. Call within a transaction, which it must not outlive.
class EntryInsert {
public:
    explicit EntryInsert(sqlite::Connection &db) : m_db(db) {}
    /// False, and nothing done, when there is an entry of that id. `segment` as below.
    [[nodiscard]] Result<bool> putIfAbsent(const StoredEntry &stored, std::optional<std::int64_t> segment);

private:
    sqlite::Connection &m_db;
    std::optional<sqlite::Statement> m_insert;
};

/// Writes the row of an entry; `segment` is the one that it came in, nothing for one not sent yet.
[[nodiscard]] Status insertEntry(sqlite::Connection &db, const StoredEntry &stored,
                                 std::optional<std::int64_t> segment);

/// A clock that is further ahead of ours is wrong: its entries count, but ours does not follow it.
inline constexpr std::chrono::hours believedAhead{24};

/// Next stamp of the hybrid logical clock: 48 bits of milliseconds and a 16-bit counter that carries.
/// Source [KULKARNI-2014] Logical Physical Clocks, OPODIS 2014, algorithm 1, in one number.
[[nodiscard]] std::int64_t nextHlc(Instant physical, std::int64_t last);

} // namespace snugwalk
