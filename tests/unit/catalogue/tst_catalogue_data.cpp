// SPDX-License-Identifier: Apache-2.0
// The product's own catalogue as it is loaded.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("the real data load: 16 zones, 60 points at least, each whole")
{
    const Catalogue &catalogue = realCatalogue();
    std::set<std::string> zones;
    std::set<std::string> codes;
    for (const Point &point : catalogue.points()) {
        CAPTURE(point.slug);
        zones.insert(point.zone);
        CHECK(codes.insert(point.code).second);
        CHECK(catalogue.find(point.slug) == &point);
        CHECK_FALSE(point.defects.empty());
        CHECK(std::string("WTFHPCK").find(point.consequence.front()) != std::string::npos);
        if (point.hold)
            CHECK(point.isRoadOrFire());
    }
    CHECK(zones.size() == 16);
    CHECK(catalogue.points().size() >= 60);
    CHECK(catalogue.find("no-such-point") == nullptr);
    CHECK(catalogue.kind("no-such-kind") == nullptr);
    CHECK(catalogue.set("no-such-set").empty());
    CHECK(catalogue.route("no-such-route").empty());
}

TEST_CASE("every stand of a point is on both routes, every point of a set exists")
{
    const Catalogue &catalogue = realCatalogue();
    for (const char *route : {"lap", "inside_out"}) {
        const auto &stands = catalogue.route(route);
        for (const Point &point : catalogue.points())
            CHECK(std::find(stands.begin(), stands.end(), point.stand) != stands.end());
    }
    for (const WalkKind &kind : catalogue.kinds()) {
        CAPTURE(kind.slug);
        CHECK((kind.all || !kind.sets.empty()));
        for (const std::string &set : kind.sets) {
            REQUIRE_FALSE(catalogue.set(set).empty());
            for (const TapeLine &line : catalogue.set(set)) {
                for (const std::string &point : line.points)
                    CHECK(catalogue.find(point) != nullptr);
            }
        }
    }
}

TEST_CASE("limits are in SI: the unit beside the number is taken off once, at loading")
{
    // 2/32 in of tread, 1.5875 mm: the limit of 49 CFR 570.62 is rounded to 1.6 mm in the catalogue
    // (FORMAT.md)
    const Point *tread = realCatalogue().find("tread-depth");
    REQUIRE(tread != nullptr);
    const ReadingSpec &spec = tread->readings.front();
    CHECK(spec.dimension == Dimension::Length);
    CHECK(spec.lowSi.value() == doctest::Approx(0.0016));
    CHECK(tread->reading(spec.slug) == &spec);
    CHECK(tread->reading("weight-of-the-moon") == nullptr);
}

TEST_CASE("the points whose limits come from the rig's plates have the readings that are looked for")
{
    CHECK(realCatalogue().find("tire-pressure")->reading("cold-pressure")->dimension == Dimension::Pressure);
    CHECK(realCatalogue().find("wheel-nut-torque")->reading("nut-torque")->dimension == Dimension::Torque);
    CHECK(realCatalogue().find("nose-weight")->reading("nose-weight")->dimension == Dimension::Mass);
    CHECK(realCatalogue().find("gross-weight")->reading("gross-weight")->dimension == Dimension::Mass);
}

TEST_CASE("words: every language names every point, and what is unknown reads as its slug")
{
    for (const char *language : {"en", "es", "fr", "de"}) {
        const Texts &texts = realTexts(language);
        for (const Point &point : realCatalogue().points()) {
            CHECK(texts.point(point.slug).title != point.slug);
            CHECK(texts.grade(point.slug, 5) != "5");
        }
        CHECK(texts.point("no-such-point").look == "no-such-point");
        CHECK(texts.grade("no-such-point", 3) == "3");
    }
    CHECK(Texts::load("{", {}).error().code == Errc::Corrupt);
    CHECK(Texts::load("{}", {}).error().code == Errc::Corrupt);
    CHECK(Texts::load(R"({"phrases": {}})", {"{"}).error().code == Errc::Corrupt);
    CHECK(Texts::load(R"({"phrases": {}})", {"{}"}).error().code == Errc::Corrupt);
}
