// SPDX-License-Identifier: Apache-2.0
// Figures of the bench as people read them: four digits that count, in one unit or in both.
#pragma once

#include <string>

#include "base/units.hpp"
#include "bench/ask/question.hpp"

namespace snugwalk {

/// "448.2 kPa", "12.45 V", "0.25 in": four digits that count, without zeros at the end.
[[nodiscard]] std::string showIn(const Unit &unit, double si);
/// The same in the unit of a system for its size.
[[nodiscard]] std::string showFor(Dimension dimension, double si, UnitSystem units);
/// "65 psi = 448.2 kPa": in the unit it was written in, then in the other system's where that differs.
[[nodiscard]] std::string showBoth(const Unit &written, double si);
/// A value of the figure, such as its `low`, in a person's units, to a fifth of its doubt.
[[nodiscard]] std::string showFigure(const BenchFigure &figure, double value, UnitSystem units);

} // namespace snugwalk
