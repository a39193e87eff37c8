// SPDX-License-Identifier: Apache-2.0
// From a line of the list to a place that files can be left at.
#pragma once

#include <functional>
#include <memory>

#include "stores/store_list.hpp"

namespace snugwalk {

/// A store while it is used. Call `finish` when all is done: a file to hand over is written only then.
struct OpenedStore {
    std::unique_ptr<Store> store;
    std::function<Status()> finish;
};

/// \returns errors of the kind's own `open`; `Unsupported` for WebDAV in a program built without it.
[[nodiscard]] Result<OpenedStore> openStore(SecretKeeper &keeper, const StoreRecord &store);

/// Made by webdav_open.cpp or no_webdav.cpp, whichever the build has.
[[nodiscard]] Result<std::unique_ptr<Store>> openWebdav(const StoreRecord &store,
                                                        const std::string &password);

} // namespace snugwalk
