// SPDX-License-Identifier: Apache-2.0
// libsodium must be initialised once before any of its functions; this does it.
#pragma once

#include <sodium.h>

#include "base/contract.hpp"

namespace snugwalk::detail {

inline void sodiumReady()
{
    static const bool ready = sodium_init() >= 0;
    SNUG_ASSERT(ready);
}

} // namespace snugwalk::detail
