// SPDX-License-Identifier: Apache-2.0
// Where a worn quantity is heading: a straight line through readings, and when it meets its limit.
#pragma once

#include <optional>
#include <span>

namespace snugwalk {

struct XY {
    double x = 0.0;
    double y = 0.0;
};

/// Least squares line y = intercept + slope x.
struct LineFit {
    int n = 0;
    double slope = 0.0;
    double intercept = 0.0;
    double slopeSe = 0.0; ///< standard error of the slope
    double s = 0.0;       ///< residual standard deviation, n - 2 degrees of freedom
    double meanX = 0.0;
    double sxx = 0.0; ///< sum of (x - meanX)^2
    friend bool operator==(const LineFit &, const LineFit &) = default;
};

/// Nothing under three points, for a value that is not finite, or when all x are the same.
/// Accuracy: 1e-9 relative for x spanning more than a millionth of its size.
/// Tests:    tests/published/due
[[nodiscard]] std::optional<LineFit> fitLine(std::span<const XY> points);

/// Where the line meets a limit. Without `early` and `late` the readings do not determine it.
struct Crossing {
    std::optional<double> likely;
    std::optional<double> early;
    std::optional<double> late;
    double g = 0.0; ///< t^2 s^2 / (slope^2 sxx); 1 or more: the slope could as well be flat
};

enum class CrossingOf {
    Line,   ///< of the mean line
    Reading ///< of one more reading, with its own noise
};

/// The two-sided set at `level` (0.8 leaves 1 in 10 on either side): roots of
/// (a + b x - limit)^2 = t^2 s^2 (1/n + (x - mean)^2 / sxx), with 1 added for a reading.
/// A flat line has no crossing. For g of 1 or more the set has no ends: not determined.
/// Formula: [FIELLER-1954]
/// Tests:   tests/published/due
[[nodiscard]] Crossing crossingOf(const LineFit &fit, double limit, double level,
                                  CrossingOf what = CrossingOf::Line);

/// The median of the slopes of all pairs, which one wild reading cannot pull; nothing when no two x
/// differ. Formula: [SEN-1968]
[[nodiscard]] std::optional<double> medianSlope(std::span<const XY> points);

/// The one point that lies from the robust line by more than three scaled median deviations and by
/// more than `floor`, when exactly one does and there are five points or more; the last point never,
/// for it may be news. Threshold: common practice, no source.
[[nodiscard]] std::optional<std::size_t> lonelyOutlier(std::span<const XY> points, double floor);

/// Wear that only grows, in lumps: X(t) is Gamma distributed with shape `shapeRate` t and rate `rate`.
struct GammaWear {
    double shapeRate = 0.0; ///< a unit of time, above 0
    double rate = 0.0;      ///< a unit of wear, above 0
};
/// P(wear over `limit` within `time`) = Q(shapeRate time, rate limit). [VANNOORTWIJK-2009]
[[nodiscard]] double chanceWithin(const GammaWear &wear, double limit, double time);
/// The time by which that is `p`, 0 < p < 1.
[[nodiscard]] double timeUntil(const GammaWear &wear, double limit, double p);

} // namespace snugwalk
