// SPDX-License-Identifier: Apache-2.0
// The tables of a logbook and how an older file becomes today's.
#pragma once

#include <string>
#include <vector>

#include "logbook/sqlite.hpp"

namespace snugwalk {

/// "SNUG" as a big-endian number: what SQLite's application_id says of our files.
inline constexpr std::int64_t logbookApplicationId = 0x534E5547;
/// Today's `user_version`. Raised with every migration; a file above it is not touched.
inline constexpr std::int64_t logbookVersion = 3;
/// Raised whenever the projection's rules change; the projection is then rebuilt on opening.
inline constexpr std::int64_t projectionVersion = 5;

/// Makes a new file's tables, or brings an older file up to date, in one transaction.
/// \returns `Unsupported` for a file of a newer version or of another program, `Corrupt` for no database.
[[nodiscard]] Status prepareSchema(sqlite::Connection &db);

/// Tables, indexes and triggers as the file has them, one text each in order of name; and as they should be.
[[nodiscard]] Result<std::vector<std::string>> schemaTexts(const sqlite::Connection &db);
[[nodiscard]] Result<std::vector<std::string>> schemaWanted();

/// The trigger that sync lifts for a moment, in the words of the migration that made it.
inline constexpr const char *triggerThatKeeps =
    "CREATE TRIGGER entry_never_goes BEFORE DELETE ON entry\n"
    "    BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END";

} // namespace snugwalk
