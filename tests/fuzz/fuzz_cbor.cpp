// SPDX-License-Identifier: Apache-2.0
// Whatever is read as CBOR is written as the very same bytes, and never twice in different ways.
#include "base/value.hpp"
#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const std::string_view bytes = asText(data, size);
    const auto value = decodeCbor(bytes);
    if (value) {
        SNUG_ASSERT(encodeCbor(*value) == bytes);
        static_cast<void>(toJson(*value, true));
    } else {
        SNUG_ASSERT(value.error().code == Errc::Corrupt && value.error().where.starts_with("byte "));
    }
    return 0;
}
