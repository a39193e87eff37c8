// SPDX-License-Identifier: Apache-2.0
// Integrals of lambda^k exp(-lambda u) against gamma densities.
#include "due/life/gamma_rate.hpp"

#include <cmath>

#include "base/contract.hpp"
#include "due/special_functions.hpp"

namespace snugwalk {
namespace {

constexpr int mostFindings = 8;
constexpr double leastLeft = 1e-7;
constexpr double narrow = 1e-4;

} // namespace

double GammaRate::quantile(double p) const
{
    SNUG_ASSERT(a > 0.0 && b > 0.0 && p > 0.0 && p < 1.0);
    double low = 0.0;
    double high = a + 1.0;
    while (gammaUpper(a, high) > 1.0 - p && high < 1e12)
        high *= 2.0;
    for (int i = 0; i < 200; ++i) {
        const double middle = low + (high - low) / 2.0;
        if (middle <= low || middle >= high)
            break;
        (gammaUpper(a, middle) > 1.0 - p ? low : high) = middle;
    }
    return high / b;
}

double GammaRate::noneWithin(double u) const { return std::exp(-a * std::log1p(u / b)); }

double GammaRate::exposureUntil(double p) const
{
    SNUG_ASSERT(p > 0.0 && p < 1.0);
    return b * std::expm1(-std::log1p(-p) / a);
}

void GammaMixture::pass(double u)
{
    SNUG_ASSERT(u >= 0.0);
    for (Term &term : m_terms)
        term.b += u;
}

Status GammaMixture::find(double from, double until)
{
    SNUG_ASSERT(from >= 0.0 && until > from);
    const Error many{Errc::OutOfRange, "too many findings for the closed form", "",
                     "weigh them on a grid, as `due posterior` does"};
    if (m_found == mostFindings)
        return many;
    ++m_found;
    if (until - from < narrow * m_prior.b) {
        ++m_points;
        pass(from + (until - from) / 2.0);
        return done();
    }
    std::vector<Term> terms;
    terms.reserve(2 * m_terms.size());
    for (const Term &term : m_terms) {
        terms.push_back({term.sign, term.b + from});
        terms.push_back({-term.sign, term.b + until});
    }
    m_terms = std::move(terms);
    double size = 0.0;
    for (const Term &term : m_terms)
        size += std::exp((m_prior.a + m_points) * std::log(m_prior.b / term.b));
    return sum(m_prior.a + m_points, 0.0) > leastLeft * size ? done() : Status(many);
}

double GammaMixture::sum(double power, double more) const
{
    double sum = 0.0;
    for (const Term &term : m_terms)
        sum += term.sign * std::exp(power * std::log(m_prior.b / (term.b + more)));
    return sum;
}

double GammaMixture::evidence() const
{
    // a (a + 1) ... / b^points from the powers of lambda that points bring
    double rising = 1.0;
    for (int i = 0; i < m_points; ++i)
        rising *= (m_prior.a + i) / m_prior.b;
    return rising * sum(m_prior.a + m_points, 0.0);
}

double GammaMixture::meanRate() const
{
    const double power = m_prior.a + m_points;
    return power / m_prior.b * sum(power + 1.0, 0.0) / sum(power, 0.0);
}

double GammaMixture::survives(double u) const
{
    const double power = m_prior.a + m_points;
    return sum(power, u) / sum(power, 0.0);
}

} // namespace snugwalk
