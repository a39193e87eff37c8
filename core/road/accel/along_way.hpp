// SPDX-License-Identifier: Apache-2.0
// Roughness by distance in fixed memory: stretches that grow twice as long whenever they are too many.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "base/quantity.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

/// Means weighed by distance. What spans two stretches counts in that of its middle.
/// Accuracy: a stretch is at most twice what `alongLimit` of them need, and 100 m at least
/// Tests:    tests/unit/road/tst_along_way.cpp
class AlongWay {
public:
    /// \param from, to metres from where the log began; 0 <= from < to
    void add(double from, double to, double index);
    [[nodiscard]] Distance step() const { return Distance::fromSi(m_step); }
    /// Up to the last stretch with anything in it.
    [[nodiscard]] std::vector<std::optional<double>> means() const;

private:
    struct Stretch {
        double weight = 0.0;
        double sum = 0.0;
    };
    void widen();

    static constexpr double shortest = 100.0; // m: a window of the meter
    double m_step = shortest;
    std::array<Stretch, alongLimit> m_stretches{};
};

} // namespace snugwalk
