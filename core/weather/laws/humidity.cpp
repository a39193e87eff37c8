// SPDX-License-Identifier: Apache-2.0
// The Magnus form, forward and back.
#include "weather/laws/humidity.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double magnusA = 17.625;
constexpr double magnusB = 243.04;
constexpr double driest = 1e-3; // percent; the logarithm of less soon means nothing

double inCelsius(Temperature t) { return (t - celsius(0.0)).si(); }

} // namespace

AbsolutePressure saturationPressure(Temperature at)
{
    const double t = inCelsius(at);
    return AbsolutePressure::fromSi(610.94 * std::exp(magnusA * t / (magnusB + t)));
}

AbsolutePressure saturationPressureFao(Temperature at)
{
    const double t = inCelsius(at);
    return AbsolutePressure::fromSi(610.8 * std::exp(17.27 * t / (t + 237.3)));
}

Result<Temperature> dewPoint(Temperature air, double humidity)
{
    const double t = inCelsius(air);
    if (!(t >= -40.0 && t <= 50.0))
        return Error{Errc::OutOfRange, "the dew point is not known there", "temperature",
                     "give -40 °C to 50 °C"};
    if (!(humidity >= driest) || !std::isfinite(humidity))
        return Error{Errc::OutOfRange, "no air is that dry", "humidity", "give percent above 0, such as 60"};
    const double g = std::log(std::min(humidity, 100.0) / 100.0) + magnusA * t / (magnusB + t);
    return celsius(magnusB * g / (magnusA - g));
}

double relativeHumidity(Temperature air, Temperature dew)
{
    return std::min(100.0, 100.0 * (saturationPressure(dew) / saturationPressure(air)));
}

} // namespace snugwalk
