// SPDX-License-Identifier: Apache-2.0
// Whether everything in a logbook is what was written.
#pragma once

#include <string>
#include <vector>

#include "logbook/logbook.hpp"

namespace snugwalk {

struct CheckReport {
    std::int64_t entries = 0;
    std::int64_t streams = 0;
    std::int64_t photos = 0;
    std::int64_t photosElsewhere = 0; ///< of those, whose original is on another device
    Hash projection;
    std::vector<std::string> faults; ///< one line each; empty when all is as written
};

/// Sequence numbers, hashes and the chain of every stream, entries against their columns, the
/// projection against one rebuilt from entries (in a transaction that is rolled back), foreign keys.
/// With `deep`, SQLite's own page check and every photo's bytes against its name as well; together they tell
/// any changed bit that something reads (what no hash covers stands twice, see core/logbook/FORMAT.md). A bit
/// in a free page or the unused rest of one is nobody's. Damage that stops one question does not stop the
/// others.
[[nodiscard]] Result<CheckReport> checkLogbook(Logbook &book, bool deep);

/// Copies the logbook with SQLite's online backup into `target`, which must not exist, and its
/// photos beside it. The copy writes to a new stream of its own when it is opened.
[[nodiscard]] Status backupLogbook(Logbook &book, const std::string &target);

/// Makes a new logbook of a backup: copies it with its photos to `target`, which must not exist, and takes
/// the name only once `checkLogbook` found nothing, deep. The backup is never written to, nor is any other
/// logbook. \param options of the device that goes on with it, in a stream of its own
/// \returns what was checked; `Conflict` when something is at `target`, `NotFound` without a backup,
/// `Corrupt` naming the first fault. An error leaves nothing at `target`.
[[nodiscard]] Result<CheckReport> restoreLogbook(const std::string &backup, const std::string &target,
                                                 LogbookOptions options);

} // namespace snugwalk
