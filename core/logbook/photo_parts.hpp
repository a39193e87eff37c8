// SPDX-License-Identifier: Apache-2.0
// The outer shape of a photo file: which kind, whether it is whole, and where its Exif block lies.
#pragma once

#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

enum class PhotoKind { Jpeg, Png };

struct PhotoParts {
    PhotoKind kind = PhotoKind::Jpeg;
    /// The TIFF block of the Exif, without "Exif\0\0"; empty when there is none. A view into the bytes.
    std::string_view exif;
};

/// Walks the segments or chunks to the end mark and decodes nothing.
/// Source: ITU-T T.81 annex B (JPEG markers); W3C PNG, third edition, section 5 (chunks, eXIf).
/// \returns `Unsupported` when it is neither JPEG nor PNG, `InvalidInput` when it is empty, cut short or
/// without a picture.
[[nodiscard]] Result<PhotoParts> readPhotoParts(std::string_view bytes);

[[nodiscard]] const char *mimeType(PhotoKind kind);      ///< image/jpeg or image/png
[[nodiscard]] const char *fileExtension(PhotoKind kind); ///< .jpg or .png

} // namespace snugwalk
