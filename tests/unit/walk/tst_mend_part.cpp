// SPDX-License-Identifier: Apache-2.0
// Parts as people type them.
#include <doctest/doctest.h>

#include "walk/mend_part.hpp"

using namespace snugwalk;

TEST_CASE("a number, a unit and a name in any of the three orders")
{
    const struct {
        const char *typed;
        MendPart part;
    } rows[] = {
        {"lap sealant, 2 cartridges", {"lap sealant", 2.0, "cartridges"}},
        {"3 x rivet 3/16 in", {"rivet 3/16 in", 3.0, ""}},
        {"3x rivet 3/16 in", {"rivet 3/16 in", 3.0, ""}},
        {"3 × remache", {"remache", 3.0, ""}},
        {"2 cartridges of lap sealant", {"lap sealant", 2.0, "cartridges"}},
        {"2 cartuchos de sellador", {"sellador", 2.0, "cartuchos"}},
        {"hub seal", {"hub seal", 1.0, ""}},
        {"4.8 mm rivet", {"4.8 mm rivet", 1.0, ""}},
        {"rivets, large flange, 3", {"rivets, large flange", 3.0, ""}},
        {"rivets, large flange", {"rivets, large flange", 1.0, ""}},
        {"grease, 85 g", {"grease", 85.0, "g"}},
        {"lap sealant, 1/2 cartridge", {"lap sealant", 0.5, "cartridge"}},
        {"sellador, 1,5 L", {"sellador", 1.5, "L"}},
        {"butyl tape 20 mm, 2 rolls", {"butyl tape 20 mm", 2.0, "rolls"}},
        {"screw, 8 x 1 in", {"screw, 8 x 1 in", 1.0, ""}},
        {"  primer  ", {"primer", 1.0, ""}},
        {"exhaust clamp", {"exhaust clamp", 1.0, ""}},
    };
    for (const auto &row : rows) {
        CAPTURE(std::string(row.typed));
        CHECK(parsePart(row.typed).value() == row.part);
    }
}

TEST_CASE("no name, no amount and absurd amounts are refused")
{
    for (const char *bad : {"", "   ", "3", "1/2"})
        CHECK(parsePart(bad).error().code == Errc::InvalidInput);
    for (const char *bad : {"rivet, 0", "0 x rivet", "rivet, 100001", "\xff"})
        CHECK(parsePart(bad).error().code == Errc::OutOfRange);
    CHECK(parsePart(std::string(201, 'a')).error().code == Errc::OutOfRange);
    CHECK(parsePart(", 3 boxes")->name == ", 3 boxes"); // odd, but nothing is lost
}

TEST_CASE("several in one line: an amount belongs to the name before it")
{
    using Parts = std::vector<MendPart>;
    CHECK(parseParts("lap sealant, primer").value() == Parts{{"lap sealant", 1, ""}, {"primer", 1, ""}});
    CHECK(parseParts("lap sealant, 2 cartridges, primer; 3 x rivet\n").value() ==
          Parts{{"lap sealant", 2, "cartridges"}, {"primer", 1, ""}, {"rivet", 3, ""}});
    CHECK(parseParts("").value().empty());
    CHECK_FALSE(parseParts("primer; 0 x rivet"));
}

TEST_CASE("what is shown reads back as the same part")
{
    for (const MendPart &part : {MendPart{"lap sealant", 2.0, "cartridges"}, MendPart{"hub seal", 1.0, ""},
                                 MendPart{"rivet 3/16 in", 3.0, ""}, MendPart{"grease", 0.125, "kg"}}) {
        CAPTURE(partText(part));
        CHECK(parsePart(partText(part)).value() == part);
    }
    CHECK(partText({"lap sealant", 1.5, "cartridges"}) == "lap sealant, 1.5 cartridges");
    CHECK(amountText(10.0) == "10");
    CHECK(amountText(0.0004) == "0");
}
