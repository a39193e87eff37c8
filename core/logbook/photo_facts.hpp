// SPDX-License-Identifier: Apache-2.0
// What a photo tells about itself before it is kept.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "base/geo.hpp"
#include "base/result.hpp"
#include "base/time.hpp"
#include "keys/hash.hpp"
#include "logbook/image_codec.hpp"

namespace snugwalk {

struct PhotoFacts {
    Hash hash;             ///< of the original's bytes
    std::int64_t size = 0; ///< bytes
    std::string mime;      ///< image/jpeg or image/png
    int width = 0;         ///< pixels as stored, before it is turned
    int height = 0;
    int orientation = 1; ///< Exif, 1 to 8
    /// Only when the photo tells its zone or the GPS time; see `ExifFacts`.
    std::optional<LocalTime> taken;
    std::string takenText; ///< what the camera's clock showed; empty if unknown
    std::optional<GeoPoint> place;
};

/// Looks at the header only. Bad Exif gives a photo without time or place, not a refusal.
/// \returns `Unsupported` for anything but JPEG and PNG, `OutOfRange` over 64 MiB, 64 million pixels or
/// 32,767 pixels a side, `InvalidInput` for what is empty, cut short or no picture.
[[nodiscard]] Result<PhotoFacts> readPhotoFacts(std::string_view bytes, const ImageCodec &codec);

} // namespace snugwalk
