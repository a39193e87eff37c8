// SPDX-License-Identifier: Apache-2.0
// Sorption of water in wood, as two hydrates.
#include "bench/water/wood_moisture.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"
#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr double sorptionDoubt = 1.5; // points, common practice, no source
constexpr double coldReads = 0.175;   // points a kelvin at 15 %, common practice, no source
constexpr double coldDoubt = 0.025;
constexpr double coldAt = 15.0;
constexpr double meterDoubt = 1.0;   // points, common practice, no source
constexpr double overBaseline = 4.0; // points, common practice, no source
constexpr double wet = 20.0;         // percent; decay stops below it
constexpr double rising = 3.0;       // points, common practice, no source
constexpr double meterEnds = 30.0;   // percent, about fiber saturation
constexpr Temperature decayFrom = celsius(2.0);
constexpr Temperature decayTo = celsius(38.0);

Status checkReading(double reading, const char *where)
{
    if (reading > 0.0 && reading <= 60.0)
        return done();
    return Error{Errc::OutOfRange, "no meter shows that in wood", where, "give percent, such as 14 %"};
}

void addWarnings(const MoistureReading &r, const MoistureExcess &m, std::vector<std::string> &warnings)
{
    const double percent = m.corrected.value;
    if (m.excess.value > overBaseline)
        warnings.emplace_back("moisture_over_baseline");
    if (percent >= wet)
        warnings.emplace_back("moisture_wet");
    if (r.lastReading && r.reading - *r.lastReading >= rising)
        warnings.emplace_back("moisture_rising");
    const Temperature wood = r.wood.value_or(r.air);
    if (percent >= wet && wood >= decayFrom && wood <= decayTo)
        warnings.emplace_back("decay_possible");
    if (r.humidityWithin > 0.1)
        warnings.emplace_back("air_estimated");
    if (r.reading > meterEnds)
        warnings.emplace_back("beyond_meter");
}

// Points either way that a humidity known within so much makes of wood's own moisture.
double humidityDoubt(const MoistureReading &r)
{
    const auto at = [&](double humidity) {
        return equilibriumMoisture(r.air, std::clamp(humidity, 0.05, 0.95)).value().value; // r.air was taken
    };
    return (at(r.humidity + r.humidityWithin) - at(r.humidity - r.humidityWithin)) / 2.0;
}

} // namespace

Result<Estimate> equilibriumMoisture(Temperature air, double h)
{
    SNUG_TRY(within(celsius(0.0).si(), air.si(), celsius(60.0).si(),
                    {Errc::OutOfRange, "the law of wood and air ends there", "air",
                     "give the week's mean air temperature, 0 to 60 degC"}));
    SNUG_TRY(within(0.05, h, 0.95,
                    {Errc::OutOfRange, "the law of wood and air ends there", "humidity",
                     "give the week's mean relative humidity, 5 to 95 %"}));
    const double t = air.si() - 273.15;
    const double w = 349.0 + 1.29 * t + 0.0135 * t * t;
    const double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    const double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    const double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    const double kh = k * h;
    const double second = k1 * k2 * kh * kh;
    const double moisture =
        1800.0 / w * (kh / (1.0 - kh) + (k1 * kh + 2.0 * second) / (1.0 + k1 * kh + second));
    Estimate e = around(moisture, sorptionDoubt, {"%", "published", "FPL-GTR-282"});
    e.low = std::max(0.0, e.low);
    return e;
}

Result<Estimate> atTwentyDegrees(double reading, Temperature wood)
{
    SNUG_TRY(checkReading(reading, "reading"));
    SNUG_TRY(within(celsius(-20.0).si(), wood.si(), celsius(60.0).si(),
                    {Errc::OutOfRange, "no meter works in wood of that temperature", "wood",
                     "give the wood's temperature with its unit"}));
    const double colder = std::max(0.0, (celsius(20.0) - wood).si()) * reading / coldAt;
    return around(reading + coldReads * colder, coldDoubt * colder, {"%", "common_practice", "CP"});
}

Result<MoistureExcess> moistureExcess(const MoistureReading &r)
{
    if (r.lastReading)
        SNUG_TRY(checkReading(*r.lastReading, "last-reading"));
    const auto corrected = atTwentyDegrees(r.reading, r.wood.value_or(celsius(20.0)));
    if (!corrected)
        return corrected.error();
    const auto baseline = equilibriumMoisture(r.air, r.humidity);
    if (!baseline)
        return baseline.error();
    SNUG_TRY(within(0.0, r.humidityWithin, 0.5,
                    {Errc::OutOfRange, "no humidity is that uncertain", "humidity-within",
                     "give half of its range, 0 to 50 %"}));
    MoistureExcess m;
    m.corrected = *corrected;
    const double air = humidityDoubt(r);
    m.baseline =
        around(baseline->value, std::hypot(sorptionDoubt, air), {"%", baseline->basis, baseline->source});
    m.baseline.low = std::max(0.0, m.baseline.low);
    const double correction = corrected->high - corrected->value;
    const double spread = std::sqrt(sorptionDoubt * sorptionDoubt + air * air + meterDoubt * meterDoubt +
                                    correction * correction);
    m.excess = around(corrected->value - baseline->value, spread, {"%", "computed", "FPL-GTR-282"});
    if (!r.wood)
        m.excess.inputsDefaulted.emplace_back("wood");
    addWarnings(r, m, m.excess.warnings);
    return m;
}

} // namespace snugwalk
