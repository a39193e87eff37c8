// SPDX-License-Identifier: Apache-2.0
// The golden car's equations, stepped exactly and in the frequency domain.
#include "road/profile/golden_car.hpp"

#include <cmath>
#include <numbers>

namespace snugwalk {
namespace {

constexpr double tireStiffness = 653.0;  // K1, 1/s^2 per unit of body mass
constexpr double springStiffness = 63.3; // K2
constexpr double damping = 6.0;          // C, 1/s
constexpr double massRatio = 0.15;       // wheel to body

using Block = std::array<std::array<double, 5>, 5>;

Block times(const Block &a, const Block &b)
{
    Block out{};
    for (std::size_t i = 0; i < 5; ++i) {
        for (std::size_t k = 0; k < 5; ++k) {
            for (std::size_t j = 0; j < 5; ++j)
                out[i][j] += a[i][k] * b[k][j];
        }
    }
    return out;
}

Block carBlock()
{
    constexpr double u = massRatio;
    Block m{};
    m[0] = {0.0, 1.0, 0.0, 0.0, 0.0};
    m[1] = {-springStiffness, -damping, springStiffness, damping, 0.0};
    m[2] = {0.0, 0.0, 0.0, 1.0, 0.0};
    m[3] = {springStiffness / u, damping / u, -(tireStiffness + springStiffness) / u, -damping / u,
            tireStiffness / u};
    return m;
}

// Scaled down by 2^8, 18 terms of the series, squared up again.
Block exponential(Block m)
{
    constexpr int squarings = 8;
    constexpr int terms = 18;
    for (auto &row : m) {
        for (double &cell : row)
            cell = std::ldexp(cell, -squarings);
    }
    Block sum{};
    Block term{};
    for (std::size_t i = 0; i < 5; ++i)
        sum[i][i] = term[i][i] = 1.0;
    for (int k = 1; k <= terms; ++k) {
        term = times(term, m);
        for (std::size_t i = 0; i < 5; ++i) {
            for (std::size_t j = 0; j < 5; ++j) {
                term[i][j] /= k;
                sum[i][j] += term[i][j];
            }
        }
    }
    for (int i = 0; i < squarings; ++i)
        sum = times(sum, sum);
    return sum;
}

} // namespace

CarStep carStep(Length spacing, Speed speed)
{
    Block m = carBlock();
    const double dt = spacing.si() / speed.si();
    for (auto &row : m) {
        for (double &cell : row)
            cell *= dt;
    }
    const Block e = exponential(m);
    CarStep step;
    for (std::size_t i = 0; i < 4; ++i) {
        for (std::size_t j = 0; j < 4; ++j)
            step.s[i][j] = e[i][j];
        step.p[i] = e[i][4];
    }
    return step;
}

std::array<std::complex<double>, 4> carResponse(double waves, Speed speed)
{
    using Complex = std::complex<double>;
    const Complex s(0.0, 2.0 * std::numbers::pi * waves * speed.si());
    const Complex link = springStiffness + damping * s;
    // body: (s^2 + C s + K2) zs = (C s + K2) zu; wheel: driven by the tire
    const Complex body = link / (s * s + link);
    const Complex wheel = tireStiffness / (massRatio * s * s + tireStiffness + link * (1.0 - body));
    return {body * wheel, s * body * wheel, wheel, s * wheel};
}

double carGain(Length wave)
{
    const auto x = carResponse(1.0 / wave.si(), goldenSpeed);
    return std::abs(x[0] - x[2]);
}

} // namespace snugwalk
