// SPDX-License-Identifier: Apache-2.0
// A finding as one line and as JSON.
#pragma once

#include <string>

#include "base/value.hpp"
#include "catalogue/texts.hpp"
#include "rig/rig.hpp"
#include "walk/finding_state.hpp"

namespace snugwalk::cli {

[[nodiscard]] Value findingJson(const FindingHistory &history);
[[nodiscard]] std::string findingLine(const Rig &rig, const FindingHistory &history, const Texts &texts, UnitSystem units);

} // namespace snugwalk::cli
