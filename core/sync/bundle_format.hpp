// SPDX-License-Identifier: Apache-2.0
// The file to hand over: a flat list of names, hashes and bytes. Names are looked up, never used as paths.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>

#include "base/result.hpp"
#include "keys/hash.hpp"

namespace snugwalk {

// Layout: first line | contents, one after the other | index | BLAKE2b-256 of the index (32 bytes) |
// length of the index (8 bytes, big endian) | last 8 bytes. The index has a line a file, sorted by name:
// `<64 hex digits of BLAKE2b-256> <size> <name>\n`. There is one way to write a given set of files.
inline constexpr std::string_view bundleHead = "snugwalk bundle 1\n";
inline constexpr std::string_view bundleTail = "snugend1";
inline constexpr std::size_t bundleTrailerBytes = 32 + 8 + 8;
inline constexpr std::size_t maxBundleIndexBytes = std::size_t{32} * 1024 * 1024;
inline constexpr std::size_t maxBundleFiles = 100'000;
inline constexpr std::int64_t maxBundleFileBytes = std::int64_t{64} * 1024 * 1024;

struct BundleItem {
    std::int64_t offset = 0; ///< of its first byte, from the start of the bundle
    std::int64_t size = 0;   ///< bytes
    Hash hash;
};
using BundleIndex = std::map<std::string, BundleItem, std::less<>>;

/// The length of the index from the last bytes; \param trailer the last `bundleTrailerBytes`.
/// \returns `Corrupt` when they are none, `OutOfRange` for an index over the limit.
[[nodiscard]] Result<std::size_t> bundleIndexLength(std::string_view trailer);

/// \param head the first bytes, \param index those that `bundleIndexLength` told of, \param total of the
/// bundle. \returns `Corrupt` for anything but what `bundleIndexText` writes over exactly `total` bytes;
/// `OutOfRange` over the limits above.
[[nodiscard]] Result<BundleIndex> parseBundleIndex(std::string_view head, std::string_view index,
                                                   std::string_view trailer, std::int64_t total);

/// Index and trailer; items lie in the order of their offsets, which must be that of their names.
[[nodiscard]] std::string bundleEnd(const BundleIndex &index);

/// A whole bundle in memory: files by name. For small ones and for tests.
using BundleFiles = std::map<std::string, std::string, std::less<>>;
[[nodiscard]] std::string bundleBytes(const BundleFiles &files);
/// Verifies every hash as well.
[[nodiscard]] Result<BundleFiles> readBundle(std::string_view bytes);

} // namespace snugwalk
