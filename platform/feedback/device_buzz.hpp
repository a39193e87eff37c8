// SPDX-License-Identifier: Apache-2.0
// The buzz that a phone gives to the hand that holds it.
#pragma once

#include "feedback_source.hpp"

namespace snugwalk {

[[nodiscard]] bool deviceCanBuzz();
/// Does nothing where there is none.
void deviceBuzz(Cue cue);

} // namespace snugwalk
