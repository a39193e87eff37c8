// SPDX-License-Identifier: Apache-2.0
// Reading the log table.
#pragma once

#include <functional>

#include "logbook/projection.hpp"

namespace snugwalk {

/// Every entry in total order (hlc, stream, seq); stops at the first error of the visitor.
[[nodiscard]] Status eachStoredEntry(sqlite::Connection &db,
                                     const std::function<Status(const StoredEntry &)> &visit);

/// Every entry of one entity, in total order.
[[nodiscard]] Result<std::vector<StoredEntry>> entriesOf(sqlite::Connection &db, const Id &entity);
/// The entries of one act within its scope, in total order.
[[nodiscard]] Result<std::vector<StoredEntry>> entriesOfAct(sqlite::Connection &db, const Id &scope,
                                                            const Id &act);

/// Adds every column of every row to the hash, each with its length before it.
[[nodiscard]] Status hashRows(sqlite::Statement &rows, Hasher &hasher);

} // namespace snugwalk
