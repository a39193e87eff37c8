// SPDX-License-Identifier: Apache-2.0
// A rig as it once was.
#pragma once

#include "base/time.hpp"
#include "rig/rig.hpp"

namespace snugwalk {

/// The rig as it stood from a moment on.
struct RigVersion {
    LocalTime from;
    Rig rig;
};

} // namespace snugwalk
