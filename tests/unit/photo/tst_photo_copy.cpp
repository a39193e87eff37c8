// SPDX-License-Identifier: Apache-2.0
// What a copy that leaves keeps of a photo; markers of ITU-T T.81 and T.871, chunks of W3C PNG.
#include <doctest/doctest.h>

#include "exif_bytes.hpp"
#include "logbook/photo_copy.hpp"
#include "logbook/photo_exif.hpp"
#include "logbook/photo_parts.hpp"
#include "pictures.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using namespace std::string_literals;

namespace {

std::string segment(int code, const std::string &content)
{
    const std::size_t length = content.size() + 2;
    return "\xff"s + static_cast<char>(code) + static_cast<char>(length >> 8) +
           static_cast<char>(length & 0xff) + content;
}

std::string located(int orientation)
{
    ExifBytes exif;
    exif.number(Ifd::Zero, tag::orientation, orientation)
        .ascii(Ifd::Exif, tag::dateTimeOriginal, "2026:11:24 21:10:00")
        .position({{44, 1}, {16, 1}, {1234, 100}}, 'S', {{170, 1}, {6, 1}, {4321, 100}}, 'E');
    return exif.segment();
}

std::string jpeg(Scans scans = Scans::Baseline) { return makeJpeg(40, 24, noise, 90, scans); }

bool holds(const std::string &bytes, const std::string &what) { return bytes.find(what) != bytes.npos; }

} // namespace

TEST_CASE("a JPEG keeps its pixels and its turn, and loses its notes")
{
    for (const Scans scans : {Scans::Baseline, Scans::Progressive}) {
        for (int orientation = 1; orientation <= 8; ++orientation) {
            const std::string plainBytes = jpeg(scans);
            const std::string noted =
                withSegment(plainBytes, located(orientation) + segment(0xed, "Photoshop 3.0\0town"s) +
                                            segment(0xe1, "http://ns.adobe.com/xap/1.0/\0<x>here</x>"s) +
                                            segment(0xe2, "MPF\0preview"s) + segment(0xe7, "maker note") +
                                            segment(0xfe, "a comment"));
            const std::string trailing = noted + "a film that follows";
            const auto copy = bareCopy(trailing, orientation);
            REQUIRE(copy.has_value());
            for (const char *note : {"town", "here", "preview", "maker note", "a comment", "film", "2026"})
                CHECK_FALSE(holds(*copy, note));
            const ExifFacts facts = readExif(readPhotoParts(*copy)->exif);
            CHECK(facts.orientation == orientation);
            CHECK_FALSE(facts.place);
            CHECK(facts.takenText.empty());
            CHECK(decodedJpeg(*copy).pixels == decodedJpeg(plainBytes).pixels);
        }
    }
}

TEST_CASE("a colour profile and Adobe's transform stay, JFIF loses its little picture")
{
    const std::string profile = segment(0xe2, "ICC_PROFILE\0\1\1colours"s);
    const std::string adobe = segment(0xee, "Adobe\0\x64\0\0\0\0\1"s);
    const std::string jfif = segment(0xe0, "JFIF\0\1\2\0\0\1\0\1\1\1PIX"s);
    std::string bytes = jpeg();
    bytes = withSegment("\xff\xd8"s + bytes.substr(2 + 18),
                        jfif + segment(0xe0, "JFXX\0more"s) + profile + adobe);
    const auto copy = bareCopy(bytes, 1);
    REQUIRE(copy.has_value());
    CHECK(holds(*copy, profile));
    CHECK(holds(*copy, adobe));
    CHECK(copy->substr(2, 18) == segment(0xe0, "JFIF\0\1\2\0\0\1\0\1\0\0"s));
    CHECK_FALSE(holds(*copy, "PIX"));
    CHECK_FALSE(holds(*copy, "JFXX"));
}

TEST_CASE("a bare copy of a bare copy is the same bytes")
{
    const auto once = bareCopy(withSegment(jpeg(), located(6)), 6);
    REQUIRE(once.has_value());
    CHECK(bareCopy(*once, 6).value() == *once);
}

TEST_CASE("a PNG keeps what shows it and loses texts, times and positions")
{
    const std::string png = makePng(9, 7, noise);
    const std::size_t afterHeader = 8 + 12 + 13;
    const auto chunk = [](const std::string &name, const std::string &data) {
        return std::string(3, '\0') + static_cast<char>(data.size()) + name + data + "crc!";
    };
    const std::string noted = png.substr(0, afterHeader) + chunk("tEXt", "Author\0somebody"s) +
                              chunk("tIME", "1234567") + chunk("eXIf", "MM\0*nowhere"s) +
                              chunk("gAMA", "\0\0\xb1\x8f"s) + png.substr(afterHeader) + "after";
    const auto copy = bareCopy(noted, 1);
    REQUIRE(copy.has_value());
    for (const char *note : {"somebody", "1234567", "nowhere", "after"})
        CHECK_FALSE(holds(*copy, note));
    CHECK(holds(*copy, "gAMA"));
    CHECK(bareCopy(png, 1).value() == png);
    CHECK(readExif(readPhotoParts(bareCopy(png, 8).value())->exif).orientation == 8);
}

TEST_CASE("what is no whole photo is refused, and no turn is made up")
{
    CHECK(bareCopy("", 1).error().code == Errc::InvalidInput);
    CHECK(bareCopy("GIF89a", 1).error().code == Errc::Unsupported);
    const std::string whole = withSegment(jpeg(), located(3));
    for (std::size_t size = 3; size < whole.size(); size += 7)
        CHECK_FALSE(bareCopy(whole.substr(0, size), 3).has_value());
    CHECK(bareCopy(jpeg(), 99).value() == bareCopy(jpeg(), 1).value());
}
