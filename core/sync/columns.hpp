// SPDX-License-Identifier: Apache-2.0
// Entries side by side: what is alike stands together, so that little is left of it once compressed.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "logbook/receive.hpp"

namespace snugwalk {

inline constexpr std::size_t maxSegmentEntries = 10'000;
inline constexpr std::size_t maxPlainBytes = std::size_t{4} * 1024 * 1024;
inline constexpr std::size_t maxPrev = 64;

/// See core/sync/FORMAT.md. `Unsupported` for an entry whose bytes would not come back the same.
[[nodiscard]] Result<std::string> packEntries(const std::vector<IncomingEntry> &entries);

/// Bounded and strict: every entry given can be read back by `entryFromBytes`. \returns `Corrupt`.
[[nodiscard]] Result<std::vector<IncomingEntry>> unpackEntries(std::string_view packed);

} // namespace snugwalk
