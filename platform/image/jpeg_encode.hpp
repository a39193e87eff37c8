// SPDX-License-Identifier: Apache-2.0
// Writing JPEG by libjpeg-turbo.
#pragma once

#include <string>

#include "base/result.hpp"
#include "image/box_scaler.hpp"

namespace snugwalk {

/// Baseline JPEG without any metadata, `thumbnailQuality` or as much less as `maxThumbnailBytes` asks.
[[nodiscard]] Result<std::string> encodeThumbnail(const Pixels &pixels);

} // namespace snugwalk
