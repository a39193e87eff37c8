// SPDX-License-Identifier: Apache-2.0
// The running sums of a track.
#pragma once

#include <optional>
#include <vector>

#include "base/geo.hpp"
#include "trip/climb.hpp"

namespace snugwalk {

/// Small enough to copy: what was added while a halt was not yet known as one is taken back by
/// putting an earlier copy in its place.
class Odometer {
public:
    explicit Odometer(double climbThreshold) : m_climb(climbThreshold) {}

    /// \param gap  true when the way from the point before is not known: a straight line, inferred.
    void add(const GeoPoint &point, std::optional<double> accuracy, bool gap);

    [[nodiscard]] double length() const { return m_length; }
    [[nodiscard]] double inferred() const { return m_inferred; }
    [[nodiscard]] const Climb &climb() const { return m_climb; }
    [[nodiscard]] long long altitudes() const { return m_altitudes; }
    [[nodiscard]] double lowest() const { return m_lowest; }
    [[nodiscard]] double highest() const { return m_highest; }
    /// The point the length is summed to, and how many there were.
    [[nodiscard]] const std::optional<GeoPoint> &last() const { return m_last; }
    [[nodiscard]] std::size_t points() const { return m_points; }

private:
    void addAltitude(double altitude);

    std::optional<GeoPoint> m_last;
    std::size_t m_points = 0;
    double m_length = 0.0;
    double m_inferred = 0.0;
    Climb m_climb;
    long long m_altitudes = 0;
    double m_lowest = 0.0;
    double m_highest = 0.0;
};

} // namespace snugwalk
