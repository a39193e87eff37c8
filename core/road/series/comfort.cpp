// SPDX-License-Identifier: Apache-2.0
// The weighting's four parts, multiplied.
#include "road/series/comfort.hpp"

#include <cmath>
#include <complex>
#include <numbers>

namespace snugwalk {

double comfortWeight(double frequency)
{
    using Complex = std::complex<double>;
    if (!(frequency > 0.0))
        return 0.0;
    const Complex jf(0.0, frequency);
    // 1 + s / (Q w) + (s / w)^2, with s and w in Hz alike
    const auto quadratic = [&](double f, double q) { return 1.0 + jf / (q * f) + (jf / f) * (jf / f); };
    constexpr double butterworth = std::numbers::sqrt2 / 2.0;
    const Complex below = (jf / 0.4) * (jf / 0.4) / quadratic(0.4, butterworth);
    const Complex above = 1.0 / quadratic(100.0, butterworth);
    const Complex transition = (1.0 + jf / 12.5) / quadratic(12.5, 0.63);
    const double stepRatio = 2.37 / 3.35;
    const Complex step = quadratic(2.37, 0.91) / quadratic(3.35, 0.91) * stepRatio * stepRatio;
    return std::abs(below * above * transition * step);
}

double comfortRms(const Spectrum &spectrum)
{
    if (spectrum.frequency.size() < 2)
        return 0.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < spectrum.frequency.size(); ++i) {
        const double weight = comfortWeight(spectrum.frequency[i]);
        sum += weight * weight * spectrum.density[i];
    }
    return std::sqrt(sum * spectrum.frequency[1]);
}

} // namespace snugwalk
