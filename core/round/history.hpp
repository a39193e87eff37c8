// SPDX-License-Identifier: Apache-2.0
// Everything the logbook knows of a rig, gathered for the computations.
#pragma once

#include "due/rig_history.hpp"
#include "logbook/logbook.hpp"

namespace snugwalk {

/// One read of the whole history of a rig. `NotFound` for an unknown rig.
[[nodiscard]] Result<RigHistory> loadHistory(Logbook &book, const Id &rig);

} // namespace snugwalk
