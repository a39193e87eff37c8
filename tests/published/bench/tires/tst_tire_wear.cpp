// SPDX-License-Identifier: Apache-2.0
// Tread and air over time. [49CFR570] 570.62 has 2/32 in as the limit; the worked example is the trade's
// (common practice): 7/32 in at 12,000 mi, 5/32 at 21,000, 0.222/32 in a thousand miles, 13,500 mi left.
#include "../sourced.hpp"

#include "base/units.hpp"
#include "bench/tires/tire_wear.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

Length thirtySeconds(double n) { return metres(n / 32.0 * 0.0254); }
CivilDate day(const char *text) { return parseDate(text).value(); }

} // namespace

TEST_CASE("13,500 miles left, with its band")
{
    const TreadReadings r{thirtySeconds(7), thirtySeconds(5), miles(9000), thirtySeconds(2)};
    const Estimate left = treadLeft(r).value();
    SOURCED("CP", left.value / 1609.344, 13'500, 1e-6);
    // computed apart: sd = sqrt(2 (1/sqrt 3 / 2)^2 + (1/sqrt 3 / 3)^2) = 0.451335, times 1.2815516
    SOURCED("computed", std::log(left.high / left.value), 1.2815516 * 0.4513355, 1e-6);
    CHECK(left.low * left.high == doctest::Approx(left.value * left.value));
    // in front of a motorized rig 4/32 in is the limit: half of that is left
    const TreadReadings front{thirtySeconds(7), thirtySeconds(5), miles(9000), thirtySeconds(4)};
    SOURCED("49CFR570", treadLeft(front).value().value / 1609.344, 4500, half(1));
}

TEST_CASE("at the limit nothing is left; too little worn, or too short a way, tells nothing")
{
    TreadReadings r{thirtySeconds(7), thirtySeconds(2), miles(9000), thirtySeconds(2)};
    const Estimate none = treadLeft(r).value();
    SOURCED("49CFR570", none.value, 0.0, 0.0);
    CHECK(none.warnings == std::vector<std::string>{"at_limit"});
    r.now = thirtySeconds(6.5);
    CHECK(treadLeft(r).error().where == "before");
    r.now = thirtySeconds(8); // grown
    CHECK(treadLeft(r).error().where == "before");
    r.now = thirtySeconds(5);
    r.driven = miles(500);
    CHECK(treadLeft(r).error().where == "driven");
    r.now = metres(std::nan(""));
    CHECK(treadLeft(r).error().where == "now");
}

TEST_CASE("65 psi at 20 degC, a month later 59.6 psi at 0 degC: nothing was lost; 56 psi is a leak")
{
    const ColdReading first{psi(65), {celsius(20), {}}, day("2026-09-01")};
    const ColdReading cold{psi(59.562787), {celsius(0), {}}, day("2026-10-01")};
    const Estimate none = leakRate(first, cold).value();
    SOURCED("computed", none.value, 0.0, 1e-7);
    CHECK(none.warnings.empty());
    const ColdReading less{psi(56), {celsius(0), {}}, day("2026-10-01")};
    const Estimate leak = leakRate(first, less).value();
    CHECK(leak.value > 0.05);
    CHECK(leak.warnings == std::vector<std::string>{"leaking"});
    CHECK(leakRate(less, first).error().where == "second-date");
}

TEST_CASE("4 psi of 80 in 61 days at one place: 5 % in two months is 2.5 % a month")
{
    const ColdReading first{psi(80), {celsius(20), {}}, day("2026-06-01")};
    const ColdReading second{psi(76), {celsius(20), {}}, day("2026-08-01")};
    SOURCED("computed", leakRate(first, second).value().value, 0.05 / (61.0 / (365.2425 / 12.0)), 1e-12);
}
