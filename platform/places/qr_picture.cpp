// SPDX-License-Identifier: Apache-2.0
// Grey is enough, and a large photo is made smaller: a code that fills a tenth of it is still read.
#include "places/qr_picture.hpp"

#include "places/qr_read.hpp"

namespace snugwalk {

std::optional<std::string> qrBytes(const QImage &picture)
{
    constexpr int longest = 2000; // pixels
    if (picture.isNull())
        return std::nullopt;
    const bool isLarge = picture.width() > longest || picture.height() > longest;
    const QImage grey =
        (isLarge ? picture.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation) : picture)
            .convertToFormat(QImage::Format_Grayscale8);
    return qrRead({grey.constBits(), grey.width(), grey.height(), static_cast<int>(grey.bytesPerLine())});
}

} // namespace snugwalk
