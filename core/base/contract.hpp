// SPDX-License-Identifier: Apache-2.0
// Broken promises between our own functions end the process, in every build type.
#pragma once

#include <cstdio>
#include <cstdlib>

namespace snugwalk::detail {

/// Prints what was promised and where, then aborts. Never for bad input: that is a `Result`.
[[noreturn]] inline void promiseBroken(const char *what, const char *file, int line)
{
    std::fprintf(stderr, "snugwalk: broken promise: %s (%s:%d)\n", what, file, line);
    std::abort();
}

} // namespace snugwalk::detail

#define SNUG_ASSERT(condition)                                                                               \
    ((condition) ? static_cast<void>(0) : ::snugwalk::detail::promiseBroken(#condition, __FILE__, __LINE__))
