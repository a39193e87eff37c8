// SPDX-License-Identifier: Apache-2.0
// The logbook as JSON Lines and photos in a ZIP that any program can read, see core/exchange/FORMAT.md.
#pragma once

#include <string>
#include <vector>

#include "logbook/logbook.hpp"

namespace snugwalk {

struct ExportReport {
    std::int64_t entries = 0;
    std::int64_t streams = 0;
    std::int64_t photos = 0;
    std::int64_t sharedRigs = 0;      ///< of which it tells who belongs to them and what is set aside
    std::vector<std::string> missing; ///< photos named by entries that are not here or damaged, one line each
};

/// Writes `target`, which must not exist; it is read back and checked before it gets its name.
/// \param rig null for everything. One rig of several leaves gaps in the streams: such an export is for
/// reading and for logbooks that hold the rest; `importLogbook` refuses it elsewhere.
/// \returns `Conflict` when something has the name, `NotFound` for a rig that is not there, `Io`, `Corrupt`.
[[nodiscard]] Result<ExportReport> exportLogbook(Logbook &book, const std::string &target,
                                                 const Id &rig = Id{});

} // namespace snugwalk
