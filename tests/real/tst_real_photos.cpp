// SPDX-License-Identifier: Apache-2.0
// Photos that real cameras took: what we read against what ExifTool, an independent reader, reports.
// They are fetched by tests/real/fetch_photos.sh; without them this is a skip, under CI a failure.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>

#include "base/text.hpp"
#include "base/value.hpp"
#include "image/plain_codec.hpp"
#include "logbook/files.hpp"
#include "logbook/photo_store.hpp"
#include "pictures.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

namespace fs = std::filesystem;

struct Shot {
    fs::path path;
    std::string label; // package, version, file, licence
};

[[noreturn]] void leaveWithout(const std::string &what)
{
    const char *ci = std::getenv("CI");
    const bool isCi = ci != nullptr && std::string(ci) == "true";
    std::fprintf(stderr, "%s: %s\n", isCi ? "failed" : "skipped", what.c_str());
    std::_Exit(isCi ? 1 : 77);
}

std::vector<Shot> photos()
{
    const char *data = std::getenv("SNUGWALK_REAL_DATA");
    const fs::path folder = fs::path(data != nullptr ? data : "") / "photos";
    std::ifstream list(folder / "list.tsv");
    if (data == nullptr || !list)
        leaveWithout("no photos in " + folder.string() + "; run tests/real/fetch_photos.sh");
    std::vector<Shot> found;
    for (std::string line; std::getline(list, line);) {
        const auto cells = split(line, '\t');
        REQUIRE(cells.size() == 5);
        found.push_back({folder / cells[0], std::string(cells[1]) + " " + std::string(cells[2]) + ", " +
                                                std::string(cells[3]) + ", " + std::string(cells[4])});
    }
    return found;
}

std::string output(const std::string &command)
{
    const std::unique_ptr<FILE, int (*)(FILE *)> pipe(::popen(command.c_str(), "r"), ::pclose);
    std::string text;
    std::array<char, 4096> part{};
    while (const std::size_t got = std::fread(part.data(), 1, part.size(), pipe.get()))
        text.append(part.data(), got);
    return text;
}

// Numbers as stored (-n), each with the group it was read from, so that XMP does not stand in for Exif.
Value reported(const fs::path &path)
{
    const auto json = parseJson(output("exiftool -n -G1 -json -IFD0:Orientation -ExifIFD:DateTimeOriginal "
                                       "-ExifIFD:OffsetTimeOriginal -GPS:all '" +
                                       path.string() + "' 2>/dev/null"));
    if (!json || json->list().empty())
        leaveWithout("no exiftool (Debian: libimage-exiftool-perl), or it cannot read " + path.string());
    return json->list().front();
}

std::optional<double> signedBy(const Value &report, const char *tag, const char *letterTag,
                               const char *negative)
{
    const auto size = report[tag].asDouble();
    const auto letter = report[letterTag].asString();
    if (!size || !letter)
        return std::nullopt;
    return *letter == negative ? -*size : *size;
}

// "2016:03:24 14:49:51" as ours is written; nothing for dates that are none.
std::string ourText(const Value &report)
{
    std::string text = report["ExifIFD:DateTimeOriginal"].asString().value_or("");
    if (text.size() != 19 || text.starts_with("0000"))
        return "";
    text[4] = text[7] = '-';
    return text;
}

struct Seen {
    int positions = 0;
    int times = 0;
    int instants = 0;
    int turned = 0;
};

void comparePlace(const Value &report, const PhotoFacts &facts, Seen &seen)
{
    const auto latitude = signedBy(report, "GPS:GPSLatitude", "GPS:GPSLatitudeRef", "S");
    const auto longitude = signedBy(report, "GPS:GPSLongitude", "GPS:GPSLongitudeRef", "W");
    REQUIRE((latitude && longitude) == facts.place.has_value());
    if (!facts.place)
        return;
    ++seen.positions;
    CHECK(std::abs(facts.place->latitude - *latitude) <= 1e-6);
    CHECK(std::abs(facts.place->longitude - *longitude) <= 1e-6);
    const auto altitude = report["GPS:GPSAltitude"].asDouble();
    REQUIRE(altitude.has_value() == facts.place->altitude.has_value());
    if (altitude) {
        const bool isBelow = report["GPS:GPSAltitudeRef"].asInt().value_or(0) == 1;
        CHECK(std::abs(*facts.place->altitude - (isBelow ? -*altitude : *altitude)) <= 1e-3);
    }
}

void compareTime(const Value &report, const PhotoFacts &facts, Seen &seen)
{
    CHECK(facts.takenText == ourText(report));
    seen.times += facts.takenText.empty() ? 0 : 1;
    const auto offset = report["ExifIFD:OffsetTimeOriginal"].asString();
    std::string day = report["GPS:GPSDateStamp"].asString().value_or("");
    const auto time = report["GPS:GPSTimeStamp"].asString();
    if (day.size() == 10)
        day[4] = day[7] = '-';
    const std::string expected = offset                 ? ourText(report) + *offset
                                 : day.empty() || !time ? ""
                                                        : day + "T" + *time + "Z";
    const auto instant = parseLocal(expected);
    REQUIRE(instant.has_value() == facts.taken.has_value());
    if (!instant)
        return;
    ++seen.instants;
    const long long fraction = offset ? 999 : 1; // the fraction of the camera's second is another field
    CHECK(std::llabs(toMillis(facts.taken->instant) - toMillis(instant->instant)) <= fraction);
}

} // namespace

TEST_CASE("time, orientation and place of real photos as ExifTool reports them")
{
    const auto all = photos(); // before the folder is made: without photos the program leaves here
    Seen seen;
    int count = 0;
    const ScratchFolder scratch;
    PhotoStore store(scratch.path());
    for (const Shot &photo : all) {
        const std::string label = photo.label;
        CAPTURE(label);
        const auto bytes = readFile(photo.path, maxPhotoBytes);
        REQUIRE(bytes);
        const Value report = reported(photo.path);
        const auto facts = store.add(*bytes, PlainCodec());
        if (!facts)
            FAIL("refused: ", facts.error().what, ", ", facts.error().where);
        std::printf("%s: %d x %d, orientation %d, %s, %s\n", label.c_str(), facts->width, facts->height,
                    facts->orientation, facts->takenText.empty() ? "no time" : facts->takenText.c_str(),
                    facts->place
                        ? (fixed(facts->place->latitude, 6) + " " + fixed(facts->place->longitude, 6)).c_str()
                        : "no place");
        const auto orientation = report["IFD0:Orientation"].asInt().value_or(1);
        CHECK(facts->orientation == (orientation >= 1 && orientation <= 8 ? orientation : 1));
        seen.turned += facts->orientation != 1 ? 1 : 0;
        compareTime(report, *facts, seen);
        comparePlace(report, *facts, seen);
        CHECK(store.original(facts->hash).value() == *bytes);
        CHECK(store.verify(facts->hash));
        ++count;
    }
    std::printf("%d photos: %d with a time, %d with an instant, %d with a place, %d turned\n", count,
                seen.times, seen.instants, seen.positions, seen.turned);
    // the set is fixed by version, so that it cannot shrink to nothing unnoticed
    CHECK(count >= 14);
    CHECK(seen.positions >= 5);
    CHECK(seen.instants >= 2);
    CHECK(seen.turned >= 3);
}
