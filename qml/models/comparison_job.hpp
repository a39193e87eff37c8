// SPDX-License-Identifier: Apache-2.0
// Comparing two walks, with what each finding called for at either end.
#pragma once

#include <map>

#include "compare/compare.hpp"
#include "concern/concern.hpp"
#include "round/compare.hpp"

namespace snugwalk {

struct Compared {
    Comparison comparison;
    std::map<Id, Call> thenCalls; ///< of findings open as the earlier walk ended
    std::map<Id, Call> nowCalls;
    PairedBy by = PairedBy::Named; ///< how the earlier walk was found
};

/// Recomputes concern at two moments: for the worker.
[[nodiscard]] Compared compareWithCalls(const Catalogue &catalogue, const RigHistory &history, const Id &then,
                                        const Id &now);

} // namespace snugwalk
