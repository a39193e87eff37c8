// SPDX-License-Identifier: Apache-2.0
// Whether a coupling chain of a grade and size is as strong as the rig asks for.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class ChainGrade { G30, G43, G70 };
[[nodiscard]] std::optional<ChainGrade> parseChainGrade(std::string_view text);

struct SafetyChains {
    std::optional<ChainGrade> grade = {};
    std::optional<Length> size = {}; ///< of the link's bar: 1/4, 5/16 or 3/8 in
    std::optional<Mass> tagged = {}; ///< breaking strength on the maker's tag, which wins
    Mass gvwr;                       ///< of the rig
    int chains = 2;
    std::optional<double> wear = {};    ///< share of the bar's diameter that is worn off
    std::optional<double> stretch = {}; ///< share that a stretch of links grew
    bool welded = false;                ///< repaired by welding
};

struct ChainStrength {
    Estimate breaking; ///< kg a chain holds before it breaks
    Estimate wanted;   ///< kg that each is to hold
    Estimate margin;   ///< share above what is wanted, below 0 under it
};

/// Working load by grade and size times 4 (grade 30, 70) or 3 (grade 43), against the class of the rig:
/// to 2,000 lb 2,000; to 3,500 lb 3,500; to 5,000 lb 5,000; above that its gross rating.
///
/// \returns warnings on `breaking`: `chain_weak`, `one_chain` (fewer than two), `chain_worn` (over 10 % of
///          the diameter), `chain_stretched` (over 3 %), `chain_welded`: none of these is used again;
///          `InvalidInput` naming "grade" or "size" when neither they nor a tag are given, `Unsupported`
///          naming "size" for one that is not in the table, `OutOfRange` naming "gvwr" (50 kg to 20 t),
///          "tag", "chains" (1 to 4), "wear" or "stretch" (0 to 100 %).
/// Source:   [SAE-J684] classes and [CFR49-393-108] working loads, both as restated; the factors 4 and 3 from
///           memory; wear and stretch common practice
/// Limits:   hooks, links and their places on the frame are as strong as their weakest, which is not seen
///           here
/// Tests:    tests/published/bench/brakes/tst_chains.cpp
[[nodiscard]] Result<ChainStrength> chainStrength(const SafetyChains &chains);

/// What each chain of a rig is to hold before it breaks.
[[nodiscard]] Mass chainWanted(Mass gvwr);

/// Working load limit, or nothing for a size that is not in the table.
[[nodiscard]] std::optional<Mass> workingLoad(ChainGrade grade, Length size);

} // namespace snugwalk
