// SPDX-License-Identifier: Apache-2.0
// Both codecs give upright thumbnails of the same size and nearly the same colours.
#include <doctest/doctest.h>

#include <memory>

#include "image/box_scaler.hpp"
#include "image/plain_codec.hpp"
#include "pictures.hpp"
#ifdef SNUGWALK_HAS_QT_CODEC
#include "image/qt_codec.hpp"
#endif

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

std::vector<std::unique_ptr<ImageCodec>> codecs()
{
    std::vector<std::unique_ptr<ImageCodec>> all;
    all.push_back(std::make_unique<PlainCodec>());
#ifdef SNUGWALK_HAS_QT_CODEC
    all.push_back(std::make_unique<QtCodec>());
#endif
    return all;
}

// dark to light from left to right, so that a wrong scale shows
Paint ramp(int width)
{
    return [=](int x, int) { return Colour{x * 255 / width, 255 - x * 255 / width, 90}; };
}

} // namespace

TEST_CASE("the longest edge is the one asked for, the shape stays")
{
    struct Case {
        int width, height, edge, wantWidth, wantHeight;
    };
    for (const Case &c :
         {Case{1600, 1200, 480, 480, 360}, Case{1201, 1600, 480, 360, 480}, Case{300, 200, 480, 300, 200},
          Case{4001, 3, 480, 480, 1}, Case{480, 480, 480, 480, 480}, Case{481, 100, 480, 480, 100},
          Case{1, 1, 480, 1, 1}, Case{999, 501, 100, 100, 50}}) {
        CAPTURE(c.width);
        for (const std::string &photo :
             {makeJpeg(c.width, c.height, ramp(c.width)), makePng(c.width, c.height, ramp(c.width))}) {
            for (const auto &codec : codecs()) {
                CHECK(codec->probe(photo).value() == ImageSize{c.width, c.height});
                const Picture seen = decodedJpeg(codec->thumbnail(photo, 1, c.edge).value());
                CHECK(seen.width == c.wantWidth);
                CHECK(seen.height == c.wantHeight);
            }
        }
    }
}

TEST_CASE("the thumbnail shows the photo: a ramp stays a ramp")
{
    for (const std::string &photo :
         {makeJpeg(1500, 900, ramp(1500)), makeJpeg(1500, 900, ramp(1500), 90, Scans::Progressive),
          makePng(1500, 900, ramp(1500)), makePng(1500, 900, ramp(1500), 255, Rows::Interlaced)}) {
        for (const auto &codec : codecs()) {
            const Picture seen = decodedJpeg(codec->thumbnail(photo, 1, 480).value());
            for (const int x : {10, 120, 240, 360, 470})
                CHECK(difference(seen.at(x, 144), ramp(480)(x, 0)) <= 6);
        }
    }
}

TEST_CASE("transparency is shown on white")
{
    for (const auto &codec : codecs()) {
        const Picture seen =
            decodedJpeg(codec->thumbnail(makePng(40, 40, plain({0, 0, 0}), 51), 1, 480).value());
        CHECK(difference(seen.at(20, 20), {204, 204, 204}) <= 3); // 255 · (1 − 51/255)
    }
}

TEST_CASE("the same photo gives the same thumbnail, small enough to travel")
{
    const std::string photo = makeJpeg(1400, 1400, noise, 95); // noise is the worst case
    const std::string thumb = PlainCodec().thumbnail(photo, 6, 480).value();
    CHECK(thumb == PlainCodec().thumbnail(photo, 6, 480).value());
    for (const auto &codec : codecs()) {
        const std::string small = codec->thumbnail(makePng(480, 480, noise), 1, 480).value();
        CHECK(small.size() <= maxThumbnailBytes);
        CHECK(decodedJpeg(small).width == 480);
    }
}

TEST_CASE("area average: against sums written out")
{
    // 3 x 2 to 2 x 1: each output pixel covers one and a half columns and both rows
    BoxScaler scaler({3, 2}, {2, 1});
    const std::uint8_t first[] = {0, 0, 0, 60, 60, 60, 120, 120, 120};
    const std::uint8_t second[] = {30, 0, 0, 90, 0, 0, 150, 0, 0};
    scaler.addRow(first);
    scaler.addRow(second);
    const Pixels out = scaler.take();
    CHECK(out.size == ImageSize{2, 1});
    // left red (0 + 60/2 + 30 + 90/2) / 3 = 35, green (0 + 60/2 + 0) / 3 = 10; right red (60/2 + 120 + 90/2 +
    // 150) / 3 = 115
    CHECK(out.rgb == std::vector<std::uint8_t>{35, 10, 10, 115, 50, 50});
}

TEST_CASE("fitted sizes never vanish and never grow")
{
    CHECK(fitted({100, 50}, 480) == ImageSize{100, 50});
    CHECK(fitted({32767, 1}, 480) == ImageSize{480, 1});
    CHECK(fitted({1000, 999}, 10) == ImageSize{10, 10});
}
