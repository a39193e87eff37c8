// SPDX-License-Identifier: Apache-2.0
// Whether a reading moved by more than it can be read to.
#pragma once

#include "compare/compare.hpp"
#include "compare/expected.hpp"
#include "due/trend/uncertainty.hpp"

namespace snugwalk {

/// Plus one where more is worse, minus one where less is worse, 0 where nobody can tell.
[[nodiscard]] double worseDirection(double thenSi, double nowSi, std::optional<double> lowSi,
                                    std::optional<double> highSi);

/// \param lowSi, highSi limits of the reading: below and above is bad; empty where none.
/// \param otherObserver somebody else read it: with another unit or tool this doubles the uncertainty.
[[nodiscard]] ReadingChange compareReading(const Reading &then, const Reading &now,
                                           std::optional<double> lowSi, std::optional<double> highSi,
                                           bool otherObserver = false);

/// Pairs of the same reading and place in both marks; the largest where a mark has it twice.
[[nodiscard]] std::vector<ReadingChange> compareReadings(const Catalogue &catalogue, const Rig &rig,
                                                         const Mark &then, const Mark &now);

/// Holds the change against what was to be expected: z_e = (change - expected) / sqrt(u^2 + u_expected^2),
/// faster from 1.645 on the worse side. \param direction as `worseDirection`.
void holdAgainst(ReadingChange &change, const Expectation &expectation, double direction);

} // namespace snugwalk
