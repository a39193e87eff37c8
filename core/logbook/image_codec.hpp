// SPDX-License-Identifier: Apache-2.0
// What the core asks of whoever can decode pictures; the core itself never touches pixels.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

struct ImageSize {
    int width = 0;  ///< pixels
    int height = 0; ///< pixels
    friend bool operator==(ImageSize, ImageSize) = default;
};

// Limits of a photo, looked at in its header before anything is decoded.
inline constexpr std::size_t maxPhotoBytes = std::size_t{64} * 1024 * 1024;
inline constexpr std::int64_t maxPhotoPixels = 64'000'000;
inline constexpr int maxPhotoSide = 32'767;

inline constexpr int thumbnailEdge = 480; ///< pixels, the longest edge
inline constexpr int thumbnailQuality = 82;
/// A thumbnail travels with the entries; when quality 82 needs more bytes, quality goes down.
inline constexpr std::size_t maxThumbnailBytes = std::size_t{32} * 1024;

/// Decodes JPEG and PNG. Both makers (command line and app) live in `platform/image`.
class ImageCodec {
public:
    ImageCodec() = default;
    ImageCodec(const ImageCodec &) = delete;
    ImageCodec &operator=(const ImageCodec &) = delete;
    virtual ~ImageCodec() = default;

    /// Width and height as stored, from the header alone; `InvalidInput` when there is no such header.
    [[nodiscard]] virtual Result<ImageSize> probe(std::string_view bytes) const = 0;

    /// Decodes everything, and makes a JPEG whose longest edge is at most `maxEdge` pixels, turned upright.
    /// \param orientation as Exif has it, 1 to 8.
    /// \returns `InvalidInput` when the picture is damaged or cut short, `OutOfRange` over the limits.
    [[nodiscard]] virtual Result<std::string> thumbnail(std::string_view bytes, int orientation,
                                                        int maxEdge) const = 0;
};

/// `InvalidInput` for a side of zero, `OutOfRange` over the limits above.
[[nodiscard]] inline Status checkPhotoSize(ImageSize size)
{
    if (size.width < 1 || size.height < 1)
        return Error{Errc::InvalidInput, "the photo has no pixels", "", "take the photo again"};
    const std::int64_t pixels = std::int64_t{size.width} * size.height;
    if (size.width > maxPhotoSide || size.height > maxPhotoSide || pixels > maxPhotoPixels)
        return Error{Errc::OutOfRange, "the photo is larger than 64 million pixels or 32,767 a side",
                     std::to_string(size.width) + " x " + std::to_string(size.height), "use a smaller one"};
    return done();
}

/// The size with its longest edge at `maxEdge`, never larger than `size` and never below one pixel.
[[nodiscard]] inline ImageSize fitted(ImageSize size, int maxEdge)
{
    const std::int64_t longest = std::max(size.width, size.height);
    if (longest <= maxEdge)
        return size;
    const auto side = [&](int s) {
        return static_cast<int>(
            std::max<std::int64_t>(1, (2 * std::int64_t{s} * maxEdge + longest) / (2 * longest)));
    };
    return {side(size.width), side(size.height)};
}

/// Orientations 5 to 8 lie on their side.
[[nodiscard]] constexpr ImageSize upright(ImageSize size, int orientation)
{
    return orientation >= 5 ? ImageSize{size.height, size.width} : size;
}

} // namespace snugwalk
