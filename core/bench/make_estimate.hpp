// SPDX-License-Identifier: Apache-2.0
// Short ways to write an estimate down, and to refuse what lies outside an interval.
#pragma once

#include <string>
#include <utility>

#include "base/estimate.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Where a figure comes from: its unit, its basis and its source.
struct Origin {
    std::string unit;
    std::string basis = "computed";
    std::string source;
    double level = 0.8;
};

[[nodiscard]] inline Estimate between(double low, double value, double high, Origin from)
{
    Estimate e;
    e.value = value;
    e.low = low;
    e.high = high;
    e.level = from.level;
    e.unit = std::move(from.unit);
    e.basis = std::move(from.basis);
    e.source = std::move(from.source);
    return e;
}

/// `value` with the same doubt either way; 0 for what is exact.
[[nodiscard]] inline Estimate around(double value, double doubt, Origin from)
{
    return between(value - doubt, value, value + doubt, std::move(from));
}

/// \returns `refusal` unless low <= value <= high; NaN is refused.
[[nodiscard]] inline Status within(double low, double value, double high, Error refusal)
{
    if (value >= low && value <= high)
        return done();
    return refusal;
}

} // namespace snugwalk
