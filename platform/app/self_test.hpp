// SPDX-License-Identifier: Apache-2.0
// Every page opened once, in both languages and both shapes of window.
#pragma once

#include "base/result.hpp"

namespace snugwalk {

class MessageWatch;
class Wiring;

/// \returns `Corrupt` with the first warning that was heard.
[[nodiscard]] Status selfTest(Wiring &wiring, const MessageWatch &watch);

} // namespace snugwalk
