// SPDX-License-Identifier: Apache-2.0
// Readings of one point on two walks, with what was to be expected of them.
#pragma once

#include "compare/point_records.hpp"
#include "compare/readings.hpp"
#include "due/trend/series.hpp"

namespace snugwalk {

/// What all points of a comparison share.
struct ReadingsContext {
    const Catalogue &catalogue;
    const RigHistory &history;
    const Rig &rig; ///< whose limits count
    std::vector<Replacement> replacements;
    DrivenLog driven;
};

/// As `compareReadings`, and each held against expected wear, with replacements told.
[[nodiscard]] std::vector<ReadingChange> readingChanges(const ReadingsContext &context,
                                                        const PointRecords &records, const Mark &then,
                                                        const Mark &now);

} // namespace snugwalk
