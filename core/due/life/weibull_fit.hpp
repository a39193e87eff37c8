// SPDX-License-Identifier: Apache-2.0
// The Weibull law that makes a set of looked-at lives most likely, with standard errors.
#pragma once

#include <string>
#include <vector>

#include "due/life/censored_lives.hpp"

namespace snugwalk {

/// log T = log scale + b'x + W / shape with W of the standard least-extreme-value law: S(t) =
/// exp(-(t / scale(x))^shape). A positive coefficient lengthens life: each unit of x multiplies all
/// ages by exp(b). (As a hazard ratio the same is exp(-b shape).)
struct WeibullFit {
    double logScale = 0.0; ///< where every covariate is 0
    double logShape = 0.0;
    std::vector<std::string> names;
    std::vector<double> coefficients;
    /// Of log scale, coefficients, log shape, in this order, row after row: the inverse of the observed
    /// information.
    std::vector<double> covariance;
    /// Of an interval its chance, of an exactly known age its density on the scale of ages.
    double logLikelihood = 0.0;
    double lives = 0.0; ///< sum of weights
    double found = 0.0; ///< sum of weights of those that failed
    int steps = 0;

    [[nodiscard]] double scale() const;
    [[nodiscard]] double shape() const;
    [[nodiscard]] double logScaleError() const;
    [[nodiscard]] double logShapeError() const;
    [[nodiscard]] double coefficientError(std::size_t i) const;
};

/// Newton's method on (log scale, coefficients, log shape) with analytic derivatives and halved steps.
/// Formula:  [MEEKER-ESCOBAR-1998] chapters 7, 8 and 17; start: exponential law on interval middles
/// Accuracy: 1e-8 relative where the information is not near singular
/// Limits:   no maximum exists, and none is given, when nothing failed (scale without bound), when one
///           age agrees with every life (shape without bound), when lives are fewer than parameters,
///           when failures came so much before passes that the shape runs to 0, and when covariates are
///           constant or follow from one another. Lives of weight 0 are left out.
/// Tests:    tests/published/due/tst_weibull_fit.cpp, tests/reference/due/survival.py
[[nodiscard]] Result<WeibullFit> fitWeibull(const CensoredLives &data);

/// Log of the age by which the share `p` has failed where every covariate is 0, and its standard error
/// by the delta method.
struct LogAge {
    double value = 0.0;
    double error = 0.0;
};
[[nodiscard]] LogAge logAgeAt(const WeibullFit &fit, double p);

} // namespace snugwalk
