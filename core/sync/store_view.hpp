// SPDX-License-Identifier: Apache-2.0
// A store with its lists read once, and with damage told from absence.
#pragma once

#include <functional>
#include <map>
#include <optional>

#include "sync/store.hpp"

namespace snugwalk {

/// Files are called `<what it is>[.<n>].<kind>`: a file found damaged under its name is published again with
/// the next n, since nothing is ever overwritten. Names are hints, every reader verifies.
class StoreView {
public:
    explicit StoreView(Store &store) : m_store(store) {}

    /// Files of `folder` by what they are; folders under their name without the slash.
    using Listing = std::map<std::string, std::vector<StoreFile>, std::less<>>;
    [[nodiscard]] Result<const Listing *> list(const std::string &folder);

    /// The first file of that name which `verifies`; nothing when there is none that does. `damaged` counts
    /// those that do not. \returns only what makes going on useless: `Io`, `Network`.
    [[nodiscard]] Result<std::optional<std::string>>
    read(const std::string &folder, std::string_view what, std::size_t limit,
         const std::function<bool(std::string_view)> &verifies);

    /// Whether a file of that name and size is listed.
    [[nodiscard]] Result<bool> has(const std::string &folder, std::string_view what, std::size_t size);

    /// Publishes under the first name that is free or holds the same bytes.
    [[nodiscard]] Status publish(const std::string &folder, const std::string &what, const std::string &kind,
                                 std::string_view bytes);

    std::int64_t damaged = 0;
    std::int64_t bytesRead = 0;
    std::int64_t bytesWritten = 0;

private:
    Store &m_store;
    std::map<std::string, Listing> m_lists;
};

} // namespace snugwalk
