// SPDX-License-Identifier: Apache-2.0
// How well a thing can be read beside a rig.
#pragma once

#include "base/dimension.hpp"

namespace snugwalk {

/// Standard uncertainty of one reading as usually taken beside a rig, SI; common practice, no source.
[[nodiscard]] double readingUncertainty(Dimension dimension, double si);

} // namespace snugwalk
