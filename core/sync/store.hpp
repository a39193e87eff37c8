// SPDX-License-Identifier: Apache-2.0
// A place for files that nobody changes once they are there: a folder, a stick, a WebDAV address, a bundle.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

struct StoreFile {
    std::string name; ///< relative to the listed folder, one level; folders end in '/'
    std::int64_t size = 0;
};

class Store {
public:
    Store() = default;
    Store(const Store &) = delete;
    Store &operator=(const Store &) = delete;
    virtual ~Store() = default;
    /// Files and folders directly under `folder` ("" is the root); folders end in '/'. A folder that is not
    /// there is empty. Names are hints.
    [[nodiscard]] virtual Result<std::vector<StoreFile>> list(std::string_view folder) = 0;
    /// `NotFound`; `OutOfRange` beyond `limit` bytes.
    [[nodiscard]] virtual Result<std::string> read(std::string_view name, std::int64_t limit) = 0;
    /// Atomic: whole under `name` or not at all (temporary name, verify, rename or move). Same bytes already
    /// there: done. Other bytes there: `Conflict`, never overwritten.
    [[nodiscard]] virtual Status publish(std::string_view name, std::string_view bytes) = 0;
};

/// Parts of [a-z0-9._-], 1 to 100 characters each, joined by '/', none "." or "..".
[[nodiscard]] bool nameIsFine(std::string_view name);

} // namespace snugwalk
