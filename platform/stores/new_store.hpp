// SPDX-License-Identifier: Apache-2.0
// A store as people type it, and as it is remembered.
#pragma once

#include "stores/store_list.hpp"

namespace snugwalk {

struct NewStore {
    std::string name;
    std::string kind;      ///< `folder`, `webdav`, `file`
    std::string place;     ///< a path, or an address
    std::string user;      ///< the rest: WebDAV only
    std::string password;  ///< sealed when it is kept
    std::string authority; ///< a PEM file of the only authority to believe; empty for the system's
};

/// Looks whether it can be one, and seals the password; nothing is sent and nothing kept. \returns
/// `InvalidInput` for a name or an address that is none, `NotFound` without the folder, and errors of
/// `keeper`.
[[nodiscard]] Result<StoreRecord> newStore(const NewStore &typed, SecretKeeper &keeper);

} // namespace snugwalk
