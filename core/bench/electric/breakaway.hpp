// SPDX-License-Identifier: Apache-2.0
// How long a breakaway battery holds the brakes.
#pragma once

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

struct Breakaway {
    Charge capacity = Charge::fromSi(5 * 3600.0);    ///< as rated over `rating`
    Current current;                                 ///< of all magnets together
    Duration rating = Duration::fromSi(20 * 3600.0); ///< the label's, 20 h as a rule
    double exponent = 1.15;                          ///< 1.05 to 1.3
    Temperature battery = Temperature::fromSi(298.15);
    double charge = 1.0; ///< share in it
};

/// The time asked of it above 3,000 lb. Source: [SD-32-18-17] as restated
inline constexpr Duration breakawayAsked = Duration::fromSi(15 * 60.0);

/// t = H (C / (I H))^k, C less what cold and charge take off. The range takes k from 1.1 to 1.2, widened
/// to the exponent given, and a quarter off the low end for age.
///
/// \returns s; `OutOfRange` naming capacity (0.5 to 200 A·h), current (0.1 to 100 A), rating (1 to 100 h),
///          exponent, temperature or charge. Warns `under_fifteen` when the low end is below 15 min.
/// Source:   [PEUKERT-1897], from memory; exponents common practice, no source
/// Accuracy: 25 %; what counts is the test: magnets on, 15 min, at least 9.6 V at its end (common practice)
/// Tests:    tests/published/bench/electric/tst_breakaway.cpp
[[nodiscard]] Result<Estimate> breakawayHold(const Breakaway &battery);

} // namespace snugwalk
