// SPDX-License-Identifier: Apache-2.0
// Text broken into lines and laid in columns, counted in characters.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/document.hpp"

namespace snugwalk::papers {

/// Characters of UTF-8 text, not bytes.
[[nodiscard]] std::size_t charactersIn(std::string_view text);
/// Broken at blanks, and within a word that is longer than a line; a no-break space never breaks. At least
/// one line. `width` above 0.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);
/// Columns as narrow as their words allow, cells wrapped where they do not fit beside each other; a line
/// under the head.
[[nodiscard]] std::string tableLines(const TableBlock &table, std::size_t columns);

} // namespace snugwalk::papers
