// SPDX-License-Identifier: Apache-2.0
// A hold rule told in full: what it forbids, what fires it, where it is from.
#pragma once

#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "catalogue/texts.hpp"
#include "concern/state.hpp"

namespace snugwalk {

/// "Tread depth, tread depth under 1.6 mm (published)": one line a trigger.
[[nodiscard]] std::vector<std::string> triggerLines(const HoldRule &rule, const Texts &texts,
                                                    UnitSystem units);
/// Full names of sources, in order.
[[nodiscard]] std::vector<std::string> fullSources(const std::vector<std::string> &keys,
                                                   const Catalogue &catalogue);
/// "Tread depth, wheel 1L: A tire shows cord …", with who accepted it.
[[nodiscard]] std::string holdWords(const StateHold &hold, const Texts &texts);

} // namespace snugwalk
