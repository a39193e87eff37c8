// SPDX-License-Identifier: Apache-2.0
// Reading the log table.
#pragma once

#include <functional>

#include "logbook/projection.hpp"

namespace snugwalk {

/// Every entry in total order (hlc, stream, seq); stops at the first error of the visitor.
[[nodiscard]] Status eachStoredEntry(sqlite::Connection &db, const std::function<Status(const StoredEntry &)> &visit);

/// Entries that match a condition on the `entry` table with at most one bytes parameter, in total order.
[[nodiscard]] Result<std::vector<StoredEntry>> entriesWhere(sqlite::Connection &db, const std::string &condition,
                                                            std::string_view bytes);

/// Adds every column of every row to the hash, each with its length before it.
[[nodiscard]] Status hashRows(sqlite::Statement &rows, Hasher &hasher);

} // namespace snugwalk
