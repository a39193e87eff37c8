// SPDX-License-Identifier: Apache-2.0
// The state of a rig in sentences: what was looked at, what holds, what may come.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "round/state.hpp"

namespace snugwalk {

/// "No hold among the 24 points looked at since …": always a sentence, never one figure.
[[nodiscard]] std::string stateSentence(const Standing &standing, const Texts &texts);
/// "1 in 12", "7 in 10", "over 19 in 20".
[[nodiscard]] std::string chanceWords(double chance, const Texts &texts);
/// "Coupler latch: accepted by A. at 2026-11-24 08:10 for one journey."
[[nodiscard]] std::string acceptedWords(const Acceptance &acceptance, const Texts &texts);
/// "I could not look at … because … I know that … may follow. I move it once, today, on my own decision."
[[nodiscard]] std::string acceptanceSentence(const Acceptance &acceptance, const Texts &texts);

} // namespace snugwalk
