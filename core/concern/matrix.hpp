// SPDX-License-Identifier: Apache-2.0
// The published risk matrix: a way to show a concern, and a floor under its call.
#pragma once

#include <string_view>

#include "due/severity.hpp"

namespace snugwalk {

/// Probability of one item over the span looked ahead, in decades.
/// A >= 1e-1, B >= 1e-2, C >= 1e-3, D >= 1e-6, E below that, F taken away (exactly 0).
enum class ProbabilityBand { A, B, C, D, E, F };
enum class MatrixLevel { None, Low, Medium, Serious, High };

[[nodiscard]] ProbabilityBand probabilityBand(double chance);
[[nodiscard]] std::string_view slug(ProbabilityBand band);
[[nodiscard]] std::string_view slug(MatrixLevel level);

/// Source: MIL-STD-882E tables I to III: bands as reprinted in public, cells from memory.
/// For display; no limit hangs on a cell.
[[nodiscard]] MatrixLevel matrixLevel(Severity severity, ProbabilityBand band);

/// The floor: severity I with a chance of 0.01 or more is at least *mend soon*. Common practice.
[[nodiscard]] bool isAtLeastMendSoon(Severity severity, double chance);

} // namespace snugwalk
