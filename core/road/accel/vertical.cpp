// SPDX-License-Identifier: Apache-2.0
// Low-pass and projection, in loops that a compiler can lay side by side.
#include "road/accel/vertical.hpp"

#include <cmath>

#include "road/series/wide.hpp"

namespace snugwalk {
namespace {

constexpr double timeConstant = 10.0; // seconds

double meanOf(const std::vector<double> &values, std::size_t count)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i)
        sum += values[i];
    return sum / static_cast<double>(count);
}

// The three axes in one loop, so that their chains of additions overlap.
void lowPass(VerticalBlock &b, std::array<double, 3> &gravity, double share)
{
    double gx = gravity[0];
    double gy = gravity[1];
    double gz = gravity[2];
    const double keep = 1.0 - share;
    for (std::size_t i = 0; i < b.filled; ++i) {
        gx = keep * gx + share * b.x[i];
        gy = keep * gy + share * b.y[i];
        gz = keep * gz + share * b.z[i];
        b.gravityX[i] = gx;
        b.gravityY[i] = gy;
        b.gravityZ[i] = gz;
    }
    gravity = {gx, gy, gz};
}

SNUG_WIDE void project(std::size_t count, const double *__restrict x, const double *__restrict y,
                       const double *__restrict z, const double *__restrict gx, const double *__restrict gy,
                       const double *__restrict gz, double *__restrict out)
{
    constexpr double least = 1e-12; // no gravity at all: nothing is vertical
    for (std::size_t i = 0; i < count; ++i) {
        const double square = gx[i] * gx[i] + gy[i] * gy[i] + gz[i] * gz[i] + least;
        const double along = (x[i] - gx[i]) * gx[i] + (y[i] - gy[i]) * gy[i] + (z[i] - gz[i]) * gz[i];
        out[i] = along / std::sqrt(square);
    }
}

} // namespace

Vertical::Vertical(double rate) : m_share(-std::expm1(-1.0 / (timeConstant * rate))) {}

void Vertical::run(VerticalBlock &block)
{
    if (block.filled == 0)
        return;
    if (!m_begun)
        m_gravity = {meanOf(block.x, block.filled), meanOf(block.y, block.filled),
                     meanOf(block.z, block.filled)};
    m_begun = true;
    lowPass(block, m_gravity, m_share);
    project(block.filled, block.x.data(), block.y.data(), block.z.data(), block.gravityX.data(),
            block.gravityY.data(), block.gravityZ.data(), block.vertical.data());
}

std::array<double, 3> Vertical::direction() const
{
    const double length = std::hypot(m_gravity[0], m_gravity[1], m_gravity[2]);
    if (!(length > 0.0))
        return {};
    return {m_gravity[0] / length, m_gravity[1] / length, m_gravity[2] / length};
}

} // namespace snugwalk
