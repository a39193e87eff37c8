// SPDX-License-Identifier: Apache-2.0
// Then and now, and where a reading is heading, in sentences.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "compare/compare.hpp"
#include "due/trend/trend.hpp"

namespace snugwalk {

/// "fitted since: solar; no longer fitted: awning; tire size: ST205/75R14 to ST225/75R15"; empty for none.
[[nodiscard]] std::string rigChangesWords(const std::vector<RigChange> &changes, const Texts &texts,
                                          UnitSystem units);
/// "Tread depth at wheel 1L: 6.1 mm to 4.2 mm, faster than expected (1.0 mm were, by its own slope) …".
[[nodiscard]] std::string readingChangeWords(const ReadingChange &reading, const Texts &texts,
                                             UnitSystem units);
/// True when a reading is worth a line: changed, faster than expected, replaced, or a question.
[[nodiscard]] bool isTold(const ReadingChange &reading);
/// Lists of points that only one of the walks asked for or that only one rig had; empty for none.
[[nodiscard]] std::string pointListsWords(const Comparison &comparison, const Texts &texts);
/// How likely the counts are chance alone.
[[nodiscard]] std::string ratesWords(const PairedRates &rates, const Texts &texts);
/// Head, one line a reading, and when the limit is met, or why nobody can tell.
[[nodiscard]] std::string trendWords(const Trend &trend, const Texts &texts, UnitSystem units);

} // namespace snugwalk
