// SPDX-License-Identifier: Apache-2.0
// Row 29 and the way of photos: pieces before the entry, thumbnails first, originals when wanted.
#include <doctest/doctest.h>

#include "logbook/acts.hpp"
#include "logbook/photo_store.hpp"
#include "row.hpp"
#include "support/party.hpp"
#include "sync/blob.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Whole as far as a JPEG's marks go; no pixels.
std::string photoOf(std::size_t size, char fill)
{
    std::string bytes("\xff\xd8\xff\xda\x00\x02", 6);
    for (std::size_t i = 0; i < size; ++i)
        bytes += static_cast<char>((i * 31 + static_cast<std::size_t>(fill)) % 251);
    return bytes + "\xff\xd9";
}

Hash addPhotoTo(Party &party, const Id &rig, const std::string &bytes)
{
    PhotoStore store(party.book().photoFolder());
    const Hash hash = blake2b(bytes);
    REQUIRE(store.keepOriginal(hash, bytes));
    REQUIRE(store.keepThumbnail(hash, photoOf(100, 't')));
    Photo photo;
    photo.rig = rig;
    photo.hash = hash.text();
    photo.mime = "image/jpeg";
    photo.added = party.home.clock.now();
    REQUIRE(addPhoto(party.book(), photo, {"somebody", std::nullopt, std::nullopt}));
    return hash;
}

std::vector<std::string> namesWith(const MemoryStore &store, const std::string &ending)
{
    std::vector<std::string> names;
    for (const auto &[name, bytes] : store.files) {
        if (name.ends_with(ending))
            names.push_back(name);
    }
    return names;
}

constexpr ExchangeOptions all{Originals::All, false};

} // namespace

TEST_CASE("thumbnails come first, the original when it is wanted")
{
    Shared s;
    const std::string bytes = photoOf(3 * chunkBytes / 2, 'a');
    const Hash photo = addPhotoTo(s.owner, s.rig, bytes);
    CHECK(s.owner.meet(s.store).photosSent == 1);
    CHECK(namesWith(s.store, ".chk").size() == 2);
    for (const auto &[name, stored] : s.store.files)
        CHECK(stored.find(bytes.substr(100, 64)) == std::string::npos);
    const auto first = s.other.meet(s.store);
    CHECK(first.thumbnailsReceived == 1);
    CHECK(first.photosLeft == 1);
    const PhotoStore photos(s.other.book().photoFolder());
    CHECK(photos.hasThumbnail(photo));
    CHECK(photos.exists(photo).error().code == Errc::NotFound);
    REQUIRE(wantPhoto(s.other.book(), photo));
    CHECK(s.other.meet(s.store).photosReceived == 1);
    CHECK(photos.original(photo).value() == bytes);
    CHECK(wantedPhotos(s.other.book()).value().empty());
    CHECK(s.owner.meet(s.store).photosSent == 0); // once is enough
}

TEST_CASE("a fetch that breaks off goes on with the pieces it has")
{
    Shared s;
    const Hash photo = addPhotoTo(s.owner, s.rig, photoOf(3 * chunkBytes, 'b'));
    s.owner.meet(s.store);
    const auto chunks = namesWith(s.store, ".chk");
    REQUIRE(chunks.size() == 4);
    const auto whole = s.store.files;
    // the piece that is looked for last is not there yet
    const PhotoStore photos(s.other.book().photoFolder());
    for (std::size_t i = 0; i < chunks.size(); ++i)
        s.store.files.erase(chunks[i]);
    s.other.meet(s.store, all);
    CHECK_FALSE(photos.exists(photo));
    s.store.files = whole;
    const auto summary = s.other.meet(s.store, all);
    CHECK(summary.photosReceived == 1);
    CHECK(photos.verify(photo));
    const auto again = s.other.meet(s.store, all);
    CHECK(again.bytesRead == 0);
}

TEST_CASE("row 29: pieces that are missing, cut, flipped or of another photo; originals that are none")
{
    Shared s;
    const Hash photo = addPhotoTo(s.owner, s.rig, photoOf(500, 'c'));
    s.owner.meet(s.store);
    const auto chunks = namesWith(s.store, ".chk");
    const auto manifests = namesWith(s.store, ".man");
    REQUIRE(chunks.size() == 1);
    REQUIRE(manifests.size() == 1);
    const std::string chunk = s.store.files.at(chunks[0]);
    const std::string manifest = s.store.files.at(manifests[0]);
    const PhotoStore photos(s.other.book().photoFolder());
    int damages = 0;
    int shown = 0;
    const auto meetDamaged = [&] {
        const auto summary = s.other.meet(s.store, all);
        ++damages;
        shown += photos.exists(photo) ? 1 : 0;
        CHECK(summary.photosLeft == 1);
    };
    for (std::size_t at = 0; at < chunk.size(); at += 7) {
        std::string flipped = chunk;
        flipped[at] = static_cast<char>(flipped[at] ^ 4);
        s.store.files.find(chunks[0])->second = flipped;
        meetDamaged();
        s.store.files.find(chunks[0])->second = chunk.substr(0, at);
        meetDamaged();
    }
    s.store.files.find(chunks[0])->second = chunk;
    for (std::size_t at = 0; at < manifest.size(); at += 11) {
        std::string flipped = manifest;
        flipped[at] = static_cast<char>(flipped[at] ^ 1);
        s.store.files.find(manifests[0])->second = flipped;
        meetDamaged();
    }
    row(29, std::to_string(damages) + " damaged pieces and manifests, " + std::to_string(shown) + " taken");
    CHECK(shown == 0);
    // the owner's device mends the store beside the damage
    s.owner.meet(s.store, {Originals::None, true});
    CHECK(s.other.meet(s.store, all).photosReceived == 1);
    CHECK(photos.verify(photo));

    PhotoStore store(s.other.book().photoFolder());
    for (const std::string &polyglot : {std::string("GIF89a"), std::string("<svg/>"), std::string("%PDF-1.7"),
                                        std::string("\xff\xd8\xff", 3), std::string()}) {
        CHECK_FALSE(store.keepOriginal(blake2b(polyglot), polyglot));
        CHECK_FALSE(store.keepThumbnail(photo, polyglot));
    }
    CHECK_FALSE(store.keepThumbnail(photo, photoOf(40'000, 'x')));
    CHECK_FALSE(store.keepOriginal(photo, photoOf(500, 'd')));
}
