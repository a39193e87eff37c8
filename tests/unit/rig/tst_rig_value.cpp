// SPDX-License-Identifier: Apache-2.0
// A rig as a tree of values and back: nothing is lost, and what cannot be read is named.
#include <doctest/doctest.h>

#include "rig/names.hpp"
#include "rig/place.hpp"
#include "rig/rig_value.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// The error of reading a rig written as JSON.
Error refused(const char *json)
{
    const Result<Rig> rig = rigFromValue(parseJson(json).value());
    REQUIRE_FALSE(rig);
    return rig.error();
}

} // namespace

TEST_CASE("what is written is read back, member by member")
{
    for (const Rig &rig : {tandem(), southernTwinAxle(), bareRig(), Rig{}}) {
        CAPTURE(rig.name);
        CHECK(rigFromValue(toValue(rig)).value() == rig);
        CHECK(rigFromValue(parseJson(toJson(toValue(rig), true)).value()).value() == rig);
        CHECK(rigFromValue(decodeCbor(encodeCbor(toValue(rig))).value()).value() == rig);
    }
}

TEST_CASE("every choice goes through its slug and back")
{
    Rig rig = bareRig();
    for (int kind = 0; kind <= static_cast<int>(RigKind::Van); ++kind) {
        for (int practice = 0; practice <= static_cast<int>(Practice::Other); ++practice) {
            rig.kind = static_cast<RigKind>(kind);
            rig.practice = static_cast<Practice>(practice);
            rig.hitch = static_cast<HitchType>(kind % 5);
            rig.roofWalk = static_cast<RoofWalk>(kind % 3);
            rig.roof = static_cast<RoofKind>(practice);
            rig.bearings = static_cast<BearingKind>(practice % 2);
            CHECK(rigFromValue(toValue(rig)).value() == rig);
        }
    }
    CHECK_FALSE(parseChoice<RigKind>("boat"));
    CHECK(choiceList<RoofWalk>() == "no, yes, unknown");
}

TEST_CASE("measures are read as people type them and kept in SI")
{
    // the inch is 0.0254 m and the pound 0.45359237 kg by definition [NIST-SP811] B.8
    const char *json =
        R"({"name": "T", "measures": {"length": "21 ft", "axles": ["130 in", {"value": 4.15, "unit": "m"}]},
        "ratings": {"gvwr": "7000 lb", "gawr": [null, "3500 lb"]}, "tires": {"placard": "50 psi"}})";
    const Rig rig = rigFromValue(parseJson(json).value()).value();
    CHECK(rig.measures.length.si() == doctest::Approx(21 * 12 * 0.0254).epsilon(1e-12));
    CHECK(rig.measures.axles.at(0).si() == doctest::Approx(130 * 0.0254).epsilon(1e-12));
    CHECK(rig.measures.axles.at(1) == metres(4.15));
    CHECK(rig.ratings.gross->si() == doctest::Approx(7000 * 0.45359237).epsilon(1e-12));
    CHECK_FALSE(rig.ratings.axle.at(0));
    CHECK(rig.ratings.axle.at(1)->si() == doctest::Approx(3500 * 0.45359237).epsilon(1e-12));
    CHECK(rig.tires.placard->si() == doctest::Approx(50 * 6894.757293168361).epsilon(1e-9));
}

TEST_CASE("missing members keep their default, unknown ones are passed over")
{
    const Rig rig = rigFromValue(parseJson(R"({"name": "N", "colour_of_curtains": "blue"})").value()).value();
    CHECK(rig.name == "N");
    CHECK(rig.roofWalk == RoofWalk::Unknown);
    CHECK_FALSE(rig.ratings.gross);
}

TEST_CASE("what cannot be read is named with its place")
{
    CHECK(rigFromValue(Value("rig")).error().code == Errc::InvalidInput);
    CHECK(refused(R"({"name": 3})").where == "name");
    CHECK(refused(R"({"kind": "boat"})").where == "kind");
    CHECK(refused(R"({"kind": "boat"})").act.find("travel_trailer") != std::string::npos);
    CHECK(refused(R"({"measures": {"length": "far"}})").where == "measures.length");
    CHECK(refused(R"({"measures": {"width": {"value": 2, "unit": "kg"}}})").where == "measures.width");
    CHECK(refused(R"({"measures": {"axles": ["3 m", true]}})").where == "measures.axles");
    CHECK(refused(R"({"ratings": {"gawr": ["1 m"]}})").where == "ratings.gawr");
    CHECK(refused(R"({"tires": {"load_index": "high"}})").where == "tires.load_index");
    CHECK(refused(R"({"openings": [{"name": "v"}, {"face": "inside"}]})").where == "openings[1].face");
    CHECK(refused(R"({"fittings": [7]})").where == "fittings");
    CHECK(refused(R"({"wheels": {"studs": 4.5}})").where == "wheels.studs");
    CHECK(refused(R"({"annual_distance": "8 kg"})").where == "annual_distance");
    CHECK(refused(R"({"openings": "none"})").where == "openings");
    CHECK(refused(R"({"measures": 6})").where == "measures");
}

TEST_CASE("a place through its value and back")
{
    const RigPlace named{"wheel 2R", std::nullopt, std::nullopt};
    const RigPlace spot{"", Face::Underside, RigPosition{metres(4.1), metres(-0.6), metres(0.5)}};
    for (const RigPlace &place : {named, spot, RigPlace{}})
        CHECK(placeFromValue(toValue(place)).value() == place);
    CHECK(placeFromValue(parseJson(R"({"x": "1 m"})").value()).error().where == "place.face");
    CHECK(placeFromValue(parseJson(R"({"face": "inside"})").value()).error().where == "place.face");
}
