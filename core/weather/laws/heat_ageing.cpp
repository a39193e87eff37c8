// SPDX-License-Identifier: Apache-2.0
// Exponentials of reciprocal temperatures.
#include "weather/laws/heat_ageing.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace snugwalk {
namespace {

constexpr double coldestKelvin = 223.0;
constexpr double hottestKelvin = 373.0;
constexpr double strongestElectronvolts = 3.0;
constexpr int dayParts = 16; // of a smooth periodic function: the mean of 16 is exact to 1e-12
constexpr double roofLow = 25.0 / 900.0;
constexpr double roofLikely = 0.03;
constexpr double roofHigh = 30.0 / 900.0;

bool isAgeing(Temperature t) { return t.si() >= coldestKelvin && t.si() <= hottestKelvin; }

Error badTemperature()
{
    return {Errc::OutOfRange, "no weather has this temperature", "temperature",
            "give -50 °C to 100 °C; a figure in °C is not one in K"};
}

bool isActivation(double v) { return v > 0.0 && v <= strongestElectronvolts; }

Error badActivation()
{
    return {Errc::OutOfRange, "no such activation energy", "activation",
            "give more than 0, at most 3 eV, such as 0.7"};
}

double factor(double kelvin, double activation, double reference)
{
    return std::exp(activation / boltzmannElectronvolts * (1.0 / reference - 1.0 / kelvin));
}

} // namespace

Result<double> ageingFactor(Temperature at, double activation, Temperature reference)
{
    if (!isAgeing(at) || !isAgeing(reference))
        return badTemperature();
    if (!isActivation(activation))
        return badActivation();
    return factor(at.si(), activation, reference.si());
}

Result<double> ageingFactorQ10(Temperature at, double q10, Temperature reference)
{
    if (!isAgeing(at) || !isAgeing(reference))
        return badTemperature();
    if (!(q10 >= 1.0 && q10 <= 10.0))
        return Error{Errc::OutOfRange, "no such factor for ten degrees", "q10", "give 1 to 10, such as 2"};
    return std::pow(q10, (at - reference).si() / 10.0);
}

double activationOfQ10(double q10, Temperature cooler, Temperature warmer)
{
    const double tens = (warmer - cooler).si() / 10.0;
    return boltzmannElectronvolts * tens * std::log(q10) / (1.0 / cooler.si() - 1.0 / warmer.si());
}

Result<double> meanAgeing(std::span<const Temperature> temperatures, double activation, Temperature reference)
{
    if (temperatures.empty())
        return Error{Errc::InvalidInput, "no temperatures", "temperature", "give one at least"};
    double sum = 0.0;
    for (const Temperature t : temperatures) {
        const Result<double> one = ageingFactor(t, activation, reference);
        if (!one)
            return one.error();
        sum += *one;
    }
    return sum / static_cast<double>(temperatures.size());
}

Result<Temperature> equivalentTemperature(double meanFactor, double activation, Temperature reference)
{
    if (!isAgeing(reference))
        return badTemperature();
    if (!isActivation(activation))
        return badActivation();
    if (!(meanFactor > 0.0) || !std::isfinite(meanFactor))
        return Error{Errc::OutOfRange, "no such speed of ageing", "factor", "give a number above 0"};
    const double inverse = 1.0 / reference.si() - boltzmannElectronvolts * std::log(meanFactor) / activation;
    const Temperature same = Temperature::fromSi(1.0 / inverse);
    if (!isAgeing(same))
        return badTemperature();
    return same;
}

double dayAgeing(Temperature low, Temperature high, double activation, Temperature reference)
{
    const double middle = (low.si() + high.si()) / 2.0;
    const double swing = (high.si() - low.si()) / 2.0;
    double sum = 0.0;
    for (int i = 0; i < dayParts; ++i) {
        const double kelvin = middle + swing * std::cos(2.0 * std::numbers::pi * i / dayParts);
        sum += factor(std::clamp(kelvin, coldestKelvin, hottestKelvin), activation, reference.si());
    }
    return sum / dayParts;
}

Result<Estimate> darkSurface(Temperature air, double irradiance)
{
    if (!isAgeing(air))
        return badTemperature();
    if (!(irradiance >= 0.0 && irradiance <= 1400.0))
        return Error{Errc::OutOfRange, "the sun never gives that much", "irradiance", "give 0 to 1,400 W/m²"};
    Estimate surface;
    surface.value = air.si() + roofLikely * irradiance;
    surface.low = air.si() + roofLow * irradiance;
    surface.high = air.si() + roofHigh * irradiance;
    surface.unit = "K";
    surface.basis = "common_practice";
    surface.source = "CP";
    return surface;
}

} // namespace snugwalk
