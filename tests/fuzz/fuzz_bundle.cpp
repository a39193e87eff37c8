// SPDX-License-Identifier: Apache-2.0
// Any bytes as a bundle: refused, or exactly what writing its files again gives.
#include "fuzz.hpp"
#include "sync/bundle_format.hpp"
#include "sync/store.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const std::string_view bytes = asText(data, size);
    const auto files = readBundle(bytes);
    if (files) {
        SNUG_ASSERT(bundleBytes(*files) == bytes);
        for (const auto &[name, content] : *files)
            SNUG_ASSERT(nameIsFine(name));
    } else {
        SNUG_ASSERT(files.error().code == Errc::Corrupt || files.error().code == Errc::OutOfRange);
        SNUG_ASSERT(!files.error().act.empty());
    }
    // The lines of the index alone, which a checksum would else keep a fuzzer from.
    const std::string text(bytes);
    const std::string end = bundleEnd({});
    std::string trailer(blake2b(text).view());
    for (int shift = 56; shift >= 0; shift -= 8)
        trailer += static_cast<char>(static_cast<std::uint64_t>(text.size()) >> shift & 0xFF);
    trailer += bundleTail;
    const auto index =
        parseBundleIndex(bundleHead, text, trailer,
                         static_cast<std::int64_t>(bundleHead.size() + text.size() + trailer.size()));
    if (index)
        SNUG_ASSERT(bundleEnd(*index) == text + trailer);
    return 0;
}
