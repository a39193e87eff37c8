// SPDX-License-Identifier: Apache-2.0
// Keeping the sums in scale, and telling them.
#include "road/series/damage.hpp"

#include <cmath>

namespace snugwalk {

Result<Damage> Damage::make(std::vector<double> exponents)
{
    if (exponents.empty() || exponents.size() > 16)
        return Error{Errc::InvalidInput, "no exponents, or more than 16", "exponents",
                     "give some, such as 2,4,6"};
    for (const double exponent : exponents) {
        if (!(exponent >= 0.5 && exponent <= 20.0))
            return Error{Errc::OutOfRange, "an exponent outside 0.5 to 20", "exponents",
                         "give some, such as 2,4,6"};
    }
    return Damage(exponents);
}

Damage::Damage(const std::vector<double> &exponents)
{
    for (const double exponent : exponents) {
        const bool even = exponent == 2.0 || exponent == 4.0 || exponent == 6.0;
        m_powers.push_back({exponent, even ? static_cast<int>(exponent) : 0, 0.0});
    }
}

void Damage::rescale(double range)
{
    const double scale = std::ldexp(1.0, std::ilogb(range) + 1);
    for (Power &power : m_powers)
        power.sum *= std::pow(m_scale / scale, power.exponent);
    m_scale = scale;
}

std::vector<DamageSum> Damage::sums() const
{
    std::vector<DamageSum> out;
    for (const Power &power : m_powers)
        out.push_back({power.exponent, power.sum * std::pow(m_scale, power.exponent),
                       m_scale * std::pow(power.sum, 1.0 / power.exponent)});
    return out;
}

} // namespace snugwalk
