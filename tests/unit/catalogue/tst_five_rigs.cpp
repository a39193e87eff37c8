// SPDX-License-Identifier: Apache-2.0
// Which points five different rigs get, against lists that were read line by line with the trade's table.
// SNUGWALK_WRITE_GOLDEN=1 writes the lists anew; review them before they are committed.
#include <doctest/doctest.h>

#include <cstdlib>
#include <set>

#include "rig/names.hpp"
#include "support/five_rigs.hpp"
#include "support/real_catalogue.hpp"
#include "support/temp_folder.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const std::string folder = SNUGWALK_SOURCE_DIR "/tests/unit/catalogue/golden/";

// Zone by zone: a heading with its count, then code, slug and the places it stands for.
std::string listOf(const Rig &rig)
{
    std::map<std::string, std::string> zones;
    std::map<std::string, int> counts;
    int all = 0;
    for (const std::string &slug : pointsFor(realCatalogue(), rig)) {
        const Point &point = *realCatalogue().find(slug);
        const auto places = placesOf(point, rig).size();
        zones[point.zone] +=
            point.code + " " + slug + (places > 1 ? " x" + std::to_string(places) : "") + "\n";
        ++counts[point.zone];
        ++all;
    }
    std::string out = std::string(slug(rig.kind)) + ", " + std::string(slug(rig.practice)) + ": " +
                      std::to_string(all) + " points\nfittings:";
    for (const std::string &fitting : allFittings(rig))
        out += " " + fitting;
    out += "\n";
    for (const auto &[zone, lines] : zones)
        out += "\n" + zone + " " + std::to_string(counts[zone]) + "\n" + lines;
    return out;
}

} // namespace

TEST_CASE("five different rigs get the points of their lists")
{
    const bool write = std::getenv("SNUGWALK_WRITE_GOLDEN") != nullptr;
    for (const NamedRig &named : fiveRigs()) {
        CAPTURE(named.file);
        REQUIRE(validate(named.rig).empty());
        const std::string list = listOf(named.rig);
        if (write)
            spill(folder + named.file + ".txt", list);
        CHECK(list == slurp(folder + named.file + ".txt"));
        MESSAGE(named.file << ": " << list.substr(0, list.find('\n')));
    }
}

TEST_CASE("the trade's table has 221 rows; one of them, LB-12, is three points: 223")
{
    std::set<std::string> rows;
    for (const Point &point : realCatalogue().points())
        rows.insert(point.code.substr(0, 5)); // LB-12a, LB-12b, LB-12c
    MESSAGE(realCatalogue().points().size() << " points from " << rows.size() << " rows in 16 zones");
    CHECK(rows.size() == 221);
    CHECK(realCatalogue().points().size() == 223);
}

TEST_CASE("every point is for some rig")
{
    std::set<std::string> got;
    for (int kind = 0; kind <= static_cast<int>(RigKind::Van); ++kind) {
        for (int practice = 0; practice <= static_cast<int>(Practice::Other); ++practice) {
            for (const BearingKind bearings : {BearingKind::Adjustable, BearingKind::Sealed}) {
                Rig rig = fiveRigs()[1].rig;
                rig.kind = static_cast<RigKind>(kind);
                rig.practice = static_cast<Practice>(practice);
                rig.bearings = bearings;
                rig.fittings = {knownFittings().begin(), knownFittings().end()};
                if (bearings == BearingKind::Sealed) { // what excludes another fitting
                    for (const Point &point : realCatalogue().points()) {
                        for (const std::string &fitting : point.applies.without)
                            rig.fittings.erase(fitting);
                    }
                }
                for (const std::string &slug : pointsFor(realCatalogue(), rig))
                    got.insert(slug);
            }
        }
    }
    for (const Point &point : realCatalogue().points()) {
        CAPTURE(point.slug);
        CHECK(got.count(point.slug) == 1);
    }
}
