// SPDX-License-Identifier: Apache-2.0
// An owner's points and intervals as trees of values: entries carry these, JSON prints these.
#pragma once

#include "base/value.hpp"
#include "catalogue/own.hpp"

namespace snugwalk {

[[nodiscard]] Value toValue(const OwnPoint &point);
[[nodiscard]] Value toValue(const HiddenPoint &point);
[[nodiscard]] Value toValue(const OwnInterval &every);

// Reading is lenient: unknown members are ignored, missing ones default.
[[nodiscard]] OwnPoint ownPointFromValue(const Value &value);
[[nodiscard]] HiddenPoint hiddenPointFromValue(const Value &value);
[[nodiscard]] OwnInterval ownIntervalFromValue(const Value &value);

} // namespace snugwalk
