// SPDX-License-Identifier: Apache-2.0
// The gas law against the gauge.
#include "bench/water/pressure_hold.hpp"

#include <array>
#include <cmath>

#include "base/units.hpp"
#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr auto callSlugs = std::to_array<std::string_view>({"held", "fell", "undecided"});
constexpr double mostPascals = 1e6;
constexpr double repeatShare = 0.005; // of full scale, the same gauge read twice; common practice, no source
constexpr double temperatureDoubt = 1.0; // K, common practice, no source
constexpr Duration leastHeld = Duration::fromSi(15.0 * 60.0);
constexpr Pressure usualMost = psi(60.0); // common practice, no source

Status checkTemperature(Temperature t, const char *where)
{
    return within(celsius(-20.0).si(), t.si(), celsius(60.0).si(),
                  {Errc::OutOfRange, "water lines are not tried at that temperature", where,
                   "give it with its unit, such as 68 degF"});
}

Status checkHold(const PressureHold &h)
{
    const char *act = "give the gauge pressure with its unit, such as 50 psi";
    if (!(h.start.si() > 0.0 && h.start.si() <= mostPascals))
        return Error{Errc::OutOfRange, "no water line holds that pressure", "start", act};
    SNUG_TRY(within(0.0, h.end.si(), mostPascals,
                    {Errc::OutOfRange, "no water line holds that pressure", "end", act}));
    SNUG_TRY(checkTemperature(h.startAt, "start-at"));
    SNUG_TRY(checkTemperature(h.endAt, "end-at"));
    SNUG_TRY(within(1.0, h.held.si(), 7.0 * 86400.0,
                    {Errc::OutOfRange, "no such time", "held", "give it with its unit, such as 15 min"}));
    SNUG_TRY(within(1e4, h.gaugeFull.si(), 1e7,
                    {Errc::OutOfRange, "no such gauge", "gauge", "give its full scale, such as 100 psi"}));
    return within(4e4, h.air.si(), 1.2e5,
                  {Errc::OutOfRange, "no such air pressure", "air", "leave it out at low altitude"});
}

} // namespace

std::string_view slug(HoldCall call) { return callSlugs.at(static_cast<std::size_t>(call)); }

Result<Held> pressureHeld(const PressureHold &h)
{
    SNUG_TRY(checkHold(h));
    const double trapped = absolute(h.start, h.air).si();
    const double ratio = h.endAt.si() / h.startAt.si();
    const double expected = trapped * ratio - h.air.si();
    const double perReading = repeatShare * h.gaugeFull.si();
    const double byTemperature = trapped / h.startAt.si() * temperatureDoubt;
    const double spread = std::sqrt(2.0 * (perReading * perReading + byTemperature * byTemperature));
    const double loss = expected - h.end.si();

    Held out;
    const Origin origin{"Pa", "computed", "ideal gas law"};
    out.expected = around(expected, byTemperature * std::sqrt(2.0), origin);
    out.loss = around(loss, spread, origin);
    out.call = HoldCall::Held;
    if (loss > spread)
        out.call = HoldCall::Fell;
    else if (loss < -spread)
        out.call = HoldCall::Undecided; // nothing pumps air in: a temperature or a reading is wrong
    auto &warnings = out.loss.warnings;
    if (out.call != HoldCall::Held)
        warnings.push_back("pressure_" + std::string(slug(out.call)));
    if (h.held < leastHeld)
        warnings.emplace_back("held_too_short");
    if (h.start > usualMost)
        warnings.emplace_back("pressure_high");
    if (h.start < h.gaugeFull * 0.1)
        warnings.emplace_back("gauge_coarse");
    return out;
}

} // namespace snugwalk
