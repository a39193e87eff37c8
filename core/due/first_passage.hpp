// SPDX-License-Identifier: Apache-2.0
// How long until a distance has been driven, when the rate of driving is only known roughly.
#pragma once

namespace snugwalk {

/// Standard normal distribution, and its quantile for 0 < p < 1 (to about 1e-14).
[[nodiscard]] double normalCdf(double z);
[[nodiscard]] double normalQuantile(double p);

/// A rate that is lognormal: exp(m + s z).
struct LognormalRate {
    double m = 0.0; ///< of the logarithm of the rate, a day
    double s = 0.0; ///< above 0
};

/// \param mean, sd of the rate itself, both above 0.
[[nodiscard]] LognormalRate lognormalFromMean(double mean, double sd);

/// Days after which `amount` is used up with probability `p`: amount / exp(m + s z(1-p)).
[[nodiscard]] double daysUntil(const LognormalRate &rate, double amount, double p);
/// Probability that `amount` is used up within `days`.
[[nodiscard]] double chanceWithin(const LognormalRate &rate, double amount, double days);

/// Amounts that arrive in lumps (trips), as a drift with noise: inverse Gaussian first passage.
/// Source: distribution of the first passage of a Wiener process with drift, standard textbook
/// result, from memory; checked against SciPy's invgauss in tests/published/due.
struct LumpyRate {
    double drift = 0.0;    ///< amount a day, above 0
    double variance = 0.0; ///< amount squared a day, above 0
};
[[nodiscard]] double chanceWithin(const LumpyRate &rate, double amount, double days);
[[nodiscard]] double daysUntil(const LumpyRate &rate, double amount, double p);

} // namespace snugwalk
