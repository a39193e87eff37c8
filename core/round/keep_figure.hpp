// SPDX-License-Identifier: Apache-2.0
// A figure of the bench as a reading on its point, on the walk that is under way.
#pragma once

#include <string>

#include "bench/ask/typed.hpp"
#include "logbook/acts.hpp"

namespace snugwalk {

/// What was asked and answered, and where it is to be kept.
struct BenchFigureToKeep {
    const BenchQuestion *question = nullptr;
    const BenchAnswer *answer = nullptr;
    BenchTexts texts; ///< as typed
    UnitSystem units = UnitSystem::Si;
    std::string point;
    std::string place; ///< "wheel 1L", or empty
};

/// The figure or input that the question names for its own point, else the first figure, for the reading of
/// `point` that measures the like. The tool is "bench" and the question's name.
/// \returns `NotFound` when the point has no such reading.
[[nodiscard]] Result<TypedReading> readingToKeep(const BenchFigureToKeep &figure, const Point &point);

/// Adds the reading to the point's mark, which stays as it is.
/// \returns what was kept; `NotFound` for an unknown point, one without such a reading, or without a mark on
///          this walk: what a point got is said by a person, never by a figure. `Conflict` for a mark of
///          attention, whose readings go with its finding. Errors of `markPoint`.
[[nodiscard]] Result<TypedReading> keepFigure(Logbook &book, const Catalogue &catalogue, const Rig &rig,
                                              const Walk &walk, const BenchFigureToKeep &figure,
                                              const Doer &doer);

} // namespace snugwalk
