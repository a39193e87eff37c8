// SPDX-License-Identifier: Apache-2.0
// A QR code as rows that a page draws.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace snugwalk {

/// A row a text, a character a module, 1 is dark, without the quiet zone; empty for what does not go into
/// one.
[[nodiscard]] std::vector<std::string> qrRows(std::string_view bytes);

} // namespace snugwalk
