// SPDX-License-Identifier: Apache-2.0
// Any bytes as a server's list of files: an error with advice, or names that a store may have.
#include "fuzz.hpp"
#include "sync/webdav_listing.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const auto files = parseListing(asText(data, size), "/d");
    if (!files) {
        SNUG_ASSERT(files.error().code == Errc::Network && !files.error().act.empty());
        return 0;
    }
    SNUG_ASSERT(files->size() <= maxListingItems);
    for (const StoreFile &file : *files) {
        std::string_view name = file.name;
        if (name.ends_with('/'))
            name.remove_suffix(1);
        SNUG_ASSERT(nameIsFine(name) && name.find('/') == std::string_view::npos && file.size >= 0);
    }
    return 0;
}
