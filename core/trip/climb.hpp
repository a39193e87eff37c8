// SPDX-License-Identifier: Apache-2.0
// How far up and how far down, of altitudes that tremble.
#pragma once

#include <optional>

namespace snugwalk {

/// Sums rises and falls; a change of direction counts only once it amounts to the threshold, so
/// that noise smaller than it adds nothing. Counting starts from the first altitude.
///
/// Method:  reversal threshold, 5 m for a barometer and 10 m for satellite altitudes; common
///          practice, no source
/// Tests:   tests/published/trip/tst_trip_climb.cpp
class Climb {
public:
    /// \param threshold  metres, above 0.
    explicit Climb(double threshold) : m_threshold(threshold) {}

    /// \param altitude  metres, finite.
    void add(double altitude)
    {
        if (!m_turn) {
            m_turn = altitude;
            return;
        }
        const double change = altitude - *m_turn;
        const double size = change < 0.0 ? -change : change;
        const bool sameWay = change * m_direction > 0.0;
        if (!sameWay && size < m_threshold)
            return;
        (change > 0.0 ? m_up : m_down) += size;
        m_direction = change > 0.0 ? 1.0 : -1.0;
        m_turn = altitude;
    }

    [[nodiscard]] double up() const { return m_up; }
    [[nodiscard]] double down() const { return m_down; }

private:
    double m_threshold;
    double m_direction = 0.0;
    std::optional<double> m_turn; ///< the furthest altitude in the present direction
    double m_up = 0.0;
    double m_down = 0.0;
};

} // namespace snugwalk
