// SPDX-License-Identifier: Apache-2.0
// The one function of each fuzz program; a law that does not hold ends the process.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "base/contract.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);

inline std::string_view asText(const std::uint8_t *data, std::size_t size)
{
    return size == 0 ? std::string_view() : std::string_view(reinterpret_cast<const char *>(data), size);
}
