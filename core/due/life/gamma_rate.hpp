// SPDX-License-Identifier: Apache-2.0
// Failure rates with a gamma prior: closed forms for a known shape, and for counts of failures.
#pragma once

#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// lambda ~ Gamma(a, b), mean a / b. For lives of a known shape, u = age^shape and S = exp(-lambda u).
struct GammaRate {
    double a = 0.0; ///< above 0
    double b = 0.0; ///< above 0

    [[nodiscard]] double mean() const { return a / b; }
    /// The rate below which the share `p` lies, 0 < p < 1; to 1e-12.
    [[nodiscard]] double quantile(double p) const;
    /// `n` failures in the exposure `u`; a pass is none.
    [[nodiscard]] GammaRate after(int n, double u) const { return {a + n, b + u}; }
    /// P(no failure in the next u) = (b / (b + u))^a.
    [[nodiscard]] double noneWithin(double u) const;
    /// The u by which a failure has the chance `p`: b ((1 - p)^(-1/a) - 1).
    [[nodiscard]] double exposureUntil(double p) const;
};

/// The posterior after findings known to an interval: a signed mixture of gamma densities, two terms a
/// finding. Tests: tests/published/due/tst_gamma_rate.cpp
class GammaMixture {
public:
    explicit GammaMixture(GammaRate prior) : m_prior(prior), m_terms{{1.0, prior.b}} {}

    void pass(double u);
    /// Failed in (from, until], 0 <= from < until. An interval under a ten-thousandth of b counts as one
    /// point, whose density is off by less than 1e-9 of itself.
    /// \returns `OutOfRange` beyond 8 findings, or where the terms have cancelled to under 1e-7 of
    ///          their size: the grid of `LifePosterior` takes over
    [[nodiscard]] Status find(double from, double until);

    /// Chance of all that was seen, over all rates of the prior; of narrow findings a density.
    [[nodiscard]] double evidence() const;
    [[nodiscard]] double meanRate() const;
    /// Chance that a renewed one survives u.
    [[nodiscard]] double survives(double u) const;

private:
    struct Term {
        double sign = 1.0;
        double b = 0.0;
    };
    /// Sum of sign (prior b / (term b + more))^power.
    [[nodiscard]] double sum(double power, double more) const;

    GammaRate m_prior;
    std::vector<Term> m_terms;
    int m_points = 0; ///< findings that count as one point
    int m_found = 0;
};

} // namespace snugwalk
