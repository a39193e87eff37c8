// SPDX-License-Identifier: Apache-2.0
// The tables that are read, made from entries and nothing else, so that they can be made again.
#pragma once

#include <map>
#include <vector>

#include "logbook/entry.hpp"
#include "logbook/sqlite.hpp"

namespace snugwalk {

/// An entry with its stream's row number in this file.
struct StoredEntry {
    std::int64_t streamRow = 0;
    Entry entry;
    std::string bytes;
    Hash hash;
};

/// Applies one entry: heads, then the row of its entity. Any order of the same entries ends in the
/// same tables. Call within a transaction.
[[nodiscard]] Status project(sqlite::Connection &db, const StoredEntry &stored);

/// The same for many: each thing's row is written once.
[[nodiscard]] Status project(sqlite::Connection &db, const std::vector<StoredEntry> &entries);

/// Empties and fills the projection again from all entries that are not set aside. Call within a transaction.
[[nodiscard]] Status rebuildProjection(sqlite::Connection &db);

/// A hash over every row of the projection in a fixed order: the same in every logbook of the same entries.
[[nodiscard]] Result<Hash> projectionHash(sqlite::Connection &db);

/// The heads of a field: entry, value, oldest first in total order.
struct Head {
    std::int64_t streamRow = 0;
    EntryId id;
    std::int64_t hlc = 0;
    Value value;
    std::string type; ///< of the entry's thing
};
using HeadsByField = std::map<std::string, std::vector<Head>>;
[[nodiscard]] Result<HeadsByField> headsOf(sqlite::Connection &db, const Id &entity);

/// The head whose value is shown. A value goes before a null that did not know of it: what one takes
/// away without having seen it stays. Then the worst for a mark's state, then the latest.
[[nodiscard]] const Head &shownHead(const std::string &field, const std::vector<Head> &heads);

/// What goes before the clock among heads of one field: a value before a null, or the worst state of a mark.
[[nodiscard]] int rankOf(std::string_view encodedValue, bool isWorst);

/// The row number of a stream in this file; `Corrupt` for one it does not know.
[[nodiscard]] Result<std::int64_t> streamRow(sqlite::Connection &db, const StreamId &stream);

/// The same, made as one that came from elsewhere when it is not there. A key is learned once; a stream that
/// was only named by others has none yet.
[[nodiscard]] Result<std::int64_t> streamRowOrNew(sqlite::Connection &db, const StreamId &stream,
                                                  std::string_view publicKey = {});

} // namespace snugwalk
