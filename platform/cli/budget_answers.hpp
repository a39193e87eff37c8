// SPDX-License-Identifier: Apache-2.0
// What a time budget left out and what the owner hid, told wherever a walk or a list is.
#pragma once

#include <optional>

#include "cli/session.hpp"
#include "round/budget.hpp"

namespace snugwalk::cli {

/// "10", "25" …; nothing for "" and "any". `Usage` for anything else.
[[nodiscard]] Result<std::optional<double>> budgetMinutes(const std::string &typed);

/// The minutes kept, then what was left out: the hold list's points first, named as such.
[[nodiscard]] std::string budgetWords(const BudgetedTape &fitted, double minutes, const Texts &texts);
[[nodiscard]] Value budgetJson(const BudgetedTape &fitted, double minutes);

/// "Tread depth: hidden by A. Rata, 2026-11-24", one a line; nothing when none is.
[[nodiscard]] std::string hiddenWords(const Catalogue &catalogue, const Rig &rig, const Texts &texts);
[[nodiscard]] Value hiddenJson(const Catalogue &catalogue, const Rig &rig);

} // namespace snugwalk::cli
