// SPDX-License-Identifier: Apache-2.0
// Sealing photos. Nonce and cipher stand one after the other.
#include "sync/blob.hpp"

#include "base/text.hpp"
#include "base/value.hpp"
#include "logbook/image_codec.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t nonceBytes = 24;

// A key for each photo, so that the same picture in two rigs shows nothing.
Secret photoKey(const Secret &epoch, const Hash &photo)
{
    return Secret::fromBytes(keyedHash(epoch, "snugwalk photo", photo.view())).value();
}

// The nonce depends on key, place and plain bytes: it comes again only with the very same message.
std::string sealedAs(const Secret &key, const std::string &place, std::string_view plain)
{
    const std::string nonce =
        keyedHash(key, "snugwalk photo nonce", place + std::string(blake2b(plain).view()))
            .substr(0, nonceBytes);
    return nonce + seal(key, nonce, plain, place);
}

Result<std::string> openedAs(const Secret &key, const std::string &place, std::string_view bytes)
{
    if (bytes.size() < nonceBytes)
        return Error{Errc::Corrupt, "a piece of a photo cut short", "", "fetch it again"};
    return unseal(key, bytes.substr(0, nonceBytes), bytes.substr(nonceBytes), place);
}

std::string chunkPlace(std::size_t index) { return "snugwalk chunk " + std::to_string(index); }

constexpr const char *manifestPlace = "snugwalk manifest 1";

} // namespace

std::string manifestName(const Secret &epoch, const Hash &photo)
{
    return toHex(keyedHash(epoch, "snugwalk manifest name", photo.view()));
}

SealedPhoto sealPhoto(const Secret &epoch, const Hash &photo, std::string_view original,
                      std::string_view thumbnail)
{
    const Secret key = photoKey(epoch, photo);
    SealedPhoto sealed;
    Value::List hashes;
    for (std::size_t at = 0; at < original.size(); at += chunkBytes) {
        sealed.chunks.push_back(
            sealedAs(key, chunkPlace(sealed.chunks.size()), original.substr(at, chunkBytes)));
        hashes.emplace_back(Bytes{std::string(blake2b(sealed.chunks.back()).view())});
    }
    sealed.manifest = sealedAs(key, manifestPlace,
                               encodeCbor(Value::Map{{"v", 1},
                                                     {"photo", Bytes{std::string(photo.view())}},
                                                     {"size", original.size()},
                                                     {"chunks", hashes},
                                                     {"thumb", Bytes{std::string(thumbnail)}}}));
    return sealed;
}

Result<PhotoManifest> openManifest(const Secret &epoch, const Hash &photo, std::string_view bytes)
{
    const Error broken{Errc::Corrupt, "a photo's manifest that cannot be read", photo.text(),
                       "fetch it again"};
    if (bytes.size() > maxManifest)
        return broken;
    const auto plain = openedAs(photoKey(epoch, photo), manifestPlace, bytes);
    const Result<Value> v = plain ? decodeCbor(*plain) : Result<Value>(broken);
    if (!v || (*v)["v"].asInt() != 1)
        return broken;
    PhotoManifest manifest{photo, (*v)["size"].asInt().value_or(0), {}, (*v)["thumb"].asBytes().value_or("")};
    for (const Value &item : (*v)["chunks"].list()) {
        const auto hash = Hash::fromBytes(item.asBytes().value_or(""));
        if (!hash)
            return broken;
        manifest.chunks.push_back(*hash);
    }
    const auto size = static_cast<std::size_t>(std::max<std::int64_t>(manifest.size, 0));
    if ((*v)["photo"].asBytes() != std::string(photo.view()) || size == 0 || size > maxPhotoBytes ||
        manifest.chunks.size() != (size + chunkBytes - 1) / chunkBytes ||
        manifest.thumbnail.size() > maxThumbnailBytes)
        return broken;
    return manifest;
}

Result<std::string> openChunk(const Secret &epoch, const PhotoManifest &manifest, std::size_t index,
                              std::string_view bytes)
{
    if (blake2b(bytes) != manifest.chunks.at(index))
        return Error{Errc::Corrupt, "a piece of a photo is another than the manifest says",
                     manifest.photo.text(), "fetch it again"};
    return openedAs(photoKey(epoch, manifest.photo), chunkPlace(index), bytes);
}

} // namespace snugwalk
