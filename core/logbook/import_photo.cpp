// SPDX-License-Identifier: Apache-2.0
// Photo folder before entry: an entry never names bytes that are not on the disk.
#include "logbook/import_photo.hpp"

#include "logbook/files.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
Result<Photo> importPhoto(Logbook &book, std::string_view bytes, const ImageCodec &codec, const PhotoOf &of,
                          const Doer &doer)
{
    if (!of.finding.isNull()) {
        const Result<Finding> finding = findingOf(book, of.finding);
        if (!finding)
            return finding.error();
    }
    const Result<PhotoFacts> facts = PhotoStore(book.photoFolder()).add(bytes, codec);
    if (!facts)
        return facts.error();
    Photo photo;
    photo.id = book.newId();
    photo.rig = of.rig;
    photo.finding = of.finding;
    photo.look = of.look;
    photo.hash = facts->hash.text();
    photo.mime = facts->mime;
    photo.width = facts->width;
    photo.height = facts->height;
    photo.orientation = facts->orientation;
    photo.taken = facts->taken;
    photo.takenText = facts->takenText;
    photo.where = facts->place ? facts->place : doer.where;
    photo.added = doer.at.value_or(book.now());
    photo.caption = of.caption;
    const Result<Id> entered = addPhoto(book, photo, doer);
    if (!entered)
        return entered.error();
    return photo;
}

Result<Photo> importPhotoFile(Logbook &book, const std::string &file, const ImageCodec &codec,
                              const PhotoOf &of, const Doer &doer)
{
    const Result<std::string> bytes = readFile(file, maxPhotoBytes);
    if (!bytes)
        return bytes.error();
    Result<Photo> photo = importPhoto(book, *bytes, codec, of, doer);
    if (photo)
        return photo;
    Error error = photo.error();
    if (error.where.find(file) == std::string::npos)
        error.where = error.where.empty() ? file : file + ", " + error.where;
    return error;
}

Result<Id> latestLook(Logbook &book, const Id &finding)
{
    const auto looks = thingsOfParent(book.db(), "look", finding);
    if (!looks)
        return looks.error();
    if (looks->empty())
        return Error{Errc::NotFound, "nobody has looked at this finding", finding.shortText(), ""};
    return looks->back().id;
}

} // namespace snugwalk
