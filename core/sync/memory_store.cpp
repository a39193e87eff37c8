// SPDX-License-Identifier: Apache-2.0
// A sorted map plays the folder.
#include "sync/memory_store.hpp"

namespace snugwalk {

Result<std::vector<StoreFile>> MemoryStore::list(std::string_view folder)
{
    std::vector<StoreFile> found;
    std::string start(folder);
    if (!start.empty()) {
        SNUG_TRY(checkStoreName(folder));
        start += '/';
    }
    for (auto at = files.lower_bound(start); at != files.end() && at->first.starts_with(start); ++at) {
        const std::string_view rest = std::string_view(at->first).substr(start.size());
        const std::size_t slash = rest.find('/');
        if (slash == std::string_view::npos)
            found.push_back({std::string(rest), static_cast<std::int64_t>(at->second.size())});
        else if (const auto name = rest.substr(0, slash + 1); found.empty() || found.back().name != name)
            found.push_back({std::string(name), 0});
    }
    return found;
}

Result<std::string> MemoryStore::read(std::string_view name, std::int64_t limit)
{
    SNUG_TRY(checkStoreName(name));
    const auto found = files.find(name);
    if (found == files.end())
        return Error{Errc::NotFound, "no such file in the store", std::string(name), "exchange again later"};
    if (static_cast<std::int64_t>(found->second.size()) > limit)
        return Error{Errc::OutOfRange, "a file of the store is larger than it may be", std::string(name), ""};
    return found->second;
}

Status MemoryStore::publish(std::string_view name, std::string_view bytes)
{
    SNUG_TRY(checkStoreName(name));
    const auto [at, isNew] = files.emplace(name, bytes);
    if (isNew || at->second == bytes)
        return done();
    return Error{Errc::Conflict, "another file of this name is in the store", std::string(name),
                 "look at the store; nothing was overwritten"};
}

} // namespace snugwalk
