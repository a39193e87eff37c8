// SPDX-License-Identifier: Apache-2.0
// Random inputs, sensible and absurd, and what every answer of the bench must be.
#pragma once

#include <array>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <optional>
#include <random>
#include <string>

#include "base/estimate.hpp"
#include "base/result.hpp"

namespace snugwalk::test {

/// 50,000, or what SNUGWALK_DRAWS says.
inline int trials()
{
    const char *asked = std::getenv("SNUGWALK_DRAWS");
    return asked ? std::atoi(asked) : 50'000;
}

class Absurd {
public:
    explicit Absurd(unsigned seed) : m_random(seed) {}

    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }
    int count(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    bool chance(double p) { return between(0.0, 1.0) < p; }

    /// Between low and high as a rule; one in eight is nonsense.
    double number(double low, double high)
    {
        constexpr double infinity = std::numeric_limits<double>::infinity();
        constexpr std::array nonsense = {0.0,    -0.0,      -1.0,
                                         1e-320, -infinity, infinity,
                                         1e300,  -1e300,    std::numeric_limits<double>::quiet_NaN(),
                                         65.0};
        if (!chance(0.125))
            return between(low, high);
        return nonsense.at(static_cast<std::size_t>(count(0, static_cast<int>(nonsense.size()) - 1)));
    }
    template <typename Q>
    Q quantity(double low, double high)
    {
        return Q::fromSi(number(low, high));
    }
    template <typename Q>
    std::optional<Q> maybe(double low, double high)
    {
        return chance(0.5) ? std::optional<Q>(quantity<Q>(low, high)) : std::nullopt;
    }

private:
    std::mt19937 m_random;
};

/// Finite, in order, and with unit's basis and source told.
inline bool sane(const Estimate &e)
{
    return std::isfinite(e.value) && std::isfinite(e.low) && std::isfinite(e.high) && e.low <= e.value &&
           e.value <= e.high && !e.basis.empty() && !e.source.empty();
}
inline bool sane(const std::optional<Estimate> &e) { return !e || sane(*e); }

/// A refusal says what, where and what to do.
inline bool explains(const Error &e) { return !e.what.empty() && !e.where.empty() && !e.act.empty(); }

/// Laws that failed are counted and the first is told: a check a trial would take longer than the trial.
struct Laws {
    int answered = 0;
    int refused = 0;
    std::string broken;

    void hold(bool held, const char *what)
    {
        if (!held && broken.empty())
            broken = what;
    }
    template <typename T, typename Judge>
    void judge(const Result<T> &result, const char *what, Judge judgement)
    {
        if (result) {
            ++answered;
            hold(judgement(*result), what);
        } else {
            ++refused;
            hold(explains(result.error()), what);
        }
    }
};

} // namespace snugwalk::test
