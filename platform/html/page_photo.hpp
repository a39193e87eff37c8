// SPDX-License-Identifier: Apache-2.0
// The copies of photos that a report carries.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "logbook/photo_store.hpp"
#include "walk/walk.hpp"

namespace snugwalk::html {

/// A copy that may leave: as `mime` says, shown upright by whoever heeds its orientation.
struct PagePhoto {
    std::string bytes;
    std::string mime = "image/jpeg";
};
/// Nothing when neither the photo nor its thumbnail is on this device.
using PagePhotos = std::function<std::optional<PagePhoto>(const Photo &)>;

/// Makes a smaller JPEG, as `PlainCodec::shrunk` and `QtCodec::shrunk` do.
using Shrink = std::function<Result<std::string>(std::string_view bytes, int orientation, int maxEdge,
                                                 std::size_t maxBytes)>;

enum class OwnData {
    LeftOut, ///< position, times, camera: see `bareCopy`
    Kept     ///< the original byte for byte, where it is on this device
};

inline constexpr int pagePhotoEdge = 1600; ///< pixels, the longest edge
inline constexpr std::size_t maxPagePhotoBytes = std::size_t{400} * 1024;

/// Originals at `pagePhotoEdge`, thumbnails where there is no original. Reads files and decodes: never on the
/// thread that draws.
[[nodiscard]] PagePhotos pagePhotos(PhotoStore store, Shrink shrink, OwnData ownData);

} // namespace snugwalk::html
