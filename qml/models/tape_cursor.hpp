// SPDX-License-Identifier: Apache-2.0
// Which line of a walk comes next.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "walk/progress.hpp"

namespace snugwalk {

/// Lines that still need a look, with what was tapped but is not on the disk yet taken as done.
[[nodiscard]] bool isLineOpen(const Walk &walk, const std::vector<Mark> &marks,
                              const std::multiset<int> &pending, int line);

/// The next open line after `from`, going round once; `from` itself comes last. Nothing when none is.
[[nodiscard]] std::optional<int> nextOpenLine(const Walk &walk, const std::vector<Mark> &marks,
                                              const std::multiset<int> &pending, int from);

/// The first line whose marks differ: where an undo was felt.
[[nodiscard]] std::optional<int> changedLine(const Walk &walk, const std::vector<Mark> &before,
                                             const std::vector<Mark> &after);

/// Points of a line without a mark.
[[nodiscard]] std::vector<std::string> openPoints(const TapeLine &line, const std::vector<Mark> &marks);

} // namespace snugwalk
