// SPDX-License-Identifier: Apache-2.0
// Parts in a million, both ways.
#include "bench/water/sanitizing.hpp"

#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr double bleachDoubt = 0.15; // it loses chlorine with age; common practice, no source
constexpr double million = 1e6;

Status checkWater(Volume water)
{
    if (water.si() > 0.0 && water.si() <= 1.0)
        return done();
    return Error{Errc::OutOfRange, "no rig carries that much water", "water",
                 "give what tank, lines and heater hold, such as 40 gal"};
}

Status checkFraction(double fraction)
{
    return within(0.01, fraction, 0.15,
                  {Errc::OutOfRange, "no bleach is that strong or that weak", "bleach",
                   "give the label's percentage, such as 6 %"});
}

void addStrengthWarning(double fraction, Estimate &e)
{
    if (fraction < 0.05 || fraction > 0.085)
        e.warnings.emplace_back("bleach_unusual");
}

} // namespace

Result<Estimate> bleachVolume(Volume water, double ppm, double fraction)
{
    SNUG_TRY(checkWater(water));
    SNUG_TRY(checkFraction(fraction));
    SNUG_TRY(within(1.0, ppm, 200.0,
                    {Errc::OutOfRange, "no water system is dosed like that", "ppm", "give 1 to 200"}));
    const double volume = ppm * water.si() / (million * fraction);
    Estimate e = around(volume, bleachDoubt * volume, {"m³", "common_practice", "CP"});
    addStrengthWarning(fraction, e);
    if (ppm > 100.0)
        e.warnings.emplace_back("dose_high");
    return e;
}

Result<Estimate> chlorineOf(Volume water, Volume bleach, double fraction)
{
    SNUG_TRY(checkWater(water));
    SNUG_TRY(checkFraction(fraction));
    SNUG_TRY(within(0.0, bleach.si(), 0.1,
                    {Errc::OutOfRange, "no rig takes that much bleach", "added", "such as 4 fl oz"}));
    const double ppm = million * fraction * (bleach / water);
    Estimate e = around(ppm, bleachDoubt * ppm, {"1", "common_practice", "CP"});
    addStrengthWarning(fraction, e);
    return e;
}

} // namespace snugwalk
