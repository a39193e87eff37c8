// SPDX-License-Identifier: Apache-2.0
// What an export says of itself: who wrote, which files, and their hashes.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "logbook/import_entries.hpp"

namespace snugwalk {

struct ManifestFile {
    std::string name;
    std::int64_t size = 0; ///< bytes
    Hash hash;             ///< BLAKE2b-256 of its bytes
};

struct Manifest {
    std::string made; ///< RFC 3339, by the clock of the device that exported
    Id rig;           ///< null for the whole logbook
    std::int64_t entries = 0;
    std::vector<ForeignStream> streams; ///< every one that an entry or a predecessor may name
    std::vector<ManifestFile> files;    ///< all but the manifest itself
    std::vector<Hash> missingPhotos;    ///< named by entries, not on the device that exported
};

inline constexpr std::size_t maxManifestBytes = std::size_t{32} * 1024 * 1024;

[[nodiscard]] std::string manifestText(const Manifest &manifest);
/// \returns `InvalidInput` for what is no manifest, `Unsupported` for one of a newer version.
[[nodiscard]] Result<Manifest> readManifest(std::string_view text);

} // namespace snugwalk
