// SPDX-License-Identifier: Apache-2.0
// Any bytes as a line of an export or as its manifest: refused, or written again as they mean.
#include "exchange/entry_line.hpp"
#include "exchange/manifest.hpp"
#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const std::string_view text = asText(data, size);
    const auto line = entryFromLine(text);
    if (line) {
        const auto again = lineOf(line->entry.bytes, line->entry.hash, line->previous);
        SNUG_ASSERT(again);
        const auto twice = entryFromLine(*again);
        SNUG_ASSERT(twice && twice->entry.bytes == line->entry.bytes);
    }
    const auto manifest = readManifest(text);
    if (manifest) {
        const std::string again = manifestText(*manifest);
        SNUG_ASSERT(manifestText(readManifest(again).value()) == again);
    }
    return 0;
}
