// SPDX-License-Identifier: Apache-2.0
// Numbers for other programs to read.
#pragma once

#include <array>
#include <charconv>
#include <string>

namespace snugwalk {

/// The fewest digits that read back as the same number. The JSON library now and then writes one more:
/// 169.21386999999999 for 169.21387.
[[nodiscard]] inline std::string shortest(double number)
{
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number);
    return {digits.data(), end.ptr};
}

} // namespace snugwalk
