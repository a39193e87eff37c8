// SPDX-License-Identifier: Apache-2.0
// Choosing between the bare original, a smaller copy and the thumbnail.
#include "html/page_photo.hpp"

#include <algorithm>

#include "logbook/photo_copy.hpp"
#include "logbook/photo_parts.hpp"

namespace snugwalk::html {
namespace {

std::optional<PagePhoto> bare(const std::string &bytes, int orientation)
{
    const Result<PhotoParts> parts = readPhotoParts(bytes);
    Result<std::string> copy = bareCopy(bytes, orientation);
    if (!parts || !copy)
        return std::nullopt;
    return PagePhoto{std::move(copy).value(), mimeType(parts->kind)};
}

std::optional<PagePhoto> ofOriginal(const Photo &photo, const std::string &original, const Shrink &shrink,
                                    OwnData ownData)
{
    if (ownData == OwnData::Kept)
        return PagePhoto{original, photo.mime};
    const bool fits =
        original.size() <= maxPagePhotoBytes && std::max(photo.width, photo.height) <= pagePhotoEdge;
    if (fits)
        return bare(original, photo.orientation);
    const Result<std::string> small = shrink(original, photo.orientation, pagePhotoEdge, maxPagePhotoBytes);
    return small ? std::optional(PagePhoto{*small, "image/jpeg"}) : std::nullopt;
}

} // namespace

PagePhotos pagePhotos(PhotoStore store, Shrink shrink, OwnData ownData)
{
    return [store = std::move(store), shrink = std::move(shrink),
            ownData](const Photo &photo) -> std::optional<PagePhoto> {
        const auto hash = Hash::parse(photo.hash);
        if (!hash)
            return std::nullopt;
        if (const Result<std::string> original = store.original(*hash)) {
            if (auto copy = ofOriginal(photo, *original, shrink, ownData))
                return copy;
        }
        // others may have made it, with anything in it; thumbnails lie upright
        const Result<std::string> thumb = store.thumbnail(*hash);
        return thumb ? bare(*thumb, 1) : std::nullopt;
    };
}

} // namespace snugwalk::html
