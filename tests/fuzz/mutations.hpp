// SPDX-License-Identifier: Apache-2.0
// Damage to an input, the same on every machine.
#pragma once

#include <random>
#include <string>
#include <vector>

/// One to eight changes to one of `corpus`: flipped bits, odd bytes, pieces lost, doubled, swapped
/// with another file. Standard distributions differ between libraries, so only the raw generator is used.
[[nodiscard]] std::string mutate(const std::vector<std::string> &corpus, std::mt19937 &rng);
