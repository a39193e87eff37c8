// SPDX-License-Identifier: Apache-2.0
// Reading JPEG by libjpeg-turbo.
#pragma once

#include <string_view>

#include "base/result.hpp"
#include "image/box_scaler.hpp"

namespace snugwalk {

/// From the header alone.
[[nodiscard]] Result<ImageSize> probeJpeg(std::string_view bytes);
/// Decodes every block and shrinks to `fitted(size, maxEdge)`; `InvalidInput` at the first sign of damage.
[[nodiscard]] Result<Pixels> shrinkJpeg(std::string_view bytes, int maxEdge);

} // namespace snugwalk
