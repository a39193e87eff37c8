// SPDX-License-Identifier: Apache-2.0
// A library reads; nothing of a picture is trusted but the bytes, which the reader of offers checks.
#include "places/qr_read.hpp"

#include <exception>

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

namespace snugwalk {

std::optional<std::string> qrRead(const GreyPicture &picture)
{
    constexpr int smallest = 21; // modules of a code's side
    if (picture.pixels == nullptr || picture.width < smallest || picture.height < smallest)
        return std::nullopt;
    try {
        const ZXing::ImageView view(picture.pixels, picture.width, picture.height, ZXing::ImageFormat::Lum,
                                    picture.rowBytes);
        const ZXing::Result found =
            ZXing::ReadBarcode(view, ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::QRCode));
        if (!found.isValid())
            return std::nullopt;
        const ZXing::ByteArray &bytes = found.bytes();
        return std::string(bytes.begin(), bytes.end());
    } catch (const std::exception &) { // the library's own; a picture without a code is no fault of ours
        return std::nullopt;
    }
}

} // namespace snugwalk
