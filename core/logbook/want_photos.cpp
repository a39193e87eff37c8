// SPDX-License-Identifier: Apache-2.0
// A photo whose hash cannot be read is no photo to ask for.
#include "logbook/want_photos.hpp"

#include "logbook/photo_store.hpp"
#include "logbook/receive.hpp"

namespace snugwalk {

Result<WantedCount> wantPhotos(Logbook &book, const std::vector<Photo> &photos)
{
    const PhotoStore folder(book.photoFolder());
    WantedCount count;
    for (const Photo &photo : photos) {
        const auto hash = Hash::parse(photo.hash);
        if (!hash)
            continue;
        if (folder.exists(*hash)) {
            ++count.here;
            continue;
        }
        SNUG_TRY(wantPhoto(book, *hash));
        ++count.wanted;
    }
    return count;
}

} // namespace snugwalk
