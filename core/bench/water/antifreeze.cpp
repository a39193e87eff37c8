// SPDX-License-Identifier: Apache-2.0
// Cylinders, fixtures and one mixing rule.
#include "bench/water/antifreeze.hpp"

#include <array>
#include <cmath>
#include <numbers>

#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr double inch = 0.0254;
constexpr double gallon = 231.0 * inch * inch * inch;
// Common practice, no source.
constexpr double pumpGallons = 0.1;
constexpr double trapGallons = 0.125;
constexpr double toiletGallons = 0.13;
constexpr double washerGallons = 0.5;
constexpr double losses = 1.3;
constexpr double doubt = 0.20;
constexpr std::size_t mostRuns = 100;
constexpr double mostMixed = 1.0; // m³

struct Pipe {
    double nominal; // in
    double bore;    // in
};
constexpr std::array pipes = {Pipe{0.375, 0.36}, Pipe{0.5, 0.485}, Pipe{0.75, 0.681}};

Status checkSystem(const WaterSystem &s)
{
    if (s.runs.empty() || s.runs.size() > mostRuns)
        return Error{Errc::InvalidInput, "no pipe, or more than 100 runs", "pipe",
                     "give the length of pipe of each size"};
    for (const PipeRun &run : s.runs) {
        SNUG_TRY(within(
            0.0, run.length.si(), 300.0,
            {Errc::OutOfRange, "no rig has that much pipe", "pipe", "give it with its unit, such as 60 ft"}));
        SNUG_TRY(within(0.004, run.bore.si(), 0.050,
                        {Errc::OutOfRange, "no water line is that wide", "size", "such as 1/2 in"}));
    }
    SNUG_TRY(within(0, s.traps, 40,
                    {Errc::OutOfRange, "no rig has that many drain traps", "traps", "give 0 to 40"}));
    return within(0.0, s.heater.value_or(Volume()).si(), 0.1,
                  {Errc::OutOfRange, "no water heater holds that", "heater",
                   "give its volume, such as 6 gal, or leave it out when it is bypassed"});
}

Status checkShare(double share, const char *where)
{
    return within(0.0, share, 1.0,
                  {Errc::OutOfRange, "a strength lies between 0 and 100 %", where, "such as 100 %"});
}

Status checkMixed(Volume v, const char *where)
{
    return within(0.0, v.si(), mostMixed,
                  {Errc::OutOfRange, "no rig's lines hold that", where, "give 0 to 1,000 L"});
}

} // namespace

std::optional<Length> pexBore(Length nominal)
{
    for (const Pipe &pipe : pipes) {
        if (std::fabs(pipe.nominal * inch - nominal.si()) < 0.5e-3)
            return Length::fromSi(pipe.bore * inch);
    }
    return std::nullopt;
}

Result<Estimate> antifreezeVolume(const WaterSystem &s)
{
    SNUG_TRY(checkSystem(s));
    double volume = 0.0;
    for (const PipeRun &run : s.runs)
        volume += (run.bore * run.bore * run.length).si() * std::numbers::pi / 4.0;
    const double fixtures = trapGallons * s.traps + (s.pump ? pumpGallons : 0.0) +
                            (s.toilet ? toiletGallons : 0.0) + (s.washer ? washerGallons : 0.0);
    const double total = losses * (volume + fixtures * gallon) + s.heater.value_or(Volume()).si();
    Estimate e = around(total, doubt * total, {"m³", "common_practice", "CP"});
    if (s.heater && s.heater->si() > 0.0)
        e.warnings.emplace_back("heater_not_bypassed");
    return e;
}

Result<Estimate> strengthAfterMixing(double strength, Volume added, Volume water)
{
    SNUG_TRY(checkShare(strength, "strength"));
    SNUG_TRY(checkMixed(added, "added"));
    SNUG_TRY(checkMixed(water, "water"));
    if (!(added.si() > 0.0))
        return Error{Errc::OutOfRange, "nothing was added", "added", "give how much goes in"};
    const double mixed = strength * (added / (added + water));
    return around(mixed, 0.0, {"1", "computed", "mixing rule"});
}

Result<Estimate> addedForStrength(double strength, double wanted, Volume water)
{
    SNUG_TRY(checkShare(strength, "strength"));
    SNUG_TRY(checkMixed(water, "water"));
    if (!(wanted >= 0.0 && wanted < strength))
        return Error{Errc::OutOfRange, "no amount gives that strength", "wanted",
                     "give less than the strength of what goes in"};
    const double added = wanted * water.si() / (strength - wanted);
    return around(added, 0.0, {"m³", "computed", "mixing rule"});
}

} // namespace snugwalk
