// SPDX-License-Identifier: Apache-2.0
// A PROPFIND answer as names and sizes, from bytes that nobody vouches for.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sync/store.hpp"

namespace snugwalk {

inline constexpr std::size_t maxListingBytes = std::size_t{4} * 1024 * 1024;
inline constexpr std::size_t maxListingItems = 50'000;

/// Reads a multistatus answer of depth 1 [RFC4918] sections 13 and 14. Hrefs may be paths or whole
/// addresses, percent-encoded in any way. What is not directly under `folder`, or has a name that no store
/// of ours has, is left out: it is someone else's.
/// \param folder the path that was asked for, decoded, with or without the last slash.
/// \returns `Network` when it is no such answer, with a document type, over 4 MiB or over 50,000 items.
[[nodiscard]] Result<std::vector<StoreFile>> parseListing(std::string_view xml, std::string_view folder);

/// Percent-decoding [RFC3986] section 2.1; nothing for a broken escape or an escaped NUL.
[[nodiscard]] std::optional<std::string> percentDecoded(std::string_view text);

} // namespace snugwalk
