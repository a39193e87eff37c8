// SPDX-License-Identifier: Apache-2.0
// Lamps of trailers: [49-CFR-393.11] table 1 as the lighting chart of a state's police prints it, read; the
// tape of 393.11(b), read.
#include "../sourced.hpp"

#include <cmath>
#include <string>

#include "base/units.hpp"
#include "bench/electric/lamps.hpp"

using namespace snugwalk;

namespace {

LampList lamps(double widthInches, double lengthFeet, double pounds = 7000.0)
{
    return lampsFor(
               {metres(widthInches * 0.0254), metres(lengthFeet * 0.3048), kilograms(pounds * 0.45359237)})
        .value();
}

int count(const LampList &list, std::string_view lamp)
{
    for (const LampRow &row : list.rows) {
        if (row.lamp == lamp)
            return row.count;
    }
    return 0;
}

} // namespace

TEST_CASE("under 80 in and 30 ft: rows that the chart gives every trailer")
{
    const LampList small = lamps(79.0, 20.0);
    SOURCED("49-CFR-393.11", count(small, "tail"), 2, 0);
    SOURCED("49-CFR-393.11", count(small, "stop"), 2, 0);
    SOURCED("49-CFR-393.11", count(small, "turn_left") + count(small, "turn_right"), 2, 0);
    SOURCED("49-CFR-393.11", count(small, "plate"), 1, 0);
    CHECK(count(small, "side_marker_front") == 2);
    CHECK(count(small, "side_marker_rear") == 2);
    CHECK(count(small, "reflector_rear") == 2);
    CHECK(count(small, "reflector_side_front") == 2);
    CHECK(count(small, "reflector_side_rear") == 2);
    CHECK(count(small, "side_marker_middle") == 0);
    CHECK(count(small, "clearance_front") == 0);
    CHECK(small.onCircuit(LampCircuit::Running) == 7);
    CHECK(small.reflectors() == 6);
    CHECK(small.lamps() == 11);
}

TEST_CASE("80 in or wider, over 30 ft: clearance, identification, middle markers, tape above 10,000 lb")
{
    const LampList wide = lamps(96.0, 28.0);
    SOURCED("49-CFR-393.11", count(wide, "clearance_front"), 2, 0);
    CHECK(count(wide, "clearance_rear") == 2);
    SOURCED("49-CFR-393.11", count(wide, "identification_rear"), 3, 0);
    CHECK(count(wide, "side_marker_middle") == 0);
    CHECK_FALSE(wide.tape);
    const LampList big = lamps(80.0, 30.1, 12'000.0);
    SOURCED("49-CFR-393.11", count(big, "side_marker_middle"), 2, 0);
    CHECK(count(big, "reflector_side_middle") == 2);
    CHECK(big.tape);
    CHECK_FALSE(lamps(80.0, 30.0, 10'000.0).tape);
    CHECK_FALSE(lamps(79.9, 31.0, 12'000.0).tape);
    CHECK(big.onCircuit(LampCircuit::Running) == 16);
}

TEST_CASE("left and right light one each; colors")
{
    const LampList list = lamps(96.0, 34.0);
    CHECK(list.onCircuit(LampCircuit::Left) == 1);
    CHECK(list.onCircuit(LampCircuit::Right) == 1);
    CHECK(list.onCircuit(LampCircuit::Stop) == 2);
    for (const LampRow &row : list.rows) {
        const std::string name(row.lamp);
        CAPTURE(name);
        if (name.find("front") != std::string::npos || name.find("middle") != std::string::npos)
            CHECK(row.color == "amber");
        if (name.find("rear") != std::string::npos)
            CHECK(row.color == "red");
    }
}

TEST_CASE("what cannot be is refused, with its name")
{
    CHECK(lampsFor({metres(9), metres(6), Mass()}).error().where == "width");
    CHECK(lampsFor({metres(2), metres(std::nan("")), Mass()}).error().where == "length");
    CHECK(lampsFor({metres(2), metres(6), kilograms(-1)}).error().where == "rating");
}
