// SPDX-License-Identifier: Apache-2.0
// Lists, and names that step aside for damage.
#include "sync/store_view.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

constexpr int maxNames = 9;

bool isUseless(const Error &error) { return error.code == Errc::Io || error.code == Errc::Network; }

} // namespace

Result<const StoreView::Listing *> StoreView::list(const std::string &folder)
{
    if (const auto known = m_lists.find(folder); known != m_lists.end())
        return &known->second;
    auto files = m_store.list(folder);
    if (!files)
        return files.error();
    Listing listing;
    for (StoreFile &file : *files) {
        const bool isFolder = file.name.ends_with('/');
        const std::string name = isFolder ? file.name.substr(0, file.name.size() - 1) : file.name;
        if (nameIsFine(name))
            listing[isFolder ? name : name.substr(0, name.find('.'))].push_back(std::move(file));
    }
    return &(m_lists[folder] = std::move(listing));
}

Result<std::optional<std::string>> StoreView::read(const std::string &folder, std::string_view what,
                                                   std::size_t limit,
                                                   const std::function<bool(std::string_view)> &verifies)
{
    const auto listing = list(folder);
    if (!listing)
        return listing.error();
    const auto found = (*listing)->find(what);
    if (found == (*listing)->end())
        return std::optional<std::string>();
    for (const StoreFile &file : found->second) {
        Result<std::string> bytes = m_store.read(folder + "/" + file.name, static_cast<std::int64_t>(limit));
        if (!bytes && isUseless(bytes.error()))
            return bytes.error();
        if (bytes) {
            bytesRead += static_cast<std::int64_t>(bytes->size());
            if (verifies(*bytes))
                return std::optional<std::string>(std::move(bytes).value());
        }
        damaged += bytes || bytes.error().code != Errc::NotFound ? 1 : 0;
    }
    return std::optional<std::string>();
}

Result<bool> StoreView::has(const std::string &folder, std::string_view what, std::size_t size)
{
    const auto listing = list(folder);
    if (!listing)
        return listing.error();
    const auto found = (*listing)->find(what);
    return found != (*listing)->end() &&
           std::any_of(found->second.begin(), found->second.end(),
                       [&](const StoreFile &file) { return file.size == static_cast<std::int64_t>(size); });
}

Status StoreView::publish(const std::string &folder, const std::string &what, const std::string &kind,
                          std::string_view bytes)
{
    Status status = done();
    for (int n = 1; n <= maxNames; ++n) {
        const std::string name = what + (n == 1 ? "" : "." + std::to_string(n)) + "." + kind;
        status = m_store.publish(folder + "/" + name, bytes);
        if (status) {
            bytesWritten += static_cast<std::int64_t>(bytes.size());
            if (const auto known = m_lists.find(folder); known != m_lists.end())
                known->second[what].push_back({name, static_cast<std::int64_t>(bytes.size())});
            return status;
        }
        if (status.error().code != Errc::Conflict)
            return status;
    }
    return status;
}

} // namespace snugwalk
