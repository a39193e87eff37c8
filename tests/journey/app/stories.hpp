// SPDX-License-Identifier: Apache-2.0
// The lives that are told, by the file that tells them.
#pragma once

#include "app_life.hpp"

namespace snugwalk::journey {

[[nodiscard]] Stories roundStories();
[[nodiscard]] Stories rivetStories();
[[nodiscard]] Stories startStories();
[[nodiscard]] Stories wheelStories();
[[nodiscard]] Stories roadStories();
[[nodiscard]] Stories datesStories();
[[nodiscard]] Stories benchStories();
[[nodiscard]] Stories tripStories();
[[nodiscard]] Stories papersStories();
[[nodiscard]] Stories exchangeStories();
[[nodiscard]] Stories settingsStories();
[[nodiscard]] Stories undoStories();

} // namespace snugwalk::journey
