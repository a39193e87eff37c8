// SPDX-License-Identifier: Apache-2.0
// How often to look at what only costs: the interval of least cost, and what looks in a warning time see.
#pragma once

namespace snugwalk {

/// A failure that nobody notices until a look: it comes at the rate `rate`, a look costs `look`, each
/// unit of time with it unseen costs `unseen`. All above 0, in any units of time and cost.
struct LookCosts {
    double rate = 0.0;
    double look = 0.0;
    double unseen = 0.0;
};

/// Expected cost until it is found, looking every `interval`:
/// (look + unseen t) / (1 - exp(-rate t)) - unseen / rate.
/// Formula: [BARLOW-PROSCHAN-1965] chapter 4
/// Tests:   tests/published/due/tst_cost_interval.cpp
[[nodiscard]] double costUntilFound(const LookCosts &costs, double interval);
/// The interval of least cost: exp(x) - 1 - x = rate look / unseen, x = rate t; near
/// sqrt(2 look / (rate unseen)) for rare failures. To 1e-14. For comfort and looks only, never for what
/// road, fire or injury hang on.
[[nodiscard]] double cheapestInterval(const LookCosts &costs);

/// Chance that one of `looks` sees what each sees with the chance `sensitivity`: 1 - (1 - q)^n.
[[nodiscard]] double seenByOneOf(int looks, double sensitivity);
/// At most half of the time from the first sign to the failure, so that one look falls within it
/// whatever comes: [SAE-JA1011]
[[nodiscard]] constexpr double longestInterval(double warning) { return warning / 2.0; }

} // namespace snugwalk
