// SPDX-License-Identifier: Apache-2.0
// Tracks that real receivers recorded. Lengths are summed again by PROJ's geod over the same points;
// positions are compared with what the package's own reader made of the same bytes. Fetched by
// tests/real/fetch_tracks.sh; without them this is a skip, under CI a failure.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <memory>

#include "base/text.hpp"
#include "base/value.hpp"
#include "trip/gpx.hpp"
#include "trip/nmea.hpp"
#include "trip/track.hpp"

using namespace snugwalk;

namespace {

namespace fs = std::filesystem;

struct Recording {
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

std::vector<Recording> recordings()
{
    const char *data = std::getenv("SNUGWALK_REAL_DATA");
    const fs::path folder = fs::path(data != nullptr ? data : "") / "tracks";
    std::ifstream list(folder / "list.tsv");
    if (data == nullptr || !list)
        leaveWithout("no tracks in " + folder.string() + "; run tests/real/fetch_tracks.sh");
    std::vector<Recording> found;
    for (std::string line; std::getline(list, line);) {
        const auto cells = split(line, '\t');
        REQUIRE(cells.size() == 5);
        found.push_back({folder / cells[0], std::string(cells[1]) + " " + std::string(cells[2]) + ", " +
                                                std::string(cells[3]) + ", " + std::string(cells[4])});
    }
    return found;
}

std::string bytesOf(const fs::path &path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

ParsedTrack readTrack(const fs::path &path)
{
    const std::string bytes = bytesOf(path);
    const auto track = path.extension() == ".gpx" ? parseGpx(bytes) : parseNmea(bytes);
    REQUIRE_MESSAGE(track.has_value(), path.string());
    return *track;
}

// The sum of the steps between `points` by `geod -I`, an implementation apart from ours.
double geodLength(const std::vector<GeoPoint> &points)
{
    const fs::path steps = fs::path(SNUGWALK_BINARY_DIR) / "real_tracks_steps.txt";
    {
        std::ofstream out(steps);
        for (std::size_t i = 1; i < points.size(); ++i) {
            for (const GeoPoint &p : {points[i - 1], points[i]})
                out << fixed(p.latitude, 12) << ' ' << fixed(p.longitude, 12) << ' ';
            out << '\n';
        }
    }
    const std::string command =
        std::string(SNUGWALK_GEOD) + " -I +ellps=WGS84 -F %.9f '" + steps.string() + "'";
    const std::unique_ptr<FILE, int (*)(FILE *)> pipe(::popen(command.c_str(), "r"), ::pclose);
    double sum = 0.0;
    std::size_t lines = 0;
    for (std::array<char, 512> line{};
         std::fgets(line.data(), static_cast<int>(line.size()), pipe.get()) != nullptr; ++lines)
        sum += parseDouble(trim(split(trim(line.data()), '\t').back())).value_or(NAN);
    REQUIRE(lines + 1 == std::max<std::size_t>(1, points.size()));
    return sum;
}

struct Seen {
    double latitude, longitude;
};

// Their reader takes old dates for a later round of the system's week counter, 1024 weeks on.
Instant withinRound(Instant time) { return Instant(time.time_since_epoch() % std::chrono::weeks(1024)); }

// The package's own reading of the log: a JSON line for each fix, by time.
std::multimap<Instant, Seen> reportedFixes(const fs::path &path)
{
    std::multimap<Instant, Seen> fixes;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        if (!line.starts_with("{\"class\":\"TPV\""))
            continue;
        const auto json = parseJson(trim(line));
        REQUIRE(json);
        const auto time = parseLocal((*json)["time"].asString().value_or(""));
        const auto latitude = (*json)["lat"].asDouble();
        const auto longitude = (*json)["lon"].asDouble();
        if (time && latitude && longitude)
            fixes.emplace(withinRound(time->instant), Seen{*latitude, *longitude});
    }
    return fixes;
}

} // namespace

TEST_CASE("lengths agree with PROJ within 0.1 % over the same points")
{
    std::size_t measured = 0;
    for (const Recording &recording : recordings()) {
        CAPTURE(recording.label);
        const ParsedTrack track = readTrack(recording.path);
        const TrackSummary summary = summarise(track);
        const auto points = measuredPoints(track.fixes);
        const double ours = summary.length.si();
        const double theirs = geodLength(points);
        std::printf(
            "%s\n    %lld of %lld fixes, %zu points, %s m by us, %s m by geod, %d gaps (%s m), %zu stops",
            recording.label.c_str(), summary.fixesKept, summary.fixesRead, points.size(),
            fixed(ours, 3).c_str(), fixed(theirs, 3).c_str(), summary.gaps,
            fixed(summary.inferred.si(), 1).c_str(), summary.stops.size());
        for (const Drop &drop : summary.drops)
            std::printf(", %s %lld", drop.reason.c_str(), drop.count);
        std::printf("\n");
        CHECK(std::abs(ours - theirs) <= 0.001 * theirs);
        measured += theirs > 100.0 ? 1 : 0;
    }
    CHECK(measured >= 4); // most receivers under test lie on a desk; these were driven
}

TEST_CASE("positions agree with the package's own reader")
{
    std::size_t compared = 0;
    for (const Recording &recording : recordings()) {
        const fs::path report = recording.path.string() + ".chk";
        if (!fs::exists(report))
            continue;
        CAPTURE(recording.label);
        const auto reported = reportedFixes(report);
        std::size_t here = 0, same = 0;
        for (const Fix &fix : readTrack(recording.path).fixes) {
            const auto [first, last] = reported.equal_range(withinRound(fix.time));
            if (first == last)
                continue; // their reader leaves out fixes that ours keeps, and the other way round
            ++here;
            double nearest = 360.0;
            for (auto seen = first; seen != last; ++seen)
                nearest = std::min(nearest, std::max(std::abs(seen->second.latitude - fix.point.latitude),
                                                     std::abs(seen->second.longitude - fix.point.longitude)));
            CAPTURE(formatInstant(fix.time));
            CHECK(nearest < 1e-4); // a receiver may say two places in one second, some metres apart
            same += nearest < 1e-7 ? 1 : 0;
        }
        std::printf("%s: %zu fixes compared, %zu the same, %zu reported\n", recording.label.c_str(), here,
                    same, reported.size());
        CHECK(here > 0);
        CHECK(10 * same >= 9 * here);
        compared += here;
    }
    CHECK(compared > 300);
}
