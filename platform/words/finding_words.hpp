// SPDX-License-Identifier: Apache-2.0
// A finding in one line.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "rig/rig.hpp"
#include "walk/finding_state.hpp"

namespace snugwalk {

/// "Belly pan sheet: loose, grade 2, 6.0 mm, underside, 4.5 m from the front, 0.6 m to the kerb side".
[[nodiscard]] std::string findingWords(const Rig &rig, const FindingHistory &history, const Texts &texts,
                                       UnitSystem units);
/// "grade 2, rivet lifts under a fingernail, 6.0 mm", or that it is gone.
[[nodiscard]] std::string lookWords(const FindingHistory &history, const Look &look, const Texts &texts,
                                    UnitSystem units);

/// "three rivets; rivet 3/16 in, 3; NZD 12.00, 25 min".
[[nodiscard]] std::string mendWords(const Mend &mend);

} // namespace snugwalk
