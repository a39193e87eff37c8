// SPDX-License-Identifier: Apache-2.0
// From the shaking of a body to the roughness of the road under it.
#pragma once

#include <array>
#include <cstddef>

namespace snugwalk {

/// The speed to which shaking is related, m/s.
inline constexpr double referenceSpeed = 80.0 / 3.6;
/// m/km for 1 m/s^2 of a golden car's body: where nothing was calibrated. Vehicles differ by a factor of
/// about 2: exp(0.5). Derived from [SAYERS-1986] and a class A road, see the tests.
inline constexpr double goldenScale = 5.3884;
inline constexpr double goldenScaleSpread = 0.5;

/// Roughness index of this rig: scale * rms * (80 km/h / speed)^exponent. A linear vehicle on a road
/// whose spectrum falls with the square of the wave number has the exponent 0.5.
///
/// Source:   derived; a local power law of speed fits measurements [ALESSANDRONI-2017], abstract
/// Accuracy: as calibrated; without, a factor of 2 either way
/// Tests:    tests/published/road/tst_road_body.cpp
[[nodiscard]] double roughnessIndex(double rms, double speed, double scale, double exponent = 0.5);

/// The power of speed, from windows of one road driven at several speeds.
struct SpeedLaw {
    double exponent = 0.5;
    double spread = 0.25; ///< standard deviation
    bool fitted = false;  ///< at least 30 windows over 3 speeds a tenth apart
};

/// What a stretch of known roughness makes of a rig's shaking.
struct Calibration {
    double scale = goldenScale;        ///< m/km for 1 m/s^2 at 80 km/h
    double spread = goldenScaleSpread; ///< log standard deviation of one window
    long long windows = 0;
    SpeedLaw law;
};

/// Takes windows of a stretch whose index is known.
///
/// Exponent: regression of log rms on log speed with the prior N(0.5, 0.25^2), in closed form; scale: the
/// known index over the mean of log rms brought to 80 km/h.
/// Limits: scale from 5 windows on; speeds above 20 km/h
/// Tests:  tests/unit/road/tst_calibration.cpp
class Calibrator {
public:
    void add(double rms, double speed);
    [[nodiscard]] SpeedLaw law() const;
    [[nodiscard]] Calibration calibrate(double knownIndex) const;
    [[nodiscard]] long long windows() const { return m_count; }

private:
    [[nodiscard]] double residual(double exponent) const; ///< variance of log rms about the line
    long long m_count = 0;
    double m_meanX = 0.0, m_meanY = 0.0;       ///< log(speed / 80 km/h), log rms
    double m_xx = 0.0, m_xy = 0.0, m_yy = 0.0; ///< sums about the means
    std::array<bool, 64> m_speeds{};           ///< which tenths of the speed (log) were driven
};

} // namespace snugwalk
