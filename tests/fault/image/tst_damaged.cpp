// SPDX-License-Identifier: Apache-2.0
// Photos that are cut, garbled, or claim to be what they are not.
#include "damage.hpp"

#include <random>
#ifdef SNUGWALK_HAS_QT_CODEC
#include "image/qt_codec.hpp"
#endif

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

std::string bigEndian(std::uint32_t value, int bytes)
{
    std::string out;
    for (int shift = 8 * (bytes - 1); shift >= 0; shift -= 8)
        out += static_cast<char>(value >> shift & 0xffU);
    return out;
}

// CRC-32 as PNG annex D has it, so that the bomb is refused for its size and not for its checksum.
std::uint32_t crc(const std::string &bytes)
{
    std::uint32_t value = 0xffffffffU;
    for (const char c : bytes) {
        value ^= static_cast<std::uint8_t>(c);
        for (int bit = 0; bit < 8; ++bit)
            value = (value & 1U) != 0 ? 0xedb88320U ^ value >> 1U : value >> 1U;
    }
    return ~value;
}

std::string claimedPng(std::uint32_t width, std::uint32_t height)
{
    std::string png = makePng(4, 4, plain({1, 2, 3}));
    const std::string header = "IHDR" + bigEndian(width, 4) + bigEndian(height, 4) + png.substr(24, 5);
    return png.replace(12, 21, header + bigEndian(crc(header), 4));
}

// The frame header (T.81 B.2.2) with other numbers: FF C0, length, precision, height, width.
std::string claimedJpeg(std::uint32_t width, std::uint32_t height)
{
    std::string jpeg = makeJpeg(16, 16, plain({1, 2, 3}));
    const auto at = jpeg.find("\xff\xc0");
    REQUIRE(at != std::string::npos);
    return jpeg.replace(at + 5, 4, bigEndian(height, 2) + bigEndian(width, 2));
}

} // namespace

TEST_CASE("cut at any length, nothing is kept")
{
    for (const std::string &photo :
         {makeJpeg(120, 80, noise), makeJpeg(120, 80, noise, 90, Scans::Progressive), makePng(40, 30, noise),
          makePng(40, 30, noise, 255, Rows::Interlaced)})
        for (std::size_t length = 1; length < photo.size(); length += 1 + length / 9) {
            CAPTURE(length);
            refused(photo.substr(0, length), Errc::InvalidInput);
        }
}

TEST_CASE("cut with the end mark sewn on again")
{
    const std::string jpeg = makeJpeg(120, 80, noise);
    const std::size_t scan = jpeg.find("\xff\xda");
    for (std::size_t length = scan + 14; length < jpeg.size() - 40; length += 251) {
        CAPTURE(length);
        const Error error = refused(jpeg.substr(0, length) + "\xff\xd9", Errc::InvalidInput);
        CHECK(error.what == "the photo is damaged or cut short");
    }
    const std::string png = makePng(60, 60, noise);
    const std::string end = png.substr(png.size() - 12);
    for (std::size_t length = 60; length < png.size() - 16; length += 501)
        refused(png.substr(0, length) + end, Errc::InvalidInput);
}

TEST_CASE("garbage behind a true beginning, and no beginning at all")
{
    std::mt19937 random(20261124); // fixed: a failure must be repeatable
    for (int i = 0; i < 300; ++i) {
        std::string bytes(1 + random() % 2000, '\0');
        for (char &c : bytes)
            c = static_cast<char>(random());
        refused("\xff\xd8\xff" + bytes, Errc::InvalidInput);
        refused("\x89PNG\r\n\x1a\n" + bytes, Errc::InvalidInput);
        bytes[0] = 'x';
        refused(bytes, Errc::Unsupported);
    }
    refused("", Errc::InvalidInput);
}

TEST_CASE("flipped bits never crash, and what is kept is what was given")
{
    std::mt19937 random(7);
    const std::string jpeg = makeJpeg(96, 64, noise);
    const std::string png = makePng(48, 32, noise);
    int refusals = 0;
    for (int i = 0; i < 400; ++i) {
        std::string photo = i % 2 == 0 ? jpeg : png;
        photo[random() % photo.size()] ^= static_cast<char>(1U << random() % 8);
        const ScratchFolder scratch;
        PhotoStore store(scratch.path());
        const auto added = store.add(photo, PlainCodec());
        refusals += added ? 0 : 1;
        if (added)
            CHECK(store.original(added->hash).value() == photo);
        else
            CHECK(scratch.content().empty());
    }
    CHECK(refusals > 200); // every flip in a PNG's data breaks its checksum
}

TEST_CASE("bombs are refused by their header")
{
    refused(claimedPng(10'000, 10'000), Errc::OutOfRange);
    refused(claimedPng(60'000, 60'000), Errc::OutOfRange);
    refused(claimedPng(32'768, 1), Errc::OutOfRange);
    refused(claimedPng(1, 2'000'000'000), Errc::OutOfRange);
    refused(claimedPng(0, 10), Errc::InvalidInput);
    refused(claimedJpeg(10'000, 10'000), Errc::OutOfRange);
    refused(claimedJpeg(40'000, 1), Errc::OutOfRange);
    refused(claimedJpeg(65'535, 65'535), Errc::InvalidInput); // libjpeg's own limit is 65,500
    refused(claimedJpeg(0, 10), Errc::InvalidInput);
    refused(claimedJpeg(8'000, 8'000),
            Errc::InvalidInput); // 64 million pixels may be, but these are not there
    refused(claimedPng(8'000, 8'000), Errc::InvalidInput);
    refused(claimedPng(32'767, 1'900), Errc::InvalidInput);
}

TEST_CASE("a file over 64 MiB is refused unread")
{
    refused(makeJpeg(8, 8, noise) + std::string(64 * 1024 * 1024, '\0'), Errc::OutOfRange);
}

TEST_CASE("too many scans are refused, whatever they hold")
{
    std::string jpeg = makeJpeg(64, 64, noise, 90, Scans::Progressive);
    const std::size_t last = jpeg.rfind("\xff\xda");
    const std::string scan = jpeg.substr(last, jpeg.size() - 2 - last);
    jpeg.resize(jpeg.size() - 2);
    for (int i = 0; i < 200; ++i)
        jpeg += scan;
    CHECK(refused(jpeg + "\xff\xd9", Errc::InvalidInput).act != "");
}

#ifdef SNUGWALK_HAS_QT_CODEC
TEST_CASE("the app's codec refuses the same")
{
    const QtCodec codec;
    const std::string jpeg = makeJpeg(120, 80, noise);
    const std::string png = makePng(40, 30, noise);
    for (const std::string &photo :
         {jpeg.substr(0, jpeg.size() / 2), png.substr(0, png.size() / 2), std::string("\xff\xd8\xff")})
        CHECK(codec.thumbnail(photo, 1, 480).error().code == Errc::InvalidInput);
    for (const std::string &photo :
         {claimedPng(10'000, 10'000), claimedPng(60'000, 60'000), claimedJpeg(10'000, 10'000)}) {
        CHECK(codec.thumbnail(photo, 1, 480).error().code == Errc::OutOfRange);
        CHECK(readPhotoFacts(photo, codec).error().code == Errc::OutOfRange);
    }
    CHECK(codec.thumbnail(claimedPng(8'000, 8'000), 1, 480).error().code == Errc::InvalidInput);
    const ScratchFolder scratch;
    PhotoStore store(scratch.path());
    CHECK_FALSE(store.add(jpeg.substr(0, jpeg.size() / 2), codec));
    CHECK(scratch.content().empty());
    CHECK(store.add(jpeg, codec));
}
#endif
