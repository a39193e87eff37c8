// SPDX-License-Identifier: Apache-2.0
// The bytes of a QR code found in a picture, [ISO18004] by zxing-cpp.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace snugwalk {

/// Eight bits a pixel, row after row.
struct GreyPicture {
    const std::uint8_t *pixels = nullptr;
    int width = 0;
    int height = 0;
    int rowBytes = 0; ///< from one row to the next, at least `width`
};

/// What the first code of the picture says, turned and dark on light or light on dark; nothing without one,
/// or when it does not check.
[[nodiscard]] std::optional<std::string> qrRead(const GreyPicture &picture);

} // namespace snugwalk
