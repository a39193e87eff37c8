// SPDX-License-Identifier: Apache-2.0
// One entry as one line of JSON [RFC8259] and back to the very same bytes.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "logbook/import_entries.hpp"

namespace snugwalk {

inline constexpr std::size_t maxLineBytes = std::size_t{8} * 1024 * 1024;

/// All members of the entry (core/logbook/FORMAT.md) and its `hash`. Names of 16 and 24 bytes are
/// hexadecimal; `hlc` is text, since many readers of JSON keep 53 bits only [RFC8259] section 6. Where the
/// members alone do not give the bytes back (bytes among fields, a newer version), `cbor` has them in
/// hexadecimal. No line feed at the end.
/// \returns `Corrupt` when the stored bytes are no entry.
/// \param previous the hash of the entry before; written where that entry is not in the same export.
[[nodiscard]] Result<std::string> lineOf(std::string_view bytes, const Hash &hash,
                                         const std::optional<Hash> &previous);

struct EntryLine {
    ForeignEntry entry;
    std::optional<Hash> previous;
};

/// The inverse. What a line shows and what its bytes say must be the same thing.
/// \returns `Corrupt`, or `OutOfRange` over `maxLineBytes`. The hash is not compared here: it needs the entry
/// before, see `ChainFollower`.
[[nodiscard]] Result<EntryLine> entryFromLine(std::string_view line);

} // namespace snugwalk
