// SPDX-License-Identifier: Apache-2.0
// Quantiles of first passage, by closed form where there is one and by halving where not.
#include "due/first_passage.hpp"

#include <cmath>
#include <numbers>

#include "base/contract.hpp"
#include "due/special_functions.hpp"

namespace snugwalk {
namespace {

// The x at which the rising `f` reaches `target`, between low and high.
template <typename F>
double halve(F f, double target, double low, double high)
{
    for (int i = 0; i < 200 && low < high; ++i) {
        const double middle = low + (high - low) / 2.0;
        if (middle <= low || middle >= high)
            break;
        (f(middle) < target ? low : high) = middle;
    }
    return high;
}

} // namespace

double normalCdf(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

double normalQuantile(double p)
{
    SNUG_ASSERT(p > 0.0 && p < 1.0);
    if (p > 0.5)
        return -normalQuantile(1.0 - p);
    // by the lower tail, which keeps its digits
    return -halve([](double x) { return -normalCdf(-x); }, -p, 0.0, 40.0);
}

LognormalRate lognormalFromMean(double mean, double sd)
{
    SNUG_ASSERT(mean > 0.0 && sd > 0.0);
    const double variance = std::log1p((sd / mean) * (sd / mean));
    return {std::log(mean) - variance / 2.0, std::sqrt(variance)};
}

double daysUntil(const LognormalRate &rate, double amount, double p)
{
    return amount <= 0.0 ? 0.0 : amount / std::exp(rate.m + rate.s * normalQuantile(1.0 - p));
}

double chanceWithin(const LognormalRate &rate, double amount, double days)
{
    if (amount <= 0.0)
        return 1.0;
    return days <= 0.0 ? 0.0 : normalCdf((rate.m - std::log(amount / days)) / rate.s);
}

double chanceWithin(const LumpyRate &rate, double amount, double days)
{
    if (amount <= 0.0)
        return 1.0;
    if (days <= 0.0)
        return 0.0;
    const double spread = std::sqrt(rate.variance * days);
    const double ahead = (rate.drift * days - amount) / spread;
    const double behind = (rate.drift * days + amount) / spread;
    // exp(2 drift amount / variance) Phi(-behind), whose exponents leave -ahead^2 / 2
    return normalCdf(ahead) + std::exp(-ahead * ahead / 2.0) * erfcScaled(behind / std::numbers::sqrt2) / 2.0;
}

double daysUntil(const LumpyRate &rate, double amount, double p)
{
    if (amount <= 0.0)
        return 0.0;
    double high = amount / rate.drift;
    while (chanceWithin(rate, amount, high) < p && high < 1e9)
        high *= 2.0;
    return halve([&](double days) { return chanceWithin(rate, amount, days); }, p, 0.0, high);
}

} // namespace snugwalk
