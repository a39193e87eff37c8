// SPDX-License-Identifier: Apache-2.0
// Where a photo was taken, from blocks laid out as CIPA DC-008 (Exif 2.3) section 4.6.6 has them.
#include <doctest/doctest.h>

#include "exif_bytes.hpp"
#include "logbook/photo_exif.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// 43° 39' 12.50" and 116° 3' 44.00"
const std::vector<Fraction> latitude = {{43, 1}, {39, 1}, {1250, 100}};
const std::vector<Fraction> longitude = {{116, 1}, {3, 1}, {4400, 100}};
constexpr double latitudeDegrees = 43.0 + 39.0 / 60.0 + 12.5 / 3600.0;
constexpr double longitudeDegrees = 116.0 + 3.0 / 60.0 + 44.0 / 3600.0;
constexpr double tight = 1e-12;

ExifBytes here(Endian endian = Endian::Big, char ns = 'N', char ew = 'E')
{
    return ExifBytes(endian).position(latitude, ns, longitude, ew);
}

} // namespace

TEST_CASE("both byte orders and all four quarters of the earth")
{
    for (const Endian endian : {Endian::Little, Endian::Big}) {
        for (const char ns : {'N', 'S'}) {
            for (const char ew : {'E', 'W'}) {
                const auto place = readExif(here(endian, ns, ew).tiff()).place;
                REQUIRE(place);
                CHECK(place->latitude ==
                      doctest::Approx(ns == 'N' ? latitudeDegrees : -latitudeDegrees).epsilon(tight));
                CHECK(place->longitude ==
                      doctest::Approx(ew == 'E' ? longitudeDegrees : -longitudeDegrees).epsilon(tight));
                CHECK_FALSE(place->altitude);
                CHECK_FALSE(place->accuracy);
            }
        }
    }
}

TEST_CASE("degrees and decimal minutes, the other form the standard shows")
{
    auto exif = ExifBytes().position({{43, 1}, {3920833, 100000}, {0, 1}}, 'N',
                                     {{116, 1}, {373333, 100000}, {0, 1}}, 'W');
    const auto place = readExif(exif.tiff()).place;
    REQUIRE(place);
    CHECK(place->latitude == doctest::Approx(43.0 + 39.20833 / 60.0).epsilon(tight));
    CHECK(place->longitude == doctest::Approx(-(116.0 + 3.73333 / 60.0)).epsilon(tight));
}

TEST_CASE("altitude by its reference: 0 above, 1 below sea level; 2 and 3 are over the ellipsoid")
{
    const auto altitude = [](std::optional<int> reference) {
        auto exif = here().fractions(Ifd::Gps, tag::gpsAltitude, {{3983, 1000}});
        if (reference)
            exif.byte(Ifd::Gps, tag::gpsAltitudeRef, *reference);
        return readExif(exif.tiff()).place.value().altitude;
    };
    CHECK(altitude(std::nullopt).value() == doctest::Approx(3.983)); // the standard's default is 0
    CHECK(altitude(0).value() == doctest::Approx(3.983));
    CHECK(altitude(1).value() == doctest::Approx(-3.983));
    CHECK_FALSE(altitude(2)); // Exif 3.0
    CHECK_FALSE(altitude(3));
}

TEST_CASE("horizontal positioning error, Exif 2.31")
{
    const auto exif = here().fractions(Ifd::Gps, tag::gpsHPositioningError, {{65, 10}});
    CHECK(readExif(exif.tiff()).place.value().accuracy.value().si() == doctest::Approx(6.5));
}

TEST_CASE("what is missing or out of range gives no place, and harms nothing else")
{
    auto noLetter = ExifBytes()
                        .fractions(Ifd::Gps, tag::gpsLatitude, latitude)
                        .fractions(Ifd::Gps, tag::gpsLongitude, longitude);
    auto noLongitude =
        ExifBytes().fractions(Ifd::Gps, tag::gpsLatitude, latitude).ascii(Ifd::Gps, tag::gpsLatitudeRef, "N");
    const std::vector<std::pair<const char *, ExifBytes>> cases = {
        {"no hemisphere", noLetter},
        {"no longitude", noLongitude},
        {"unknown letter", ExifBytes().position(latitude, 'X', longitude, 'E')},
        {"latitude over 90", ExifBytes().position({{90, 1}, {0, 1}, {1, 100}}, 'N', longitude, 'E')},
        {"longitude over 180", ExifBytes().position(latitude, 'N', {{180, 1}, {0, 1}, {1, 1}}, 'E')},
        {"75 minutes", ExifBytes().position({{43, 1}, {75, 1}, {0, 1}}, 'N', longitude, 'E')},
        {"degrees not known", ExifBytes().position({{0, 0}, {0, 0}, {0, 0}}, 'N', longitude, 'E')},
        {"division by zero", ExifBytes().position({{43, 1}, {39, 0}, {0, 1}}, 'N', longitude, 'E')},
        {"two numbers only", ExifBytes().position({{43, 1}, {39, 1}}, 'N', longitude, 'E')},
        {"no fix yet", ExifBytes().position({{0, 1}, {0, 1}, {0, 1}}, 'N', {{0, 1}, {0, 1}, {0, 1}}, 'E')},
        {"Tokyo datum", here().ascii(Ifd::Gps, tag::gpsMapDatum, "TOKYO")},
    };
    for (auto [label, exif] : cases) {
        const auto &name = label;
        CAPTURE(name);
        const auto facts = readExif(exif.number(Ifd::Zero, tag::orientation, 6).tiff());
        CHECK_FALSE(facts.place);
        CHECK(facts.orientation == 6);
    }
    CHECK(readExif(here().ascii(Ifd::Gps, tag::gpsMapDatum, "WGS-84").tiff()).place);
}

TEST_CASE("a block cut anywhere is read without harm")
{
    const std::string whole = here()
                                  .number(Ifd::Zero, tag::orientation, 8)
                                  .ascii(Ifd::Exif, tag::dateTimeOriginal, "2026:11:24 21:10:00")
                                  .tiff();
    for (std::size_t length = 0; length < whole.size(); ++length) {
        const auto place = readExif(whole.substr(0, length)).place;
        CHECK((!place || isValid(*place)));
    }
    CHECK(readExif(whole).place);
}
