// SPDX-License-Identifier: Apache-2.0
// Reading PNG by libpng.
#pragma once

#include <string_view>

#include "base/result.hpp"
#include "image/box_scaler.hpp"

namespace snugwalk {

/// From the header alone.
[[nodiscard]] Result<ImageSize> probePng(std::string_view bytes);
/// Decodes every row, on white where it is transparent, and shrinks to `fitted(size, maxEdge)`.
[[nodiscard]] Result<Pixels> shrinkPng(std::string_view bytes, int maxEdge);

} // namespace snugwalk
