// SPDX-License-Identifier: Apache-2.0
// Facts of a photo: shape first, then size, then Exif, then the hash.
#include "logbook/photo_facts.hpp"

#include "logbook/photo_exif.hpp"
#include "logbook/photo_parts.hpp"

namespace snugwalk {

Result<PhotoFacts> readPhotoFacts(std::string_view bytes, const ImageCodec &codec)
{
    if (bytes.size() > maxPhotoBytes)
        return Error{Errc::OutOfRange, "the photo is larger than 64 MiB", "", "use a smaller one"};
    const auto parts = readPhotoParts(bytes);
    if (!parts)
        return parts.error();
    const auto size = codec.probe(bytes);
    if (!size)
        return size.error();
    SNUG_TRY(checkPhotoSize(*size));

    PhotoFacts facts;
    facts.hash = blake2b(bytes);
    facts.size = static_cast<std::int64_t>(bytes.size());
    facts.mime = mimeType(parts->kind);
    facts.width = size->width;
    facts.height = size->height;
    ExifFacts exif = readExif(parts->exif);
    facts.orientation = exif.orientation;
    facts.taken = exif.taken;
    facts.takenText = std::move(exif.takenText);
    facts.place = exif.place;
    return facts;
}

} // namespace snugwalk
