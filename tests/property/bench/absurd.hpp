// SPDX-License-Identifier: Apache-2.0
// Seeded numbers of which every fifth is absurd: none at all, without end, huge, tiny, the wrong sign.
#pragma once

#include <array>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <random>

#include "base/estimate.hpp"
#include "base/result.hpp"

namespace snugwalk::property {

/// 50,000 draws, or what SNUGWALK_DRAWS asks for (the long run asks for 1,000,000).
inline int draws()
{
    const char *asked = std::getenv("SNUGWALK_DRAWS");
    return asked != nullptr ? std::atoi(asked) : 50'000;
}

class Absurd {
public:
    explicit Absurd(unsigned seed) : m_rng(seed) {}

    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_rng);
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_rng); }
    bool coin() { return whole(0, 1) == 1; }
    double maybe(double low, double high)
    {
        constexpr double inf = std::numeric_limits<double>::infinity();
        constexpr std::array odd = {std::numeric_limits<double>::quiet_NaN(),
                                    inf,
                                    -inf,
                                    0.0,
                                    -0.0,
                                    1e308,
                                    -1e308,
                                    5e-324,
                                    -1.0,
                                    1e-30,
                                    1e12};
        return whole(0, 4) == 0 ? odd.at(static_cast<std::size_t>(whole(0, 10))) : between(low, high);
    }

private:
    std::mt19937 m_rng;
};

/// A figure a person may read: numbers, in order, with a basis and a source.
inline bool sane(const Estimate &e)
{
    return std::isfinite(e.value) && std::isfinite(e.low) && std::isfinite(e.high) && e.low <= e.value &&
           e.value <= e.high && !e.basis.empty() && !e.source.empty();
}

/// A refusal a person can act on: it names the input, what is wrong and what to do.
inline bool sane(const Error &e) { return !e.where.empty() && !e.what.empty() && !e.act.empty(); }

} // namespace snugwalk::property
