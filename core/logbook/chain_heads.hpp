// SPDX-License-Identifier: Apache-2.0
// The last link of every chain of entries: who holds these figures can tell later whether anything was
// changed.
#pragma once

#include <string>
#include <vector>

#include "keys/hash.hpp"
#include "logbook/logbook.hpp"

namespace snugwalk {

/// One device's chain as far as this logbook has it.
struct ChainHead {
    std::string label;        ///< the device's name for people, may be empty
    std::string stream;       ///< 48 hexadecimal digits
    std::int64_t entries = 0; ///< number of the last one
    Hash hash;                ///< of the last one: BLAKE2b-256 over it and the hash before it
};

/// Every stream with an entry, by label, then by name.
[[nodiscard]] Result<std::vector<ChainHead>> chainHeads(Logbook &book);

} // namespace snugwalk
