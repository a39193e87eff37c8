// SPDX-License-Identifier: Apache-2.0
// A beam, a pivot and a bathroom scale. Common practice, no source, but for the lever.
#include "../sourced.hpp"

#include "base/units.hpp"
#include "bench/weights/lever_scale.hpp"

using namespace snugwalk;

namespace {

constexpr double foot = 0.3048;

} // namespace

TEST_CASE("tongue 1 ft from the pivot, scale 3 ft: three times the reading less the bare beam")
{
    const LeverScale l{kilograms(45), kilograms(3), metres(foot), metres(3 * foot)};
    const Estimate e = tongueByLever(l).value();
    SOURCED("CP", e.value, 126.0, 1e-9);
    CHECK(e.low < 126.0);
    CHECK(e.high == doctest::Approx(2 * 126.0 - e.low));
}

TEST_CASE("only up to 140 kg, about 300 lb, and never a fifth wheel")
{
    LeverScale l{kilograms(140.0 / 3.0), Mass(), metres(foot), metres(3 * foot)};
    CHECK(tongueByLever(l).value().value == doctest::Approx(140.0));
    l.reading = kilograms(46.8);
    CHECK(tongueByLever(l).error().where == "reading");
    CHECK(tongueByLever(l).error().act.find("platform") != std::string::npos);
    l.reading = kilograms(20);
    l.fifthWheel = true;
    CHECK(tongueByLever(l).error().code == Errc::Unsupported);
}

TEST_CASE("a beam laid the wrong way round is refused by the name of its length")
{
    CHECK(tongueByLever({kilograms(45), Mass(), metres(0.9), metres(0.3)}).error().where == "to-scale");
    CHECK(tongueByLever({kilograms(2), kilograms(3), metres(0.3), metres(0.9)}).error().where == "tare");
    CHECK(tongueByLever({kilograms(45), Mass(), metres(0.0), metres(0.9)}).error().where == "to-tongue");
}
