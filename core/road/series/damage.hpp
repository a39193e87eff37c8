// SPDX-License-Identifier: Apache-2.0
// Linear damage of counted cycles, for several exponents at once.
#pragma once

#include <vector>

#include "base/result.hpp"
#include "road/series/rainflow.hpp"

namespace snugwalk {

struct DamageSum {
    double exponent = 0.0;
    double sum = 0.0;   ///< of count * range^exponent; infinite where no double can hold it
    double level = 0.0; ///< (sum)^(1/exponent): the range that does the same damage in one cycle
};

/// Source:   [MINER-1945] linear sum over a power law
/// Accuracy: 1e-12; ranges are divided by a power of two near the largest, so that no level overflows
/// Limits:   exponents 0.5 to 20, nobody knows the right one: carry several and tell the spread
/// Tests:    tests/published/road/tst_road_rainflow.cpp, tests/unit/road/tst_damage.cpp
class Damage {
public:
    /// \returns `OutOfRange` for an exponent outside 0.5 to 20, `InvalidInput` for none or more than 16.
    [[nodiscard]] static Result<Damage> make(std::vector<double> exponents);

    void add(double range, double count)
    {
        if (!(range <= m_scale))
            rescale(range);
        const double r = range / m_scale;
        for (Power &power : m_powers)
            power.sum += count * raised(r, power);
    }
    void add(const Cycle &cycle) { add(cycle.range, cycle.count); }

    [[nodiscard]] std::vector<DamageSum> sums() const;

private:
    struct Power {
        double exponent = 1.0;
        int whole = 0; ///< the exponent where it is a small whole number, else 0
        double sum = 0.0;
    };
    explicit Damage(const std::vector<double> &exponents);
    [[nodiscard]] static double raised(double r, const Power &power)
    {
        switch (power.whole) {
        case 2:
            return r * r;
        case 4:
            return r * r * (r * r);
        case 6:
            return r * r * (r * r) * (r * r);
        default:
            return std::pow(r, power.exponent);
        }
    }
    void rescale(double range);

    std::vector<Power> m_powers;
    double m_scale = 0x1p-1022; ///< a power of two, at least the largest range
};

} // namespace snugwalk
