// SPDX-License-Identifier: Apache-2.0
// Whether a reading moved by more than it can be read to.
#pragma once

#include "compare/compare.hpp"

namespace snugwalk {

/// Standard uncertainty of one reading as usually taken beside a rig, SI; common practice, no source.
[[nodiscard]] double readingUncertainty(Dimension dimension, double si);

/// \param lowSi, highSi limits of the reading: below and above is bad; empty where none.
[[nodiscard]] ReadingChange compareReading(const Reading &then, const Reading &now,
                                           std::optional<double> lowSi, std::optional<double> highSi);

/// Pairs of the same reading and place in both marks; the last one where a mark has it twice.
[[nodiscard]] std::vector<ReadingChange> compareReadings(const Catalogue &catalogue, const Rig &rig,
                                                         const Mark &then, const Mark &now);

} // namespace snugwalk
