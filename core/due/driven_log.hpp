// SPDX-License-Identifier: Apache-2.0
// The distance driven up to any moment, made once from the trips and asked often.
#pragma once

#include <vector>

#include "due/rig_history.hpp"

namespace snugwalk {

/// Trips may come in any order and overlap; one under way counts by its share of time, one without a
/// length in time counts whole from its start on.
class DrivenLog {
public:
    explicit DrivenLog(const RigHistory &history);

    /// Since the first trip. Accuracy: a millimetre over a million kilometres.
    [[nodiscard]] Distance at(Instant when) const;
    [[nodiscard]] Distance between(Instant from, Instant to) const { return at(to) - at(from); }
    [[nodiscard]] bool isEmpty() const { return m_knots.empty(); }

private:
    // From `when` on the distance is `metres` and grows by `rate` a millisecond.
    struct Knot {
        Instant when{};
        double metres = 0.0;
        double rate = 0.0;
    };
    std::vector<Knot> m_knots;
};

} // namespace snugwalk
