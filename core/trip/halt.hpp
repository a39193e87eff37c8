// SPDX-License-Identifier: Apache-2.0
// A run of fixes that stay together: the rig stands, or has not yet gone far.
#pragma once

#include <optional>
#include <vector>

#include "base/geo.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

class Halt {
public:
    explicit Halt(const Fix &first);

    /// True when the fix lies within 15 m of the middle of those so far.
    [[nodiscard]] bool holds(const Fix &fix) const;
    void add(const Fix &fix);

    /// True from 60 s on.
    [[nodiscard]] bool stands() const;
    [[nodiscard]] Instant from() const { return m_from; }
    [[nodiscard]] Instant to() const { return m_to; }
    /// Median of latitude, longitude and altitude, over at most 512 fixes spread evenly.
    [[nodiscard]] GeoPoint place() const;

private:
    void sample(const GeoPoint &point);

    Instant m_from;
    Instant m_to;
    GeoPoint m_middle; ///< running mean; its longitude may pass 180 degrees
    long long m_count = 0;
    std::vector<GeoPoint> m_samples;
    long long m_stride = 1;
};

/// Collects halts of five minutes and more. Halts at one place that a stray fix parted are one.
class StopList {
public:
    void add(const Halt &halt);
    [[nodiscard]] std::vector<StopOver> finish();

private:
    void close();

    std::optional<StopOver> m_open;
    std::vector<StopOver> m_stops;
};

} // namespace snugwalk
