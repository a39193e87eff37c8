// SPDX-License-Identifier: Apache-2.0
// Weighted quantiles of any number of positive values in fixed memory.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace snugwalk {

/// Bins of 0.1 % from 1e-4 to 1e4, each with its weight and its weighted mean, so that a value alone in
/// its bin comes back as it was.
class LogHistogram {
public:
    void add(double value, double weight)
    {
        Bin &bin = m_bins[indexOf(value)];
        bin.weight += weight;
        bin.sum += weight * value;
        m_weight += weight;
    }
    [[nodiscard]] double weight() const { return m_weight; }
    /// The value below which `share` of the weight lies; 0 without any.
    [[nodiscard]] double quantile(double share) const
    {
        double passed = 0.0;
        double last = 0.0;
        for (const Bin &bin : m_bins) {
            if (bin.weight <= 0.0)
                continue;
            passed += bin.weight;
            last = bin.sum / bin.weight;
            if (passed >= share * m_weight * (1.0 - 1e-12))
                break;
        }
        return last;
    }

private:
    struct Bin {
        double weight = 0.0;
        double sum = 0.0;
    };
    static constexpr double lowest = 1e-4;
    static constexpr double width = 1e-3;
    static constexpr std::size_t count = 18'422; // ln(1e8) / width

    static std::size_t indexOf(double value)
    {
        if (!(value > lowest))
            return 0;
        const double bin = std::log(value / lowest) / width;
        return static_cast<std::size_t>(std::min(bin, static_cast<double>(count - 1)));
    }

    std::vector<Bin> m_bins = std::vector<Bin>(count);
    double m_weight = 0.0;
};

} // namespace snugwalk
