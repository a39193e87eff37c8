// SPDX-License-Identifier: Apache-2.0
// Series, continued fractions and halving.
#include "due/special_functions.hpp"

#include <cmath>
#include <limits>
#include <numbers>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double enough = 1e-16;
constexpr int mostTerms = 10'000;

// One step of the modified Lentz method never divides by zero.
double awayFromZero(double v)
{
    constexpr double tiny = 1e-300;
    return std::abs(v) < tiny ? tiny : v;
}

double betaFraction(double a, double b, double x)
{
    double c = 1.0;
    double d = 1.0 / awayFromZero(1.0 - (a + b) * x / (a + 1.0));
    double f = d;
    for (int m = 1; m < mostTerms; ++m) {
        const double even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        d = 1.0 / awayFromZero(1.0 + even * d);
        c = awayFromZero(1.0 + even / c);
        f *= c * d;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / awayFromZero(1.0 + odd * d);
        c = awayFromZero(1.0 + odd / c);
        f *= c * d;
        if (std::abs(c * d - 1.0) < enough)
            break;
    }
    return f;
}

// lgamma of the C library writes a global; two threads may ask at once, the value is the same.
double logBeta(double a, double b) { return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b); }

double gammaLowerSeries(double a, double x)
{
    double term = 1.0 / a;
    double sum = term;
    for (int n = 1; n < mostTerms && term > sum * enough; ++n) {
        term *= x / (a + n);
        sum += term;
    }
    return sum * std::exp(a * std::log(x) - x - std::lgamma(a));
}

double gammaUpperFraction(double a, double x)
{
    double b = x + 1.0 - a;
    double c = std::numeric_limits<double>::infinity();
    double d = 1.0 / awayFromZero(b);
    double f = d;
    for (int n = 1; n < mostTerms; ++n) {
        const double an = -n * (n - a);
        b += 2.0;
        d = 1.0 / awayFromZero(an * d + b);
        c = awayFromZero(b + an / c);
        f *= c * d;
        if (std::abs(c * d - 1.0) < enough)
            break;
    }
    return f * std::exp(a * std::log(x) - x - std::lgamma(a));
}

} // namespace

double betaRegularized(double a, double b, double x)
{
    SNUG_ASSERT(a > 0.0 && b > 0.0 && x >= 0.0 && x <= 1.0);
    if (x <= 0.0 || x >= 1.0)
        return x;
    if (x > (a + 1.0) / (a + b + 2.0))
        return 1.0 - betaRegularized(b, a, 1.0 - x);
    return std::exp(a * std::log(x) + b * std::log1p(-x) - logBeta(a, b)) * betaFraction(a, b, x) / a;
}

double gammaUpper(double a, double x)
{
    SNUG_ASSERT(a > 0.0 && x >= 0.0);
    if (x <= 0.0)
        return 1.0;
    return x < a + 1.0 ? 1.0 - gammaLowerSeries(a, x) : gammaUpperFraction(a, x);
}

double erfcScaled(double x)
{
    SNUG_ASSERT(x >= 0.0);
    if (x < 2.0)
        return std::exp(x * x) * std::erfc(x);
    // 1 / (x + (1/2) / (x + 1 / (x + (3/2) / (x + ...)))), by the modified Lentz method
    double f = x;
    double c = x;
    double d = 0.0;
    for (int n = 1; n < mostTerms; ++n) {
        const double a = n / 2.0;
        d = 1.0 / (x + a * d);
        c = x + a / c;
        f *= c * d;
        if (std::abs(c * d - 1.0) < enough)
            break;
    }
    return std::numbers::inv_sqrtpi / f;
}

double studentQuantile(double p, double freedom)
{
    SNUG_ASSERT(p > 0.0 && p < 1.0 && freedom > 0.0);
    if (p > 0.5) // the lower tail keeps its digits
        return -studentQuantile(1.0 - p, freedom);
    const auto tail = [&](double t) { // P(T > t)
        return 0.5 * betaRegularized(freedom / 2.0, 0.5, freedom / (freedom + t * t));
    };
    double low = 0.0;
    double high = 1.0;
    while (tail(high) > p && high < 1e12)
        high *= 2.0;
    for (int i = 0; i < 200; ++i) {
        const double middle = low + (high - low) / 2.0;
        if (middle <= low || middle >= high)
            break;
        (tail(middle) > p ? low : high) = middle;
    }
    return -high;
}

} // namespace snugwalk
