// SPDX-License-Identifier: Apache-2.0
// The shape of JPEG (ITU-T T.81 annex B) and PNG (W3C PNG section 5) files.
#include <doctest/doctest.h>

#include "exif_bytes.hpp"
#include "logbook/photo_parts.hpp"
#include "pictures.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const Colour grey = {120, 130, 140};

std::string pngWithExif(const std::string &tiff)
{
    const std::string png = makePng(4, 4, plain(grey));
    const std::size_t afterHeader = 8 + 12 + 13;
    const auto size = static_cast<char>(tiff.size());
    REQUIRE(tiff.size() < 128);
    // the checksum is not looked at by the walk, and a wrong one makes libpng drop the chunk only
    return png.substr(0, afterHeader) + std::string(3, '\0') + size + "eXIf" + tiff + "crc!" +
           png.substr(afterHeader);
}

} // namespace

TEST_CASE("tells kinds apart by their first bytes")
{
    CHECK(readPhotoParts(makeJpeg(8, 8, plain(grey))).value().kind == PhotoKind::Jpeg);
    CHECK(readPhotoParts(makePng(8, 8, plain(grey))).value().kind == PhotoKind::Png);
    for (const char *other :
         {"GIF89a.......", "RIFF....WEBPVP8 ", "II*\0........", "....ftypheic", "hello", "\xff\xd9"}) {
        const auto parts = readPhotoParts(other);
        REQUIRE_FALSE(parts);
        CHECK(parts.error().code == Errc::Unsupported);
        CHECK(parts.error().what == "only JPEG and PNG photos");
    }
    CHECK(readPhotoParts("").error().code == Errc::InvalidInput);
}

TEST_CASE("finds the Exif block, and the first of two")
{
    const std::string tiff = ExifBytes().number(Ifd::Zero, tag::orientation, 6).tiff();
    const std::string other = ExifBytes().number(Ifd::Zero, tag::orientation, 3).segment();
    const std::string jpeg = makeJpeg(8, 8, plain(grey));
    CHECK(readPhotoParts(jpeg).value().exif.empty());
    const std::string photo =
        withSegment(withSegment(jpeg, other), ExifBytes().number(Ifd::Zero, tag::orientation, 6).segment());
    CHECK(readPhotoParts(photo).value().exif == tiff);
    CHECK(readPhotoParts(pngWithExif(tiff)).value().exif == tiff);
}

TEST_CASE("an end mark inside a segment does not end the photo")
{
    const std::string comment("\xff\xfe\x00\x04\xff\xd9", 6); // COM holding FF D9
    const std::string jpeg = withSegment(makeJpeg(8, 8, plain(grey)), comment);
    CHECK(readPhotoParts(jpeg));
    CHECK_FALSE(readPhotoParts(jpeg.substr(0, jpeg.size() - 2)));
    CHECK(readPhotoParts(jpeg + "what cameras append")); // T.81 says nothing about bytes behind the end
}

TEST_CASE("cut anywhere, it is refused")
{
    for (const std::string &photo :
         {makeJpeg(24, 16, noise), makePng(5, 4, noise), makeJpeg(24, 16, noise, 90, Scans::Progressive)})
        for (std::size_t length = 1; length < photo.size(); ++length) {
            CAPTURE(length);
            CHECK(readPhotoParts(photo.substr(0, length)).error().code == Errc::InvalidInput);
        }
}

TEST_CASE("headers without a picture are refused")
{
    const std::string png = makePng(4, 4, plain(grey));
    const std::string end("\0\0\0\0IEND\xae\x42\x60\x82", 12);
    CHECK(readPhotoParts(png.substr(0, 8) + end).error().what == "the file holds no picture");
    CHECK(readPhotoParts("\xff\xd8\xff\xd9").error().what == "the file holds no picture");
}
