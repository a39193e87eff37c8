// SPDX-License-Identifier: Apache-2.0
// Adding up months and looking between them.
#include "due/aging/age_line.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

double power(double rate, double gamma) { return std::exp(gamma * std::log(rate)); }

double endOf(const RateRange &rate, Doubt doubt)
{
    return doubt == Doubt::Slow ? rate.low : doubt == Doubt::Fast ? rate.high : rate.value;
}

} // namespace

AgeWeights doubted(const Exposure &exposure, const AgeWeights &weights, Doubt doubt)
{
    AgeWeights out = weights;
    if (doubt == Doubt::Middle)
        return out;
    for (std::size_t k = 0; k < ageDriverCount; ++k) {
        if (!(weights.gamma[k] > 0.0))
            continue;
        double harder = 0.0;
        for (const Stretch &stretch : exposure.usual)
            harder += (stretch.until - stretch.from) * std::log(stretch.rates[k].value);
        const bool more = (harder > 0.0) == (doubt == Doubt::Fast);
        out.gamma[k] += more ? gammaDoubt : -gammaDoubt;
    }
    return out;
}

double agingRate(const DriverRates &rates, const AgeWeights &weights, Doubt doubt)
{
    double product = 1.0;
    for (std::size_t k = 0; k < ageDriverCount; ++k) {
        if (weights.gamma[k] > 0.0)
            product *= power(endOf(rates[k], doubt), weights.gamma[k]);
    }
    return product;
}

AgeLine::AgeLine(const Exposure &exposure, const AgeWeights &weights, Doubt doubt)
{
    double aged = 0.0;
    const AgeWeights exponents = doubted(exposure, weights, doubt);
    const auto add = [&](const Stretch &stretch) {
        aged += (stretch.until - stretch.from) * agingRate(stretch.rates, exponents, doubt);
        m_days.push_back(stretch.until);
        m_aged.push_back(aged);
    };
    m_days.push_back(exposure.known.front().from);
    m_aged.push_back(0.0);
    for (const Stretch &stretch : exposure.known)
        add(stretch);
    m_usualFrom = m_days.size() - 1;
    for (const Stretch &stretch : exposure.usual)
        add(stretch);
    m_yearDays = m_days.back() - m_days[m_usualFrom];
    m_yearAged = m_aged.back() - m_aged[m_usualFrom];
}

double AgeLine::at(double day) const
{
    if (day <= m_days.front())
        return day - m_days.front();
    double years = 0.0;
    if (day > m_days.back()) {
        years = std::floor((day - m_days[m_usualFrom]) / m_yearDays);
        day -= years * m_yearDays;
    }
    const auto after = std::upper_bound(m_days.begin(), m_days.end() - 1, day);
    const auto i = static_cast<std::size_t>(after - m_days.begin());
    const double share = (day - m_days[i - 1]) / (m_days[i] - m_days[i - 1]);
    return m_aged[i - 1] + share * (m_aged[i] - m_aged[i - 1]) + years * m_yearAged;
}

} // namespace snugwalk
