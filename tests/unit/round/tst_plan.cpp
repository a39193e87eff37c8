// SPDX-License-Identifier: Apache-2.0
// Plans read strictly, and laid over what is usual without a gap.
#include <doctest/doctest.h>

#include "round/plan.hpp"
#include "support/book.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr std::string_view coast =
    R"({"legs":[{"from":"2027-02-01","until":"2027-04-30","lat":-45.36,"lon":170.83,)"
    R"("distance":"4000 km","road":"gravel","name":"coast"}]})";

Error refusal(std::string_view json)
{
    const auto plan = parsePlan(json);
    REQUIRE_FALSE(plan);
    CHECK_FALSE(plan.error().act.empty());
    return plan.error();
}

} // namespace

TEST_CASE("a plan is read with its units")
{
    const auto plan = parsePlan(coast);
    REQUIRE(plan);
    REQUIRE(plan->size() == 1);
    const PlanLeg &leg = plan->front();
    CHECK(leg.from == parseDate("2027-02-01").value());
    CHECK(leg.until == parseDate("2027-04-30").value());
    CHECK(leg.distance.si() == doctest::Approx(4'000'000.0));
    CHECK(leg.road == RoadClass::Gravel);
    CHECK_FALSE(leg.covered);
    CHECK(leg.name == "coast");
    const auto miles = parsePlan(
        R"({"legs":[{"from":"2027-02-01","until":"2027-02-01","lat":1,"lon":2,"covered":true,"distance":"100 mi"}]})");
    REQUIRE(miles);
    CHECK(miles->front().distance.si() == doctest::Approx(160'934.4)); // the mile is 1609.344 m by definition
    CHECK(miles->front().covered);
}

TEST_CASE("legs come in any order and are sorted; two on one day are refused")
{
    const auto plan = parsePlan(R"({"legs":[{"from":"2027-03-01","until":"2027-03-05","lat":1,"lon":2},)"
                                R"({"from":"2027-02-01","until":"2027-02-28","lat":3,"lon":4}]})");
    REQUIRE(plan);
    CHECK(plan->front().place.latitude == 3.0);
    const Error both = refusal(R"({"legs":[{"from":"2027-03-01","until":"2027-03-05","lat":1,"lon":2},)"
                               R"({"from":"2027-03-05","until":"2027-03-09","lat":3,"lon":4}]})");
    CHECK(both.what.find("2027-03-05") != std::string::npos);
}

TEST_CASE("what is wrong is told with its line or its leg and member")
{
    CHECK(refusal("{\n \"legs\": [,]\n}").where.find("line 2") != std::string::npos);
    CHECK(refusal("{}").where == "legs");
    CHECK(refusal(R"({"legs":[]})").where == "legs");
    CHECK(refusal(R"({"legs":[5]})").where == "legs[1]");
    CHECK(refusal(R"({"legs":[{"until":"2027-01-01","lat":1,"lon":2}]})").where == "legs[1].from");
    CHECK(refusal(R"({"legs":[{"from":"2027-02-30","until":"2027-03-01","lat":1,"lon":2}]})").where ==
          "legs[1].from");
    CHECK(refusal(R"({"legs":[{"from":"2027-03-02","until":"2027-03-01","lat":1,"lon":2}]})").where ==
          "legs[1].until");
    CHECK(refusal(R"({"legs":[{"from":"2027-03-01","until":"2027-03-01","lat":91,"lon":2}]})").where ==
          "legs[1].lat");
    CHECK(refusal(R"({"legs":[{"from":"2027-03-01","until":"2027-03-01","lat":"x","lon":2}]})").where ==
          "legs[1].lat");
    const std::string leg = R"({"legs":[{"from":"2027-03-01","until":"2027-03-01","lat":1,"lon":2,)";
    CHECK(refusal(leg + R"("distance":"4000"}]})").where == "legs[1].distance"); // a number needs its unit
    CHECK(refusal(leg + R"("distance":4000}]})").where == "legs[1].distance");
    CHECK(refusal(leg + R"("distance":"-3 km"}]})").code == Errc::OutOfRange);
    CHECK(refusal(leg + R"("distance":"3 psi"}]})").where == "legs[1].distance");
    CHECK(refusal(leg + R"("road":"ice"}]})").where == "legs[1].road");
    CHECK(refusal(leg + R"("covered":"yes"}]})").where == "legs[1].covered");
    CHECK(refusal(leg + R"("speed":80}]})").where == "legs[1].speed");
    CHECK(refusal(R"({"legs":[{"from":"2027-01-01","until":"2047-01-01","lat":1,"lon":2}]})").code ==
          Errc::OutOfRange);
}

TEST_CASE("days before, between and in legs follow one another; what is past is left out with its distance")
{
    const auto plan = parsePlan(R"({"legs":[{"from":"2027-01-01","until":"2027-01-20","lat":1,"lon":2,)"
                                R"("distance":"200 km","road":"smooth"},)"
                                R"({"from":"2027-02-10","until":"2027-02-19","lat":3,"lon":4,)"
                                R"("distance":"50 km","road":"gravel"}]})");
    REQUIRE(plan);
    RigHistory history;
    const LocalTime now = timeAt("2027-01-11T09:00:00Z");
    const Ahead ahead = aheadOf(*plan, history, nullptr, now);
    CHECK(ahead.from == parseDate("2027-01-11").value());
    CHECK(ahead.days.size() == 40); // to 19 February
    REQUIRE(ahead.drives.size() == 4);
    CHECK(ahead.drives[0].distance.si() == doctest::Approx(100'000.0)); // 10 of its 20 days are left
    CHECK(ahead.drives[3].distance.si() == doctest::Approx(50'000.0));
    CHECK(ahead.drives[3].equivalent > ahead.drives[3].distance); // gravel shakes more than its length
    CivilDate next = ahead.from;
    for (const PlannedDrive &drive : ahead.drives) {
        CHECK(drive.from == next);
        next = addDays(drive.until, 1);
    }
    CHECK(aheadOf(*plan, history, nullptr, timeAt("2028-01-01T09:00:00Z")).isEmpty());
}
