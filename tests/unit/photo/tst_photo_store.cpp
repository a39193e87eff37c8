// SPDX-License-Identifier: Apache-2.0
// The folder of photos.
#include <doctest/doctest.h>

#include <fstream>

#include "exif_bytes.hpp"
#include "image/plain_codec.hpp"
#include "logbook/photo_store.hpp"
#include "pictures.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

void overwrite(const std::filesystem::path &path, std::string_view bytes)
{
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

} // namespace

TEST_CASE("keeps the original byte for byte, under its hash")
{
    const ScratchFolder scratch;
    PhotoStore store(scratch.path() / "photos");
    for (const std::string &photo : {makeJpeg(640, 400, noise), makePng(70, 40, noise)}) {
        const auto facts = store.add(photo, PlainCodec());
        REQUIRE(facts);
        CHECK(facts->hash == blake2b(photo));
        CHECK(facts->size == static_cast<std::int64_t>(photo.size()));
        CHECK(store.original(facts->hash).value() == photo);
        CHECK(store.verify(facts->hash));
        const Picture thumb = decodedJpeg(store.thumbnail(facts->hash).value());
        CHECK(std::max(thumb.width, thumb.height) == std::min(480, std::max(facts->width, facts->height)));
    }
    CHECK(store.strays().empty());
}

TEST_CASE("files are named by the rule that other programs may rely on")
{
    const ScratchFolder scratch;
    PhotoStore store(scratch.path());
    const auto facts = store.add(makePng(8, 4, noise), PlainCodec()).value();
    const std::string name = facts.hash.text();
    const std::string folder = name.substr(0, 2);
    CHECK(facts.mime == "image/png");
    CHECK(scratch.content() ==
          std::vector<std::string>{folder, folder + "/" + name + ".png", folder + "/" + name + ".thumb.jpg"});
}

TEST_CASE("the same photo twice is one photo, and mends a damaged one")
{
    const ScratchFolder scratch;
    PhotoStore store(scratch.path());
    const std::string photo = makeJpeg(100, 60, noise);
    const Hash hash = store.add(photo, PlainCodec()).value().hash;
    const auto before = scratch.content();
    CHECK(store.add(photo, PlainCodec()));
    CHECK(scratch.content() == before);

    const auto path = scratch.path() / hash.text().substr(0, 2) / (hash.text() + ".jpg");
    std::string flipped = photo;
    flipped[flipped.size() / 2] = static_cast<char>(flipped[flipped.size() / 2] ^ 1);
    for (const std::string &damaged : {flipped, photo.substr(0, 50), std::string()}) {
        overwrite(path, damaged);
        CHECK(store.verify(hash).error().code == Errc::Corrupt);
        CHECK(store.add(photo, PlainCodec()));
        CHECK(store.verify(hash));
    }
    CHECK(scratch.content() == before);
}

TEST_CASE("what is gone is not found; what belongs to nothing is listed")
{
    const ScratchFolder scratch;
    PhotoStore store(scratch.path() / "photos");
    const Hash unknown = blake2b("nothing");
    CHECK(store.original(unknown).error().code == Errc::NotFound);
    CHECK(store.thumbnail(unknown).error().code == Errc::NotFound);
    CHECK(store.verify(unknown).error().code == Errc::NotFound);
    CHECK(store.strays().empty()); // also without a folder

    const Hash hash = store.add(makeJpeg(10, 10, noise), PlainCodec()).value().hash;
    const auto folder = scratch.path() / "photos" / hash.text().substr(0, 2);
    const auto part = folder / (hash.text() + ".jpg.part-0011aabbccdd");
    const auto lonely = folder / (unknown.text() + ".thumb.jpg");
    overwrite(part, "half of");
    overwrite(lonely, "small");
    std::vector<std::filesystem::path> expected = {part, lonely};
    std::sort(expected.begin(), expected.end());
    CHECK(store.strays() == expected);

    std::filesystem::remove(folder / (hash.text() + ".jpg"));
    CHECK(store.verify(hash).error().code == Errc::NotFound);
    CHECK(store.strays().size() == 3);
}

TEST_CASE("facts come from the photo itself")
{
    const std::string photo =
        withSegment(makeJpeg(64, 48, noise),
                    ExifBytes()
                        .number(Ifd::Zero, tag::orientation, 6)
                        .ascii(Ifd::Exif, tag::dateTimeOriginal, "2026:11:24 21:10:00")
                        .ascii(Ifd::Exif, tag::offsetTimeOriginal, "+13:00")
                        .position({{36, 1}, {50, 1}, {2400, 100}}, 'S', {{174, 1}, {45, 1}, {0, 1}}, 'E')
                        .segment());
    const auto facts = readPhotoFacts(photo, PlainCodec()).value();
    CHECK(facts.mime == "image/jpeg");
    CHECK(facts.orientation == 6);
    CHECK(formatLocal(facts.taken.value()) == "2026-11-24T21:10:00+13:00");
    CHECK(facts.place.value().latitude == doctest::Approx(-36.84).epsilon(1e-12));
    CHECK(facts.place.value().longitude == doctest::Approx(174.75).epsilon(1e-12));
    const auto without = readPhotoFacts(makeJpeg(64, 48, noise), PlainCodec()).value();
    CHECK(without.orientation == 1);
    CHECK_FALSE(without.taken);
    CHECK_FALSE(without.place);
}
