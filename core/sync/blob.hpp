// SPDX-License-Identifier: Apache-2.0
// A photo as it travels: pieces of 1 MiB and a manifest with its thumbnail, all sealed to the rig's members.
#pragma once

#include <vector>

#include "keys/hash.hpp"
#include "sync/seal.hpp"

namespace snugwalk {

inline constexpr std::size_t chunkBytes = std::size_t{1024} * 1024;
inline constexpr std::size_t maxSealedChunk = chunkBytes + 64;
inline constexpr std::size_t maxManifest = std::size_t{64} * 1024;

struct PhotoManifest {
    Hash photo;               ///< of the original's bytes
    std::int64_t size = 0;    ///< bytes
    std::vector<Hash> chunks; ///< of their sealed bytes
    std::string thumbnail;    ///< JPEG, may be empty
};

struct SealedPhoto {
    std::string manifest;
    std::vector<std::string> chunks;
};

/// What a manifest is called in a store: tells nothing to who has not the rig's key, and the same from every
/// device that has the photo.
[[nodiscard]] std::string manifestName(const Secret &epoch, const Hash &photo);

/// The same photo and thumbnail give the same bytes: the nonce is a keyed hash of what it seals.
[[nodiscard]] SealedPhoto sealPhoto(const Secret &epoch, const Hash &photo, std::string_view original,
                                    std::string_view thumbnail);

/// `Corrupt` unless it is the manifest of that photo.
[[nodiscard]] Result<PhotoManifest> openManifest(const Secret &epoch, const Hash &photo,
                                                 std::string_view bytes);
/// `Corrupt` unless it is that piece of that photo.
[[nodiscard]] Result<std::string> openChunk(const Secret &epoch, const PhotoManifest &manifest,
                                            std::size_t index, std::string_view bytes);

} // namespace snugwalk
