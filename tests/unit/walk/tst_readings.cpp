// SPDX-License-Identifier: Apache-2.0
// Readings: units as typed, limits from the rig's plates, warnings that never change the mark.
#include <doctest/doctest.h>

#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Result<CheckedMark> read(const std::string &point, const TypedReading &typed, const Rig &rig = tandem())
{
    MarkDraft draft = passOf(point);
    draft.readings = {typed};
    return checkMark(draft, *realCatalogue().find(point), rig);
}

} // namespace

TEST_CASE("a reading is kept in SI with the unit it was read in")
{
    const auto checked = read("tire-pressure", {"cold-pressure", "wheel 1L", "50 psi"}).value();
    REQUIRE(checked.readings.size() == 1);
    CHECK(checked.readings[0].si ==
          doctest::Approx(344737.9).epsilon(1e-6)); // 6894.757 Pa a psi [NIST-SP811] B.9
    CHECK(checked.readings[0].place == "wheel 1L");
    CHECK(checked.readings[0].dimension == Dimension::Pressure);
    CHECK(checked.state == MarkState::Pass);
    CHECK(read("tire-pressure", {"cold-pressure", "wheel 1L", "342"})->readings[0].si ==
          doctest::Approx(342000));
}

TEST_CASE("the placard and the sidewall are the limits of a cold tire; a warning leaves the mark alone")
{
    const auto low = read("tire-pressure", {"cold-pressure", "wheel 2R", "300 kPa"}).value();
    REQUIRE(low.warnings.size() == 1);
    CHECK(low.warnings[0].place == "wheel 2R");
    CHECK(low.warnings[0].limits.lowSi == 340000.0);
    CHECK(low.warnings[0].limits.highSi == 345000.0);
    CHECK(low.warnings[0].limits.basis == "maker");
    CHECK(low.state == MarkState::Pass);
    CHECK(read("tire-pressure", {"cold-pressure", "wheel 2R", "340 kPa"})->warnings.empty());
    CHECK(read("tire-pressure", {"cold-pressure", "wheel 2R", "346 kPa"})->warnings.size() == 1);
    CHECK(read("tire-pressure", {"cold-pressure", "wheel 1L", "1 kPa"}, bareRig())
              ->warnings.empty()); // no plate read
}

TEST_CASE("a wrench tells too loose, never too tight")
{
    CHECK(read("wheel-nut-torque", {"nut-torque", "wheel 1L", "90 lb·ft"})->warnings.size() == 1); // 122 N·m
    CHECK(read("wheel-nut-torque", {"nut-torque", "wheel 1L", "200 lb·ft"})->warnings.empty());
}

TEST_CASE("a limit met exactly is met, in whatever unit")
{
    CHECK(read("landing-legs-up", {"leg-clearance", "", "12 in"})->warnings.empty());
    CHECK(read("landing-legs-up", {"leg-clearance", "", "304.8 mm"})->warnings.empty());
    CHECK(read("landing-legs-up", {"leg-clearance", "", "11.9 in"})->warnings.size() == 1);
}

TEST_CASE("what the scales show against the plates")
{
    const auto nose = read("nose-weight", {"nose-weight", "", "410 kg"}).value();
    REQUIRE(nose.warnings.size() == 1);
    CHECK(nose.warnings[0].limits.highSi == 400.0);
    CHECK(nose.warnings[0].limits.basis == "maker");
    CHECK(read("nose-weight", {"nose-weight", "", "399 kg"})->warnings.empty());
    const auto gross = read("gross-weight", {"gross-weight", "", "7001 lb"}).value(); // 3175.6 kg over 3175
    REQUIRE(gross.warnings.size() == 1);
    CHECK(gross.warnings[0].limits.basis == "maker");
    CHECK(read("gross-weight", {"gross-weight", "", "3174 kg"})->warnings.empty());
}

TEST_CASE("a limit of the catalogue holds where the rig has none")
{
    const Point *tread = realCatalogue().find("tread-depth");
    const std::string slug = tread->readings.front().slug;
    const auto worn = read("tread-depth", {slug, "wheel 1L", "1.5 mm"}).value();
    REQUIRE(worn.warnings.size() == 1);
    CHECK(worn.warnings[0].limits.basis == tread->readings.front().setBy);
    CHECK(read("tread-depth", {slug, "wheel 1L", "3/32"})
              ->warnings.empty()); // 2.38 mm: a bare fraction is inches
}

TEST_CASE("what is no reading here")
{
    const auto refused = [](const TypedReading &typed) {
        const auto checked = read("tire-pressure", typed);
        REQUIRE_FALSE(checked);
        CHECK(checked.error().where.starts_with("tire-pressure"));
        CHECK_FALSE(checked.error().act.empty());
        return checked.error().code;
    };
    CHECK(refused({"tread", "wheel 1L", "3 mm"}) == Errc::InvalidInput);
    CHECK(refused({"cold-pressure", "wheel 3L", "340 kPa"}) == Errc::InvalidInput);
    CHECK(refused({"cold-pressure", "wheel 1L", "340 kg"}) == Errc::InvalidInput);
    CHECK(refused({"cold-pressure", "wheel 1L", "much"}) == Errc::InvalidInput);
    CHECK(refused({"cold-pressure", "wheel 1L", ""}) == Errc::InvalidInput);
    CHECK(refused({"air-temperature", "", "-300 degC"}) == Errc::OutOfRange); // below 0 K
    CHECK_FALSE(read("pull-away-lap", {"cold-pressure", "", "1 kPa"}));
    CHECK_FALSE(read("tire-pressure", {"cold-pressure", "wheel 1L", "nan kPa"}));
}

TEST_CASE("one wheel is read once in a mark")
{
    MarkDraft draft = passOf("tire-pressure");
    draft.readings = {{"cold-pressure", "wheel 1L", "340 kPa"}, {"cold-pressure", "wheel 1L", "300 kPa"}};
    CHECK_FALSE(checkMark(draft, *realCatalogue().find("tire-pressure"), tandem()));
    draft.readings[1].place = "wheel 1R";
    CHECK(checkMark(draft, *realCatalogue().find("tire-pressure"), tandem()));
}
