// SPDX-License-Identifier: Apache-2.0
// Whatever is read as JSON means the same after being written and read again.
#include "base/value.hpp"
#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const auto value = parseJson(asText(data, size));
    if (!value) {
        SNUG_ASSERT(value.error().code == Errc::InvalidInput);
        return 0;
    }
    for (const bool indented : {false, true}) {
        const auto again = parseJson(toJson(*value, indented));
        SNUG_ASSERT(again && *again == *value);
    }
    return 0;
}
