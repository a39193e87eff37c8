// SPDX-License-Identifier: Apache-2.0
// Numbers in photo files: JPEG and PNG both put the high byte first.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace snugwalk {

[[nodiscard]] inline std::uint8_t byteAt(std::string_view bytes, std::size_t at)
{
    return static_cast<std::uint8_t>(bytes[at]);
}

/// The number that all of `bytes` write, high byte first. \param bytes eight at most
[[nodiscard]] inline std::size_t bigEndian(std::string_view bytes)
{
    std::size_t value = 0;
    for (std::size_t i = 0; i < bytes.size(); ++i)
        value = value << 8 | byteAt(bytes, i);
    return value;
}

/// The same back: `value` in that many bytes.
[[nodiscard]] inline std::string bigEndian(std::uint32_t value, int bytes)
{
    std::string out;
    for (int i = bytes - 1; i >= 0; --i)
        out += static_cast<char>(value >> (8 * i) & 0xffU);
    return out;
}

} // namespace snugwalk
