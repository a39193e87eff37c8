// SPDX-License-Identifier: Apache-2.0
// Zstandard with a bound on what comes out.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

/// One frame that tells its plain size, level 3. Source [RFC8878].
[[nodiscard]] std::string squeeze(std::string_view plain);

/// Refuses before anything is inflated: a frame that does not tell its size, tells more than `limit`, or is
/// followed by more bytes. \returns `Corrupt`, `OutOfRange` over the limit.
[[nodiscard]] Result<std::string> unsqueeze(std::string_view squeezed, std::size_t limit);

} // namespace snugwalk
