// SPDX-License-Identifier: Apache-2.0
// Whether an export is what was written, to the bit, without a logbook.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "exchange/entry_line.hpp"

namespace snugwalk {

struct ExportCheck {
    std::int64_t entries = 0;
    std::int64_t streams = 0;
    std::int64_t photos = 0;
    std::vector<std::string>
        faults; ///< one line each, naming the entry, photo or part; empty when all is well
};

/// Reads every byte: the whole file's checksum, each file against the manifest, each entry against its hash
/// and the one before it, each photo against its name.
/// \returns an error only when the file cannot be read at all: `NotFound`, `Io`.
[[nodiscard]] Result<ExportCheck> checkExport(const std::string &file);

/// Follows the chain of each stream through lines in any order that keeps each stream's own.
class ChainFollower {
public:
    /// \returns `Corrupt` when the hash is not that of the entry before and these bytes, `NotFound` when
    /// the entry before is neither there nor named.
    [[nodiscard]] Status follow(const EntryLine &line);
    /// A line could not be read: gaps up to the next entry of each stream are its doing.
    void skipDamaged() { ++m_damaged; }

private:
    struct Last {
        std::int64_t seq = 0;
        Hash told;
        Hash computed;
        std::int64_t damaged = 0; ///< lines that could not be read before it
    };
    std::map<StreamId, Last> m_last;
    std::int64_t m_damaged = 0;
};

} // namespace snugwalk
