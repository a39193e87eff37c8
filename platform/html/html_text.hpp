// SPDX-License-Identifier: Apache-2.0
// Text that is put into HTML or SVG.
#pragma once

#include <string>
#include <string_view>

namespace snugwalk::html {

/// & < > " ' as entities; everything else as it is.
[[nodiscard]] std::string escape(std::string_view text);
/// <tag>escaped text</tag>
[[nodiscard]] std::string element(std::string_view tag, std::string_view text);
/// RFC 4648 with padding.
[[nodiscard]] std::string base64(std::string_view bytes);

} // namespace snugwalk::html
