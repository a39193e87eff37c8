// SPDX-License-Identifier: Apache-2.0
// What one life adds to the log-likelihood of a Weibull law, and its derivatives.
#pragma once

#include <array>

#include "due/life/censored_lives.hpp"

namespace snugwalk {

/// Logarithms of a life's ages, taken once.
struct LogAges {
    double lower = 0.0; ///< -infinity at 0
    double upper = 0.0; ///< infinity when still passing
    double width = 0.0; ///< log(upper / lower), exact for narrow intervals
};
[[nodiscard]] LogAges logAgesOf(const CensoredLife &life);

/// Value and derivatives by the location m = log scale + b'x and s = log sigma, sigma = 1 / shape.
struct LifeTerm {
    double value = 0.0;
    double byLocation = 0.0;
    double byLogSigma = 0.0;
    double byLocationTwice = 0.0;
    double byBoth = 0.0;
    double byLogSigmaTwice = 0.0;
};

/// With H(t) = exp((log t - m) / sigma): pass -H(a), found -H(a) + log(1 - exp(-(H(b) - H(a)))), exactly
/// known log(H / (sigma t)) - H. Differences of two near hazards are formed from the width.
[[nodiscard]] LifeTerm lifeTerm(const LogAges &ages, double location, double logSigma);

} // namespace snugwalk
