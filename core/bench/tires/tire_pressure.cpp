// SPDX-License-Identifier: Apache-2.0
// The gas law between two places, and the setting that follows from it.
#include "bench/tires/tire_pressure.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "bench/standard_air.hpp"

namespace snugwalk {
namespace {

constexpr Pressure mostShown = Pressure::fromSi(1e6);
constexpr Pressure warmDoubt = psi(2.0);                                        // common practice, no source
constexpr TemperatureDifference coldDoubt = TemperatureDifference::fromSi(3.0); // common practice, no source
constexpr const char *lawSource = "ideal gas law; USSA-1976";

Status checkTemperature(Temperature t, const char *where)
{
    if (t >= celsius(-40.0) && t <= celsius(90.0))
        return done();
    return Error{Errc::OutOfRange, "the tire's temperature is outside -40 degC to 90 degC", where,
                 "give the temperature with its unit, such as 20 degC or 68 degF"};
}

Status checkPressure(Pressure p, const char *where)
{
    if (p > Pressure() && p <= mostShown)
        return done();
    return Error{Errc::OutOfRange, "the pressure is outside 0 to 1,000 kPa (145 psi)", where,
                 "give the gauge pressure with its unit, such as 65 psi or 4.5 bar"};
}

Status checkSetting(const TireSetting &s)
{
    SNUG_TRY(checkPressure(s.placard, "placard"));
    if (s.maximum)
        SNUG_TRY(checkPressure(*s.maximum, "maximum"));
    if (s.maximum && *s.maximum < s.placard)
        return Error{Errc::InvalidInput, "the tire's maximum is below the placard", "maximum",
                     "read the sidewall and the placard again; the tire may be the wrong one"};
    return done();
}

TirePlace shifted(TirePlace place, TemperatureDifference by)
{
    place.tire = std::clamp(place.tire + by, celsius(-40.0), celsius(90.0));
    return place;
}

Pressure between(const TireSetting &s, Pressure wanted)
{
    const Pressure atLeast = std::max(wanted, s.placard);
    return s.maximum ? std::min(atLeast, *s.maximum) : atLeast;
}

} // namespace

Result<Pressure> pressureElsewhere(Pressure shown, const TirePlace &from, const TirePlace &to)
{
    SNUG_TRY(checkPressure(shown, "pressure"));
    SNUG_TRY(checkTemperature(from.tire, "temperature from"));
    SNUG_TRY(checkTemperature(to.tire, "temperature to"));
    const auto airFrom = standardAir(from.altitude);
    if (!airFrom)
        return airFrom.error();
    const auto airTo = standardAir(to.altitude);
    if (!airTo)
        return airTo.error();
    const double ratio = to.tire.si() / from.tire.si();
    return gauge(AbsolutePressure::fromSi(absolute(shown, *airFrom).si() * ratio), *airTo);
}

Result<Estimate> pressureEstimate(Pressure shown, const TirePlace &from, const TirePlace &to, bool fromIsWarm)
{
    const auto there = pressureElsewhere(shown, from, to);
    if (!there)
        return there.error();
    const Pressure doubt = fromIsWarm ? warmDoubt : Pressure();
    Estimate e;
    e.value = there->si();
    e.low = (*there - doubt).si();
    e.high = (*there + doubt).si();
    e.unit = "Pa";
    e.basis = "computed";
    e.source = lawSource;
    if (fromIsWarm)
        e.warnings = {"warm_start"};
    return e;
}

Result<Estimate> pressureToSet(const TireSetting &s)
{
    SNUG_TRY(checkSetting(s));
    const auto wanted = pressureElsewhere(s.placard, s.coldest, s.now);
    if (!wanted)
        return wanted.error();
    const auto least = pressureElsewhere(s.placard, shifted(s.coldest, coldDoubt), s.now);
    const auto most = pressureElsewhere(s.placard, shifted(s.coldest, -1.0 * coldDoubt), s.now);
    if (!least || !most)
        return least ? most.error() : least.error();
    Estimate e;
    e.value = between(s, *wanted).si();
    e.low = between(s, *least).si();
    e.high = between(s, *most).si();
    e.unit = "Pa";
    e.basis = *wanted > s.placard ? "computed" : "maker";
    e.source = *wanted > s.placard ? lawSource : "placard";
    if (s.maximum && *wanted > *s.maximum)
        e.warnings.emplace_back("set_outside");
    if (!s.maximum)
        e.warnings.emplace_back("maximum_unknown");
    return e;
}

std::string_view slug(PressureCall call)
{
    switch (call) {
    case PressureCall::Low:
        return "low";
    case PressureCall::AtLeastPlacard:
        return "at_least_placard";
    case PressureCall::NotLow:
        return "not_low";
    case PressureCall::OverMaximum:
        return "over_maximum";
    }
    return "low";
}

PressureCall judge(Pressure shown, bool warm, Pressure placard, std::optional<Pressure> maximum)
{
    if (!(shown >= placard)) // NaN is low
        return PressureCall::Low;
    if (warm)
        return PressureCall::NotLow;
    return maximum && shown > *maximum ? PressureCall::OverMaximum : PressureCall::AtLeastPlacard;
}

} // namespace snugwalk
