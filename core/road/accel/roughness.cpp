// SPDX-License-Identifier: Apache-2.0
// The index, the law of speed, and the scale of a rig.
#include "road/accel/roughness.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double priorExponent = 0.5;
constexpr double priorSpread = 0.25;
constexpr long long windowsForLaw = 30;
constexpr int speedsForLaw = 3;
constexpr double speedBin = 0.1; // log: speeds a tenth apart are two

} // namespace

double roughnessIndex(double rms, double speed, double scale, double exponent)
{
    const double ratio = referenceSpeed / speed;
    return scale * rms * (exponent == 0.5 ? std::sqrt(ratio) : std::pow(ratio, exponent));
}

void Calibrator::add(double rms, double speed)
{
    if (!(rms > 0.0 && speed > 0.0))
        return;
    const double x = std::log(speed / referenceSpeed);
    const double y = std::log(rms);
    ++m_count;
    const double dx = x - m_meanX;
    const double dy = y - m_meanY;
    m_meanX += dx / static_cast<double>(m_count);
    m_meanY += dy / static_cast<double>(m_count);
    m_xx += dx * (x - m_meanX);
    m_xy += dx * (y - m_meanY);
    m_yy += dy * (y - m_meanY);
    const double bin = std::floor(x / speedBin) + 32.0;
    m_speeds[static_cast<std::size_t>(std::clamp(bin, 0.0, 63.0))] = true;
}

double Calibrator::residual(double exponent) const
{
    if (m_count < 3)
        return 0.0;
    const double squares = m_yy - 2.0 * exponent * m_xy + exponent * exponent * m_xx;
    return std::max(squares, 0.0) / static_cast<double>(m_count - 2);
}

SpeedLaw Calibrator::law() const
{
    const auto speeds = std::count(m_speeds.begin(), m_speeds.end(), true);
    if (m_count < windowsForLaw || speeds < speedsForLaw || !(m_xx > 0.0))
        return {};
    const double noise = std::max(residual(m_xy / m_xx), 1e-12);
    const double prior = 1.0 / (priorSpread * priorSpread);
    const double precision = m_xx / noise + prior;
    return {(m_xy / noise + priorExponent * prior) / precision, std::sqrt(1.0 / precision), true};
}

Calibration Calibrator::calibrate(double knownIndex) const
{
    Calibration c;
    c.windows = m_count;
    c.law = law();
    c.scale = knownIndex / std::exp(m_meanY - c.law.exponent * m_meanX);
    c.spread = std::sqrt(residual(c.law.exponent));
    return c;
}

} // namespace snugwalk
