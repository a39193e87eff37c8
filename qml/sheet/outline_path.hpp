// SPDX-License-Identifier: Apache-2.0
// The core's paths as Qt's, spot by spot: nothing is drawn that the core did not say.
#pragma once

#include <QPainterPath>

#include "rig/outline/stroke.hpp"

namespace snugwalk {

[[nodiscard]] QPainterPath painterPath(const outline::Stroke &stroke);

} // namespace snugwalk
