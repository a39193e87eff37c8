// SPDX-License-Identifier: Apache-2.0
// rig places, for the group of rig commands.
#pragma once

#include "cli/commands.hpp"

namespace snugwalk::cli {

void addRigPlacesCommand(CLI::App &rig, Registry &registry);

} // namespace snugwalk::cli
