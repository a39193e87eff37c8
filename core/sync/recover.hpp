// SPDX-License-Identifier: Apache-2.0
// From printed words back to the rig: all other devices are lost, a store is left.
#pragma once

#include "sync/share.hpp"
#include "sync/store.hpp"

namespace snugwalk {

/// What a store has of a rig whose records make `root` its first one and the key's holder an owner.
struct FoundRig {
    Id rig;
    Hash root;
    std::vector<SignedControl> records; ///< those that verify
};

/// Rigs of a store which a key owns. Anybody can write a record that names any key an owner: what tells a rig
/// that somebody made up is its mark, which is printed beside the words.
/// \returns `Io`, `Network` of the store.
[[nodiscard]] Result<std::vector<FoundRig>> rigsOwnedBy(Store &store, const DeviceKey &key);

/// Seven words that name the rig's first record (64 bits of its hash).
[[nodiscard]] std::string rigMark(const Hash &root);

/// The one of that mark, or the only one when `mark` is empty. `NotFound` when there is none, `Conflict` when
/// there are several, `InvalidInput` for words that are no mark. \param store its name, to tell
[[nodiscard]] Result<FoundRig> rigOfMark(std::vector<FoundRig> found, std::string_view mark,
                                         const std::string &store);

/// Takes part in the rig and enrolls this device as an owner, signed by the printed key. Exchange afterwards.
/// \returns `Conflict` when this logbook shares another rig of that id.
[[nodiscard]] Status recoverRig(Logbook &book, const Keys &mine, const DeviceKey &printed,
                                const FoundRig &rig);

} // namespace snugwalk
