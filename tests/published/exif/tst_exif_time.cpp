// SPDX-License-Identifier: Apache-2.0
// When a photo was taken, by CIPA DC-008: DateTimeOriginal, SubSecTimeOriginal (2.3), OffsetTimeOriginal
// (2.31), GPSDateStamp and GPSTimeStamp (2.3).
#include <doctest/doctest.h>

#include "exif_bytes.hpp"
#include "logbook/photo_exif.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

ExifBytes shown(const std::string &text)
{
    return ExifBytes(Endian::Little).ascii(Ifd::Exif, tag::dateTimeOriginal, text);
}

ExifBytes &gpsTime(ExifBytes &exif, const std::string &date, std::uint32_t h, std::uint32_t m,
                   std::uint32_t hundredths)
{
    return exif.ascii(Ifd::Gps, tag::gpsDateStamp, date)
        .fractions(Ifd::Gps, tag::gpsTimeStamp, {{h, 1}, {m, 1}, {hundredths, 100}});
}

std::string taken(const ExifBytes &exif)
{
    const auto time = readExif(exif.tiff()).taken;
    return time ? formatLocal(*time) : "";
}

} // namespace

TEST_CASE("the camera's clock with its offset")
{
    auto exif = shown("2026:11:24 21:10:00");
    CHECK(readExif(exif.tiff()).takenText == "2026-11-24 21:10:00");
    CHECK(taken(exif) == ""); // without a zone it is no instant
    exif.ascii(Ifd::Exif, tag::offsetTimeOriginal, "+13:00");
    CHECK(taken(exif) == "2026-11-24T21:10:00+13:00");
    CHECK(formatInstant(readExif(exif.tiff()).taken.value().instant) == "2026-11-24T08:10:00Z");
    CHECK(taken(exif.ascii(Ifd::Exif, tag::offsetTimeOriginal, "-03:30")) == "2026-11-24T21:10:00-03:30");
    CHECK(taken(exif.ascii(Ifd::Exif, tag::subSecTimeOriginal, "25")) == "2026-11-24T21:10:00.250-03:30");
    CHECK(readExif(exif.tiff()).takenText == "2026-11-24 21:10:00");
}

TEST_CASE("without an offset the time of the GPS, and the zone it implies")
{
    auto exif = shown("2026:11:24 21:10:05");
    CHECK(taken(gpsTime(exif, "2026:11:24", 8, 9, 5865)) == "2026-11-24T21:09:58.650+13:00");
    auto west = shown("2026:11:24 21:10:05");
    CHECK(taken(gpsTime(west, "2026:11:25", 2, 55, 500)) == "2026-11-24T21:10:05-05:45");
    auto unset = shown("2000:01:01 00:00:00"); // a clock that was never set implies no zone
    CHECK(taken(gpsTime(unset, "2026:11:24", 8, 10, 0)) == "2026-11-24T08:10:00+00:00");
    auto alone = ExifBytes();
    CHECK(taken(gpsTime(alone, "2026:11:24", 8, 10, 0)) == "2026-11-24T08:10:00+00:00");
    CHECK(readExif(alone.tiff()).takenText == "");
}

TEST_CASE("an offset wins over the GPS, a malformed one does not")
{
    auto exif = shown("2026:11:24 21:10:05").ascii(Ifd::Exif, tag::offsetTimeOriginal, "+12:00");
    CHECK(taken(gpsTime(exif, "2026:11:24", 8, 10, 0)) == "2026-11-24T21:10:05+12:00");
    CHECK(taken(exif.ascii(Ifd::Exif, tag::offsetTimeOriginal, "   :  ")) == "2026-11-24T21:10:00+13:00");
}

TEST_CASE("blanks and impossible times are left out")
{
    // the standard lets unknown characters be blank
    for (const char *text :
         {"    :  :     :  :  ", "0000:00:00 00:00:00", "2026:02:30 10:00:00", "2026:11:24 24:00:00",
          "2026:11:24", "", "2026-11-24T10:00:00", "26:11:24 10:00:00x"}) {
        CAPTURE(text);
        auto exif = shown(text).ascii(Ifd::Exif, tag::offsetTimeOriginal, "+13:00");
        CHECK(taken(exif) == "");
        CHECK(readExif(exif.tiff()).takenText == "");
    }
    auto badGps = shown("2026:11:24 21:10:05");
    CHECK(taken(gpsTime(badGps, "2026:11:24", 25, 0, 0)) == "");
    CHECK(taken(gpsTime(badGps, "2026:13:24", 8, 0, 0)) == "");
    CHECK(readExif(badGps.tiff()).takenText == "2026-11-24 21:10:05");
}
