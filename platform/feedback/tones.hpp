// SPDX-License-Identifier: Apache-2.0
// Short tones as samples: nothing is shipped as a file.
#pragma once

#include <cstdint>
#include <vector>

#include "feedback_source.hpp"

namespace snugwalk {

/// One channel of 16-bit samples at this rate, in hertz.
inline constexpr int toneRate = 48000;

/// A tick of 40 ms for a mark; two lower ones, falling, for an undo. It swells from nothing and fades to
/// nothing, so that it never clicks, and stays under a quarter of full loudness.
[[nodiscard]] std::vector<std::int16_t> tone(Cue cue);

} // namespace snugwalk
