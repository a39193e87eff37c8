// SPDX-License-Identifier: Apache-2.0
// The world's tables as they lie beside the program.
#pragma once

#include <vector>

#include "round/world.hpp"

namespace snugwalk {

struct ProductWorld {
    World world;
    std::vector<Error>
        faults; ///< of tables that are missing or broken: what they would tell is the reference
};

/// Reads all tables, some megabytes: ask once and keep it, never on the thread that draws.
[[nodiscard]] ProductWorld productWorld();

} // namespace snugwalk
