// SPDX-License-Identifier: Apache-2.0
// Several tires: the trade's worked example (common practice) of 6,250 lb on four tires, left side 3,350 lb,
// and [49CFR571] 571.120: all tires together carry the axle's rating, passenger tires at 1 / 1.10 of theirs.
#include "../sourced.hpp"

#include "base/units.hpp"
#include "bench/tires/axle_tires.hpp"

using namespace snugwalk;

namespace {

constexpr double pound = 0.45359237;
Mass pounds(double v) { return kilograms(v * pound); }

} // namespace

TEST_CASE("left tires carry 1,675 lb each")
{
    AxleTires axle{TireClass::LightTruck, pounds(2680), 4, pounds(6250), pounds(3350), pounds(7000)};
    const auto answer = tiresUnderAxles(axle).value();
    SOURCED("CP", answer.perTire.value / pound, 1675, 1e-9);
    SOURCED("computed", answer.share.value, 0.625, 1e-12);
    CHECK(answer.share.warnings.empty());
    axle.oneSide.reset();
    const auto guessed = tiresUnderAxles(axle).value();
    CHECK(guessed.perTire.value / pound == doctest::Approx(1562.5));
    CHECK(guessed.perTire.warnings == std::vector<std::string>{"sides_unknown"});
}

TEST_CASE("four passenger tires of 1,760 lb carry 6,400 lb on a trailer: under an axle rating of 7,000")
{
    const AxleTires axle{TireClass::Passenger, pounds(1760), 4, pounds(6500), pounds(3250), pounds(7000)};
    const auto answer = tiresUnderAxles(axle).value();
    SOURCED("49CFR571", answer.capacity.value / pound, 6400, 1e-9);
    CHECK(answer.share.warnings ==
          std::vector<std::string>{"passenger_on_trailer", "over_tires", "tires_under_rating"});
}

TEST_CASE("what cannot be is refused, with its name")
{
    const AxleTires axle{TireClass::LightTruck, pounds(2680), 4, pounds(6250), {}, {}};
    AxleTires bad = axle;
    bad.tires = 3;
    CHECK(tiresUnderAxles(bad).error().where == "tires");
    bad = axle;
    bad.oneSide = pounds(2000);
    CHECK(tiresUnderAxles(bad).error().where == "heavier-side");
    bad = axle;
    bad.load = kilograms(std::nan(""));
    CHECK(tiresUnderAxles(bad).error().where == "axle-load");
    bad = axle;
    bad.maxLoad = pounds(10);
    CHECK(tiresUnderAxles(bad).error().where == "max-load");
}
