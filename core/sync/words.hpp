// SPDX-License-Identifier: Apache-2.0
// Bytes as words that can be printed, read aloud and typed: 32 bytes are 24 words.
#pragma once

#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

/// Every word stands for 11 bits and proves itself by 5 more, which depend on its place: a wrong letter or
/// two words that changed places are found, and told, at the word. One more byte covers the whole. Words are
/// consonant, vowel, consonant, vowel, consonant, after the proquints of [WILKERSON-2009]. \param bytes at
/// most 1,024
[[nodiscard]] std::string wordsFrom(std::string_view bytes);

/// Upper or lower case, any spaces or hyphens between. \returns `InvalidInput` with the number of the word.
[[nodiscard]] Result<std::string> bytesFromWords(std::string_view words);

} // namespace snugwalk
