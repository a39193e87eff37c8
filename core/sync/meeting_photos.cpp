// SPDX-License-Identifier: Apache-2.0
// Photos of one rig at one store: ours go out before the entries that name them, thumbnails come before
// originals, and pieces that came stay when the line breaks.
#include <algorithm>
#include <filesystem>

#include "base/text.hpp"
#include "logbook/files.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"
#include "sync/meeting.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

fs::path pieceFile(const Logbook &book, const Hash &photo, std::size_t index)
{
    const std::string name = photo.text();
    return fs::path(book.photoFolder()) / name.substr(0, 2) /
           (name + std::string(partMark) + std::to_string(index));
}

std::string manifestFolder(const Id &rig, const std::string &name)
{
    return rigFolder(rig) + "/m/" + name.substr(0, 1);
}

std::string chunkFolder(const Id &rig, const Hash &chunk)
{
    return rigFolder(rig) + "/b/" + chunk.text().substr(0, 2);
}

void forget(const Logbook &book, const PhotoManifest &manifest)
{
    std::error_code ignored; // only what was fetched piece by piece
    for (std::size_t i = 0; i < manifest.chunks.size(); ++i)
        fs::remove(pieceFile(book, manifest.photo, i), ignored);
}

} // namespace

Result<std::optional<FoundManifest>> Meeting::manifestOf(const Hash &photo)
{
    for (const auto &[name, key] : m_open.all) {
        const std::string what = manifestName(key, photo);
        std::optional<PhotoManifest> manifest;
        const auto bytes = m_store.read(manifestFolder(m_rig, what), what, maxManifest,
                                        [&, epoch = key](std::string_view found) {
                                            auto opened = openManifest(epoch, photo, found);
                                            if (opened)
                                                manifest = std::move(opened).value();
                                            return opened.has_value();
                                        });
        if (!bytes)
            return bytes.error();
        if (*bytes)
            return std::optional(FoundManifest{std::move(*manifest), key});
    }
    return std::optional<FoundManifest>();
}

Result<bool> Meeting::isListed(const Hash &photo)
{
    for (const auto &epoch : m_open.all) {
        const std::string what = manifestName(epoch.second, photo);
        const auto listing = m_store.list(manifestFolder(m_rig, what));
        if (!listing)
            return listing.error();
        if ((*listing)->count(what) > 0)
            return true;
    }
    return false;
}

// Under any key of the rig it is there for all; a new one is sealed with the latest.
Status Meeting::publishPhoto(const Hash &photo)
{
    const auto listed = isListed(photo);
    if (!listed)
        return listed.error();
    if (*listed && !m_options.mend)
        return done();
    const auto there = manifestOf(photo);
    if (!there)
        return there.error();
    const PhotoStore folder(m_book.photoFolder());
    const auto original = folder.original(photo);
    if (!original)
        return original.error().code == Errc::NotFound ? done() : Status(original.error());
    if (blake2b(*original) != photo)
        return done(); // damaged here: `check --deep` says so; it must not travel
    const auto thumb = folder.thumbnail(photo);
    const Secret &key = *there ? (*there)->key : m_open.all.at(m_open.latest);
    const SealedPhoto sealed = sealPhoto(key, photo, *original, thumb ? *thumb : std::string());
    for (const std::string &chunk : sealed.chunks) {
        const Hash hash = blake2b(chunk);
        SNUG_TRY(publish(chunkFolder(m_rig, hash), hash.text(), "chk", chunk, true));
    }
    if (*there)
        return done();
    const std::string what = manifestName(key, photo);
    SNUG_TRY(publish(manifestFolder(m_rig, what), what, "man", sealed.manifest, true));
    ++m_summary.photosSent;
    return done();
}

Status Meeting::fetchPhoto(const Hash &photo, bool original)
{
    PhotoStore folder(m_book.photoFolder());
    if (folder.hasThumbnail(photo) && !original)
        return done();
    const auto found = manifestOf(photo);
    if (!found)
        return found.error();
    if (!*found)
        return done();
    const PhotoManifest &manifest = (*found)->manifest;
    if (!folder.hasThumbnail(photo) && !manifest.thumbnail.empty()) {
        const Status kept = folder.keepThumbnail(photo, manifest.thumbnail);
        if (!kept && kept.error().code == Errc::Io)
            return kept;
        m_summary.thumbnailsReceived += kept ? 1 : 0;
    }
    if (!original)
        return done();
    std::string whole;
    for (std::size_t i = 0; i < manifest.chunks.size(); ++i) {
        const fs::path piece = pieceFile(m_book, photo, i);
        const Hash &hash = manifest.chunks[i];
        auto bytes = readFile(piece, maxSealedChunk);
        if (!bytes || blake2b(*bytes) != hash) {
            const auto fetched = m_store.read(chunkFolder(m_rig, hash), hash.text(), maxSealedChunk,
                                              [&](std::string_view got) { return blake2b(got) == hash; });
            if (!fetched)
                return fetched.error();
            if (!*fetched)
                return done(); // not there yet, or damaged: the next time
            SNUG_TRY(makeFolder(piece.parent_path()));
            SNUG_TRY(replaceFile(piece, **fetched));
            bytes = std::move(**fetched);
        }
        const auto plain = openChunk((*found)->key, manifest, i, *bytes);
        if (!plain) {
            ++m_store.damaged;
            return done();
        }
        whole += *plain;
    }
    const Status kept = folder.keepOriginal(photo, whole);
    if (!kept && kept.error().code == Errc::Io)
        return kept;
    forget(m_book, manifest);
    if (!kept) { // a member made a manifest of other bytes
        ++m_store.damaged;
        return done();
    }
    ++m_summary.photosReceived;
    return photoArrived(m_book, photo);
}

Status Meeting::photos()
{
    const auto all = photosOf(m_book, m_rig);
    const auto wanted = wantedPhotos(m_book);
    if (!all || !wanted)
        return all ? wanted.error() : all.error();
    const PhotoStore folder(m_book.photoFolder());
    std::vector<Hash> absent;
    std::int64_t at = 0;
    const auto total = static_cast<std::int64_t>(all->size());
    for (const Photo &photo : *all) {
        const auto hash = Hash::parse(photo.hash);
        if (!hash || m_open.latest.empty())
            continue;
        if (folder.exists(*hash)) {
            SNUG_TRY(publishPhoto(*hash));
        } else {
            absent.push_back(*hash);
            SNUG_TRY(fetchPhoto(*hash, false));
        }
        SNUG_TRY(tell("photos", ++at, total));
    }
    for (const Hash &hash : absent) {
        const bool isWanted = m_options.originals == Originals::All ||
                              (m_options.originals == Originals::Wanted &&
                               std::find(wanted->begin(), wanted->end(), hash) != wanted->end());
        if (isWanted)
            SNUG_TRY(fetchPhoto(hash, true));
        m_summary.photosLeft += folder.exists(hash) ? 0 : 1;
    }
    return done();
}

} // namespace snugwalk
