// SPDX-License-Identifier: Apache-2.0
// Any bytes as a photo: copy it bare, read its facts, and decode it when it says that it is small.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "base/contract.hpp"
#include "image/plain_codec.hpp"
#include "logbook/photo_copy.hpp"
#include "logbook/photo_facts.hpp"
#include "logbook/photo_parts.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const std::string_view bytes(reinterpret_cast<const char *>(data), size);
    if (const auto bare =
            bareCopy(bytes, 1)) { // what leaves is whole, says nothing, and has nothing left to lose
        const auto parts = readPhotoParts(*bare);
        SNUG_ASSERT(parts.has_value());
        SNUG_ASSERT(parts->exif.empty());
        SNUG_ASSERT(bareCopy(*bare, 1).value() == *bare);
    }
    const PlainCodec codec;
    const auto facts = readPhotoFacts(bytes, codec);
    if (!facts)
        return 0;
    SNUG_ASSERT(facts->orientation >= 1 && facts->orientation <= 8);
    SNUG_ASSERT(!facts->place || isValid(*facts->place));
    SNUG_ASSERT(checkPhotoSize({facts->width, facts->height}).has_value());
    // larger ones only cost time here; the limits have tests of their own
    if (std::int64_t{facts->width} * facts->height > 1'000'000)
        return 0;
    const auto thumb = codec.thumbnail(bytes, facts->orientation, 64);
    if (!thumb)
        return 0;
    const auto small = codec.probe(*thumb);
    SNUG_ASSERT(small.has_value() && small->width <= 64 && small->height <= 64);
    return 0;
}
