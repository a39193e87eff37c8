// SPDX-License-Identifier: Apache-2.0
// Five different rigs, invented, as people describe them: usual fittings, then what this one has or lacks.
#pragma once

#include <string>
#include <vector>

#include "rig/rig.hpp"

namespace snugwalk::test {

struct NamedRig {
    std::string file; ///< name of its golden list
    Rig rig;
};

/// Single-axle travel trailer (Europe), twin-axle travel trailer with slide-outs (North America), fifth
/// wheel (North America), motorhome (North America), van (Australia and New Zealand).
[[nodiscard]] const std::vector<NamedRig> &fiveRigs();

} // namespace snugwalk::test
