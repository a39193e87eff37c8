// SPDX-License-Identifier: Apache-2.0
// What a report says, before anyone draws it: facts and slugs, no sentences of a language.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "compare/compare.hpp"
#include "round/state.hpp"

namespace snugwalk {

struct ReportFinding {
    int number = 0; ///< of the balloon on the drawing, from 1
    OpenFinding open;
    FindingHistory history;
};

struct ReportPhotoPair {
    Id finding;
    std::optional<Photo> then;
    std::optional<Photo> now;
};

struct Report {
    Standing standing;
    std::vector<ReportFinding> findings; ///< hold first, as in the state
    std::optional<WalkRecord> lastWalk;
    std::vector<std::string> notLooked;   ///< points of the last walk without a mark
    std::vector<DueBand> due;             ///< past due or due within 90 days of now
    std::optional<Comparison> comparison; ///< of the last two like walks
    std::vector<ReportPhotoPair> pairs;   ///< of findings that changed between them
    std::vector<std::string> cautions;    ///< codes that the open findings' points carry, each once
};

/// The photos behind the findings of a comparison, where a finding has one of either time.
[[nodiscard]] std::vector<ReportPhotoPair> photoPairs(const Comparison &comparison,
                                                      const RigHistory &history);

[[nodiscard]] Report makeReport(const Catalogue &catalogue, Standing standing);

} // namespace snugwalk
