// SPDX-License-Identifier: Apache-2.0
// Bytes as a QR code, [ISO18004] by libqrencode, drawn for a terminal, a page or a picture.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

struct QrCode {
    int size = 0;                    ///< modules a side, without the quiet zone
    std::vector<unsigned char> dark; ///< row by row
    /// False outside, so that the quiet zone needs no case of its own.
    [[nodiscard]] bool isDark(int x, int y) const
    {
        return x >= 0 && y >= 0 && x < size && y < size &&
               dark[static_cast<std::size_t>(y) * static_cast<std::size_t>(size) +
                    static_cast<std::size_t>(x)] != 0;
    }
};

/// Eight-bit mode, error correction M. `OutOfRange` for nothing or more than 1,024 bytes.
[[nodiscard]] Result<QrCode> qrFrom(std::string_view bytes);

/// Two modules a character with half blocks, quiet zone of 4. With `coloured`, white on black by the
/// terminal's colours, whatever theirs are; without, as if the terminal wrote light on dark.
[[nodiscard]] std::string qrText(const QrCode &code, bool coloured);
[[nodiscard]] std::string qrSvg(const QrCode &code);
/// \param scale pixels a module
[[nodiscard]] Result<std::string> qrPng(const QrCode &code, int scale);

/// By the file's ending, .png or .svg; the file must not exist. `InvalidInput` for another.
[[nodiscard]] Status writeQr(const QrCode &code, const std::string &file);

} // namespace snugwalk
