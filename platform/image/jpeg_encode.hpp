// SPDX-License-Identifier: Apache-2.0
// Writing JPEG by libjpeg-turbo.
#pragma once

#include <cstddef>
#include <string>

#include "base/result.hpp"
#include "image/box_scaler.hpp"

namespace snugwalk {

/// Baseline JPEG without any metadata, `thumbnailQuality` or as much less as `maxBytes` asks.
[[nodiscard]] Result<std::string> encodeJpeg(const Pixels &pixels, std::size_t maxBytes);

} // namespace snugwalk
