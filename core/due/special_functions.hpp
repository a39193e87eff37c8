// SPDX-License-Identifier: Apache-2.0
// The incomplete gamma and beta functions, and the quantiles that follow from them.
#pragma once

namespace snugwalk {

/// I_x(a, b), the regularised incomplete beta function, for a, b > 0 and 0 <= x <= 1; about 1e-13.
/// Formula: continued fraction of [DLMF] 8.17.22, by the modified Lentz method; its symmetry 8.17.4.
/// Tests:   tests/published/due
[[nodiscard]] double betaRegularized(double a, double b, double x);

/// Q(a, x), the upper regularised incomplete gamma function, for a > 0 and x >= 0; about 1e-13.
/// Formula: series of [DLMF] 8.11.4 below a + 1, continued fraction 8.9.2 above.
/// Tests:   tests/published/due
[[nodiscard]] double gammaUpper(double a, double x);

/// exp(x^2) erfc(x) for x >= 0, which neither overflows nor vanishes; about 1e-14.
/// Formula: continued fraction of [DLMF] 7.9.3 from 2 on, the product itself below
/// Tests:   tests/published/due/tst_first_passage.cpp, tests/reference/due/special_functions.py
[[nodiscard]] double erfcScaled(double x);

/// Quantile of Student's t with `freedom` > 0 degrees, for 0 < p < 1; about 1e-10.
/// Tests:   tests/published/due
[[nodiscard]] double studentQuantile(double p, double freedom);

} // namespace snugwalk
