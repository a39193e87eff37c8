// SPDX-License-Identifier: Apache-2.0
// Parts of answers that the due commands share.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/answers.hpp"
#include "due/shift.hpp"

namespace snugwalk::cli {

/// Which bands a list shows, and in which order.
struct DueFilter {
    bool all = false;           ///< also what is looked at each move
    std::string order = "date"; ///< date, concern
    std::string zone;           ///< empty: every zone
    int months = 0;             ///< what may fall due within so many; 0: whenever
};

/// A band and, where months or distance give it a date, how that came about.
struct DueEntry {
    const DueBand *band = nullptr; ///< of the standing
    std::optional<DueShift> shift;
};

/// Bands that the filter lets through, in its order. `NotFound` for a zone that the catalogue has not.
[[nodiscard]] Result<std::vector<const DueBand *>> filtered(const Session &session, const Standing &standing,
                                                            const DueFilter &filter);
/// Each with its decomposition; one set of lines serves them all.
[[nodiscard]] std::vector<DueEntry> explained(const Session &session, const Standing &standing,
                                              const std::vector<const DueBand *> &bands);

/// The band with `nominal`, `parts`, `alert` and `sentence`.
[[nodiscard]] Value dueJson(const DueEntry &entry, const Texts &texts);
[[nodiscard]] Value dateValue(const std::optional<CivilDate> &date);
/// The one sentence, or why there is none.
[[nodiscard]] std::string dueSentence(const DueEntry &entry, const Texts &texts);

/// What the dates could not take into account: tables that are not at hand, places that are not known.
[[nodiscard]] std::vector<std::string> dueWarnings(Session &session, const Standing &standing);
[[nodiscard]] Value warningsJson(const std::vector<std::string> &warnings);
/// "Note: …", one a line.
[[nodiscard]] std::string warningLines(const std::vector<std::string> &warnings, const Texts &texts);

} // namespace snugwalk::cli
