// SPDX-License-Identifier: Apache-2.0
// Counting the cycles of a load history in one pass, as they close.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace snugwalk {

/// One closed loop, or half of one.
struct Cycle {
    double range = 0.0;
    double mean = 0.0;
    double count = 1.0; ///< 1 or 0.5
};

/// Three-point rainflow counting, memory fixed.
///
/// Every value goes in once; `out(Cycle)` is called as cycles close. What stays on the stack is a run of
/// ever smaller ranges. When 1,024 of them have gathered, the inner half is closed as whole cycles: that
/// is what the next larger swing would make of them, and else changes a damage sum by less than one cycle
/// of the largest among them, smaller than 512 ranges that are kept.
///
/// Source:   [ASTM-E1049] 5.4.4, its figure 6 from memory
/// Accuracy: exact while fewer than 1,024 ranges nest
/// Limits:   finite values only; equal neighbours are one point, under two distinct values no cycle
/// Tests:    tests/published/road/tst_road_rainflow.cpp, tests/property/road/tst_road_rainflow_laws.cpp
class Rainflow {
public:
    template <typename Out>
    void push(double value, Out &&out)
    {
        if (m_seen == 0) {
            m_last = value;
            m_seen = 1;
            return;
        }
        if (value == m_last)
            return;
        const bool rises = value > m_last;
        if (m_seen == 1) {
            turn(m_last, out);
            m_seen = 2;
        } else if (rises != m_rising) {
            turn(m_last, out);
        }
        m_rising = rises;
        m_last = value;
    }

    /// The last value is a turning point too; what is left counts as half cycles. Then it is as new.
    template <typename Out>
    void finish(Out &&out)
    {
        if (m_seen == 2)
            turn(m_last, out);
        for (std::size_t i = 1; i < m_size; ++i)
            out(cycle(m_stack[i - 1], m_stack[i], 0.5));
        m_size = 0;
        m_seen = 0;
    }

    [[nodiscard]] std::size_t nested() const { return m_size; }
    static constexpr std::size_t limit = 1024;

private:
    static Cycle cycle(double a, double b, double count) { return {std::abs(a - b), (a + b) / 2.0, count}; }

    template <typename Out>
    void turn(double value, Out &&out)
    {
        if (m_size == limit)
            closeInner(out);
        m_stack[m_size++] = value;
        while (m_size >= 3) {
            const double latest = std::abs(m_stack[m_size - 1] - m_stack[m_size - 2]);
            const double before = std::abs(m_stack[m_size - 2] - m_stack[m_size - 3]);
            if (latest < before)
                return;
            if (m_size == 3) {
                out(cycle(m_stack[0], m_stack[1], 0.5));
                m_stack[0] = m_stack[1];
                m_stack[1] = m_stack[2];
                m_size = 2;
            } else {
                out(cycle(m_stack[m_size - 3], m_stack[m_size - 2], 1.0));
                m_stack[m_size - 3] = m_stack[m_size - 1];
                m_size -= 2;
            }
        }
    }

    // Pairs from the inside out; the last point stays, and the one that the outermost pair leaves next to it.
    template <typename Out>
    void closeInner(Out &&out)
    {
        constexpr std::size_t kept = limit / 2;
        for (std::size_t i = m_size - 2; i > kept; i -= 2)
            out(cycle(m_stack[i - 1], m_stack[i], 1.0));
        m_stack[kept + 1] = m_stack[m_size - 1];
        m_size = kept + 2;
    }

    std::array<double, limit> m_stack{};
    std::size_t m_size = 0;
    double m_last = 0.0;
    int m_seen = 0; ///< 0 nothing, 1 one value, 2 two different ones
    bool m_rising = false;
};

} // namespace snugwalk
