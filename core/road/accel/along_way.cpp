// SPDX-License-Identifier: Apache-2.0
// Pairs of stretches become one where the way is longer than they reach.
#include "road/accel/along_way.hpp"

namespace snugwalk {

void AlongWay::widen()
{
    for (std::size_t i = 0; i < alongLimit; ++i) {
        Stretch pair;
        for (std::size_t j = 2 * i; j < 2 * i + 2 && j < alongLimit; ++j) {
            pair.weight += m_stretches[j].weight;
            pair.sum += m_stretches[j].sum;
        }
        m_stretches[i] = pair;
    }
    m_step *= 2.0;
}

void AlongWay::add(double from, double to, double index)
{
    const double middle = (from + to) / 2.0;
    // no way on earth is longer, and a broken clock must not loop for ever
    constexpr double farthest = 1e9;
    if (!(middle >= 0.0 && middle < farthest && to > from))
        return;
    while (middle >= m_step * static_cast<double>(alongLimit))
        widen();
    Stretch &stretch = m_stretches[static_cast<std::size_t>(middle / m_step)];
    stretch.weight += to - from;
    stretch.sum += (to - from) * index;
}

std::vector<std::optional<double>> AlongWay::means() const
{
    std::size_t last = 0;
    for (std::size_t i = 0; i < alongLimit; ++i)
        last = m_stretches[i].weight > 0.0 ? i + 1 : last;
    std::vector<std::optional<double>> out(last);
    for (std::size_t i = 0; i < last; ++i) {
        if (m_stretches[i].weight > 0.0)
            out[i] = m_stretches[i].sum / m_stretches[i].weight;
    }
    return out;
}

} // namespace snugwalk
