// SPDX-License-Identifier: Apache-2.0
// Rigs to walk round in tests, invented.
#pragma once

#include "rig/rig.hpp"

namespace snugwalk::test {

/// A plain North American tandem: ball hitch, chains, breakaway, electric brakes, leaf springs, seven-way
/// plug, gas, awning, step; no slide-out and no extras. Every plate is read.
[[nodiscard]] Rig tandem();

/// A twin-axle trailer as the demo has it: kerb side is left, fittings of Australia and New Zealand.
[[nodiscard]] Rig southernTwinAxle();

/// The least that `validate` takes.
[[nodiscard]] Rig bareRig();

} // namespace snugwalk::test
