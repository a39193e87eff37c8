// SPDX-License-Identifier: Apache-2.0
// A place where devices leave files for each other: what a folder, a stick or a server has to do.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

struct StoreFile {
    std::string name;      ///< relative to the listed folder, one level; a folder's ends in '/'
    std::int64_t size = 0; ///< bytes, 0 for a folder
};

/// A place for files that nobody changes once they are there: a folder, a stick, a WebDAV address, a bundle.
/// Whatever it says is a hint: what counts is what verifies inside the bytes.
class Store {
public:
    Store() = default;
    Store(const Store &) = delete;
    Store &operator=(const Store &) = delete;
    virtual ~Store() = default;

    /// Files and folders directly under `folder` ("" is the root); folders end in '/'. A folder that is not
    /// there is empty. Names are hints.
    [[nodiscard]] virtual Result<std::vector<StoreFile>> list(std::string_view folder) = 0;

    /// \returns `NotFound`; `OutOfRange` when it holds more than `limit` bytes; `InvalidInput` for a name
    /// that is not fine; `Io` or `Network` when the place cannot be reached.
    [[nodiscard]] virtual Result<std::string> read(std::string_view name, std::int64_t limit) = 0;

    /// Atomic: whole under `name` or not at all (temporary name, verify, rename or move). The same bytes
    /// already there: done. Other bytes there: `Conflict`, never overwritten.
    [[nodiscard]] virtual Status publish(std::string_view name, std::string_view bytes) = 0;
};

/// Parts of 1 to 100 characters of [a-z0-9._-] joined by '/', at most 12 of them, none that starts or ends
/// with a dot and none that a system of disks reserves (con, nul, com1 ...).
[[nodiscard]] bool nameIsFine(std::string_view name);

/// `InvalidInput` in the same words from every store.
[[nodiscard]] Status checkStoreName(std::string_view name);

} // namespace snugwalk
