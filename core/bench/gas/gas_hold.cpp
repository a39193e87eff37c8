// SPDX-License-Identifier: Apache-2.0
// Trapped gas between two readings.
#include "bench/gas/gas_hold.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double inchOfWater = 249.0889;
constexpr double pipeDoubt = 0.3;
constexpr double gaugeDoubt = 0.1 * inchOfWater;
constexpr double guard = 0.5 * inchOfWater;
constexpr double leastTime = 180.0;

bool isPipe(Temperature t) { return t >= celsius(-30.0) && t <= celsius(60.0); }

Status checkHold(const GasHold &h)
{
    const auto refuse = [](const char *what, const char *where, const char *act) {
        return Error{Errc::OutOfRange, what, where, act};
    };
    if (!(h.start.si() >= 0.0 && h.start.si() <= 35e3))
        return refuse("not the pressure of a leak check", "start",
                      "give 0 to 35 kPa (140 inWC), such as 9 inWC");
    if (!(h.end.si() >= -1e3 && h.end.si() <= 35e3))
        return refuse("not the pressure of a leak check", "end",
                      "give 0 to 35 kPa (140 inWC), such as 9 inWC");
    if (!(h.time.si() >= 10.0 && h.time.si() <= 86400.0))
        return refuse("no check takes that long", "time", "give 10 s to 24 h, such as 3 min");
    if (!isPipe(h.startPipe))
        return refuse("no pipe is that cold or hot", "temperature", "give -30 to 60 °C");
    if (h.endPipe && !isPipe(*h.endPipe))
        return refuse("no pipe is that cold or hot", "end-temperature", "give -30 to 60 °C");
    if (h.piping && !(h.piping->si() >= 1e-6 && h.piping->si() <= 1.0))
        return refuse("no piping of a rig holds that", "piping", "give 1 mL to 1,000 L, such as 0.5 L");
    if (!(h.air.si() >= 50e3 && h.air.si() <= 110e3))
        return refuse("no air is that thin or thick", "air", "give 50 to 110 kPa");
    return done();
}

Estimate figure(double value, double doubt, const char *unit)
{
    Estimate e;
    e.value = value;
    e.low = value - doubt;
    e.high = value + doubt;
    e.unit = unit;
    e.level = 0.95;
    e.basis = "computed";
    e.source = "ideal gas law";
    return e;
}

void warn(Estimate &e, bool when, const char *slug)
{
    if (when)
        e.warnings.emplace_back(slug);
}

} // namespace

Result<GasHoldResult> gasHold(const GasHold &h)
{
    SNUG_TRY(checkHold(h));
    const double before = absolute(h.start, h.air).si();
    const double after = absolute(h.end, h.air).si();
    const double kelvin = h.startPipe.si();
    const double ratio = h.endPipe.value_or(h.startPipe).si() / kelvin;
    const double thermal = std::sqrt(2.0) * pipeDoubt * before / kelvin;

    GasHoldResult r;
    r.temperature = figure(before * (ratio - 1.0), thermal, "Pa");
    Estimate &lost = r.lost;
    lost = figure(before * ratio - after, std::hypot(thermal, std::sqrt(2.0) * gaugeDoubt), "Pa");
    warn(lost, lost.low > 0.0, "fell");
    warn(lost, lost.high < 0.0, "rose");
    warn(lost, lost.low <= 0.0 && lost.high >= 0.0, "not_shown");
    warn(lost, std::fabs(r.temperature.value) >= guard, "temperature_moved");
    warn(lost, !h.endPipe, "temperature_unknown");
    warn(lost, h.time.si() < leastTime, "too_short");
    warn(lost, std::fabs(h.start.si() - 9.0 * inchOfWater) > guard + 1.0, "not_nine");
    if (!h.endPipe)
        lost.inputsDefaulted.emplace_back("end-temperature");
    if (h.piping) {
        const double perPascal = h.piping->si() / after / h.time.si();
        r.flow = figure(lost.value * perPascal, (lost.high - lost.value) * perPascal, "m³/s");
    }
    return r;
}

Result<Estimate> cylinderFill(Mass waterCapacity)
{
    if (!(waterCapacity >= kilograms(1.0) && waterCapacity <= kilograms(500.0)))
        return Error{Errc::OutOfRange, "no cylinder holds that", "water-capacity",
                     "give the WC stamp, 1 to 500 kg, such as 47.6 lb"};
    Estimate e;
    e.value = 0.42 * waterCapacity.si();
    e.low = e.value;
    e.high = e.value;
    e.unit = "kg";
    e.basis = "published";
    e.source = "NFPA-58";
    return e;
}

} // namespace snugwalk
