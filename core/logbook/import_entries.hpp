// SPDX-License-Identifier: Apache-2.0
// Whole streams that another device wrote, taken into the log: verified first, then all or nothing.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "logbook/logbook.hpp"

namespace snugwalk {

/// Who wrote a stream; `publicKey` is 32 bytes whose hash names the device, or 32 zeros for a partial stream
/// that others only named.
struct ForeignStream {
    StreamId name;
    std::string publicKey;
    std::string label;
    bool partial = false; ///< it came through sync where it was exported: entries of other rigs are missing
    [[nodiscard]] bool isOnlyNamed() const { return partial && publicKey == std::string(32, '\0'); }
};

/// An entry as it was stored where it was written.
struct ForeignEntry {
    EntryId id;
    std::string bytes; ///< canonical, see core/logbook/FORMAT.md
    Hash hash;         ///< of the chain up to it
};

struct ImportCount {
    std::int64_t added = 0;
    std::int64_t known = 0;
    std::int64_t streams = 0; ///< new ones
    /// This logbook's own stream was behind (a restored file): it was closed, and the next opening starts
    /// another.
    bool mustReopen = false;
};

/// Stores and projects in one transaction what is not there yet. Each stream must go on from what is
/// stored of it without a gap, but for entries that came through sync and so have the hash of an entry alone;
/// the order of the arguments does not matter. The same again adds nothing. \returns `Corrupt` when a key, a
/// chain or an entry does not verify, `Conflict` when an entry of the same name but other bytes is stored,
/// `NotFound` for a gap, `Unsupported` for entries of a newer version. After an error the logbook is as it
/// was. \param beforeCommit runs once everything verified, before it is there to be read: for files that the
/// entries name. Its error leaves the logbook as it was.
[[nodiscard]] Result<ImportCount> importEntries(Logbook &book, const std::vector<ForeignStream> &streams,
                                                std::vector<ForeignEntry> entries,
                                                const std::function<Status()> &beforeCommit = {});

} // namespace snugwalk
