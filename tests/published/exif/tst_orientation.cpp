// SPDX-License-Identifier: Apache-2.0
// Which way is up, by the table of tag 0x0112 in CIPA DC-008 (Exif 2.3) section 4.6.4.
#include <doctest/doctest.h>

#include "exif_bytes.hpp"
#include "image/plain_codec.hpp"
#include "logbook/photo_facts.hpp"
#include "pictures.hpp"
#ifdef SNUGWALK_HAS_QT_CODEC
#include "image/qt_codec.hpp"
#endif

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

enum class Side { Top, Right, Bottom, Left };
struct Row {
    int orientation;
    Side firstRow;    // "the 0th row is at the visual ..."
    Side firstColumn; // "the 0th column is the visual ..."
};

constexpr Row published[] = {
    {1, Side::Top, Side::Left},     {2, Side::Top, Side::Right},   {3, Side::Bottom, Side::Right},
    {4, Side::Bottom, Side::Left},  {5, Side::Left, Side::Top},    {6, Side::Right, Side::Top},
    {7, Side::Right, Side::Bottom}, {8, Side::Left, Side::Bottom},
};

constexpr Colour red = {200, 30, 30};
constexpr Colour blue = {30, 30, 200};
constexpr Colour grey = {128, 128, 128};
constexpr int width = 96;
constexpr int height = 64;

// the first rows red; the first columns, apart from their ends, blue
Colour marked(int x, int y) { return y < 16 ? red : x < 16 && y < 48 ? blue : grey; }

Colour middleOf(const Picture &picture, Side side)
{
    const int w = picture.width;
    const int h = picture.height;
    switch (side) {
    case Side::Top:
        return picture.at(w / 2, 4);
    case Side::Bottom:
        return picture.at(w / 2, h - 5);
    case Side::Left:
        return picture.at(4, h / 2);
    case Side::Right:
        return picture.at(w - 5, h / 2);
    }
    return {};
}

void checkTable(const ImageCodec &codec)
{
    const std::string jpeg = makeJpeg(width, height, marked);
    for (const Row &row : published) {
        CAPTURE(row.orientation);
        const std::string photo =
            withSegment(jpeg, ExifBytes().number(Ifd::Zero, tag::orientation, row.orientation).segment());
        const auto facts = readPhotoFacts(photo, codec);
        REQUIRE(facts);
        CHECK(facts->orientation == row.orientation);
        CHECK(facts->width == width); // as stored
        CHECK(facts->height == height);
        const auto thumb = codec.thumbnail(photo, facts->orientation, 480);
        REQUIRE(thumb);
        const Picture seen = decodedJpeg(*thumb);
        const bool onSide = row.firstRow == Side::Left || row.firstRow == Side::Right;
        CHECK(seen.width == (onSide ? height : width));
        CHECK(seen.height == (onSide ? width : height));
        CHECK(difference(middleOf(seen, row.firstRow), red) < 30);
        CHECK(difference(middleOf(seen, row.firstColumn), blue) < 30);
    }
}

} // namespace

TEST_CASE("the published table of orientations") { checkTable(PlainCodec()); }

#ifdef SNUGWALK_HAS_QT_CODEC
TEST_CASE("the published table of orientations, by Qt") { checkTable(QtCodec()); }
#endif

TEST_CASE("an orientation outside 1 to 8 is taken for 1")
{
    for (const int value : {0, 9, 65535})
        CHECK(readPhotoFacts(withSegment(makeJpeg(8, 8, plain(grey)),
                                         ExifBytes().number(Ifd::Zero, tag::orientation, value).segment()),
                             PlainCodec())
                  .value()
                  .orientation == 1);
}
