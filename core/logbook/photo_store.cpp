// SPDX-License-Identifier: Apache-2.0
// Keeping photos: decode, write the original, write the thumbnail, and undo when the disk says no.
#include "logbook/photo_store.hpp"

#include <algorithm>
#include <array>
#include <system_error>

#include "logbook/files.hpp"
#include "logbook/photo_parts.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view thumbEnding = ".thumb.jpg";

std::string_view endingOf(const PhotoFacts &facts)
{
    return fileExtension(facts.mime == mimeType(PhotoKind::Png) ? PhotoKind::Png : PhotoKind::Jpeg);
}

bool isThere(const fs::path &path)
{
    std::error_code ec;
    return fs::exists(path, ec);
}

// A thumbnail whose original is gone, or a part file.
bool isStray(const fs::path &path)
{
    const std::string name = path.filename().string();
    if (name.find(partMark) != std::string::npos)
        return true;
    if (!name.ends_with(thumbEnding))
        return false;
    const std::string stem = name.substr(0, name.size() - thumbEnding.size());
    return !isThere(path.parent_path() / (stem + ".jpg")) && !isThere(path.parent_path() / (stem + ".png"));
}

void removeQuietly(const fs::path &path)
{
    std::error_code ec; // a cleanup after a failure that is reported already
    fs::remove(path, ec);
}

} // namespace

fs::path PhotoStore::pathOf(const Hash &hash, std::string_view ending) const
{
    const std::string name = hash.text();
    return m_folder / name.substr(0, 2) / (name + std::string(ending));
}

Status PhotoStore::keep(const PhotoFacts &facts, std::string_view bytes, std::string_view thumb)
{
    const fs::path original = pathOf(facts.hash, endingOf(facts));
    const bool wasThere = isThere(original);
    SNUG_TRY(makeFolder(original.parent_path()));
    Status status = verify(facts.hash) ? done() : replaceFile(original, bytes);
    if (status)
        status = replaceFile(pathOf(facts.hash, thumbEnding), thumb);
    if (!status && !wasThere) {
        removeQuietly(original);
        removeQuietly(original.parent_path()); // only goes when it is empty
    }
    return status;
}

Result<PhotoFacts> PhotoStore::add(std::string_view bytes, const ImageCodec &codec)
{
    auto facts = readPhotoFacts(bytes, codec);
    if (!facts)
        return facts;
    const auto thumb = codec.thumbnail(bytes, facts->orientation, thumbnailEdge);
    if (!thumb)
        return thumb.error();
    SNUG_TRY(keep(*facts, bytes, *thumb));
    return facts;
}

Result<std::string> PhotoStore::original(const Hash &hash) const
{
    auto bytes = readFile(pathOf(hash, fileExtension(PhotoKind::Jpeg)), maxPhotoBytes);
    if (bytes || bytes.error().code != Errc::NotFound)
        return bytes;
    bytes = readFile(pathOf(hash, fileExtension(PhotoKind::Png)), maxPhotoBytes);
    if (!bytes && bytes.error().code == Errc::NotFound)
        return Error{Errc::NotFound, "the photo is not on this device", pathOf(hash, "").string(),
                     "fetch it from the device that took it"};
    return bytes;
}

Result<std::string> PhotoStore::thumbnail(const Hash &hash) const
{
    return readFile(pathOf(hash, thumbEnding), maxPhotoBytes);
}

Status PhotoStore::keepOriginal(const Hash &hash, std::string_view bytes)
{
    if (bytes.size() > maxPhotoBytes || blake2b(bytes) != hash)
        return Error{Errc::Corrupt, "these bytes are not that photo", hash.text(), "fetch it again"};
    const auto parts = readPhotoParts(bytes);
    if (!parts)
        return parts.error();
    const fs::path path = pathOf(hash, fileExtension(parts->kind));
    SNUG_TRY(makeFolder(path.parent_path()));
    return replaceFile(path, bytes);
}

Status PhotoStore::keepThumbnail(const Hash &hash, std::string_view bytes)
{
    const auto parts = readPhotoParts(bytes);
    if (bytes.size() > maxThumbnailBytes || !parts || parts->kind != PhotoKind::Jpeg)
        return Error{Errc::Corrupt, "these bytes are no thumbnail", hash.text(), "fetch it again"};
    const fs::path path = pathOf(hash, thumbEnding);
    SNUG_TRY(makeFolder(path.parent_path()));
    return replaceFile(path, bytes);
}

bool PhotoStore::hasThumbnail(const Hash &hash) const { return isThere(pathOf(hash, thumbEnding)); }

Status PhotoStore::exists(const Hash &hash) const
{
    std::error_code fault;
    for (const std::string_view ending : {".jpg", ".png"}) {
        if (std::filesystem::is_regular_file(pathOf(hash, ending), fault))
            return done();
    }
    return Error{Errc::NotFound, "the photo's file is gone", pathOf(hash, "").string(),
                 "fetch it from a backup or another device"};
}

Status PhotoStore::verify(const Hash &hash) const
{
    const auto bytes = original(hash);
    const bool isTooLong = !bytes && bytes.error().code == Errc::OutOfRange;
    if (!bytes && !isTooLong)
        return bytes.error();
    if (isTooLong || blake2b(*bytes) != hash)
        return Error{Errc::Corrupt, "the stored photo is not the one that was kept",
                     pathOf(hash, "").string(), "add it again, or fetch it from another device"};
    return done();
}

std::vector<fs::path> PhotoStore::strays() const
{
    std::vector<fs::path> found;
    std::error_code ec; // a folder that cannot be read has nothing to show
    fs::recursive_directory_iterator at(m_folder, fs::directory_options::skip_permission_denied, ec);
    for (; !ec && at != fs::recursive_directory_iterator(); at.increment(ec)) {
        std::error_code unknown;
        if (at->is_regular_file(unknown) && isStray(at->path()))
            found.push_back(at->path());
    }
    std::sort(found.begin(), found.end());
    return found;
}

} // namespace snugwalk
