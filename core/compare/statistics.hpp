// SPDX-License-Identifier: Apache-2.0
// Whether a rig as a whole got worse, and which of many readings changed beyond chance.
#pragma once

#include <vector>

namespace snugwalk {

/// Two-sided p of a standard normal z.
[[nodiscard]] double twoSidedP(double z);

/// Exact two-sided McNemar test: of the points that changed, `worse` went from pass to attention and
/// `better` back; the chance of a split at least as uneven when both are as likely. 1 when none changed.
/// Formula: [MCNEMAR-1947], binomial tail doubled, at most 1.
/// Tests:   tests/published/compare
[[nodiscard]] double mcnemarExact(int better, int worse);

/// P(a change is more often for the worse | data) with Jeffreys' prior: P(Beta(worse + 1/2,
/// better + 1/2) > 1/2). One half when none changed. [JEFFREYS-1946]
/// Tests:   tests/published/compare
[[nodiscard]] double chanceRateUp(int better, int worse);

/// Which of the tests stand when at most a share `rate` of those that stand may be false ones, in the
/// order given. Formula: [BENJAMINI-HOCHBERG-1995]
/// Tests:   tests/published/compare
[[nodiscard]] std::vector<bool> standAmongMany(const std::vector<double> &p, double rate);

} // namespace snugwalk
