// SPDX-License-Identifier: Apache-2.0
// Grounds of dates and concerns as sentences.
#pragma once

#include "due/reason.hpp"
#include "voice.hpp"

namespace snugwalk {

/// One short sentence; empty for a ground of a newer version that has none yet.
[[nodiscard]] QString reasonText(const Voice &voice, const Reason &reason);

} // namespace snugwalk
