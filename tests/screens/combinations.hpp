// SPDX-License-Identifier: Apache-2.0
// Few settings of a screen that together show every pair.
#pragma once

#include <cstddef>
#include <vector>

namespace snugwalk::screens {

/// Each row holds one choice a factor, counted from 0. Every two choices of two factors stand together in a
/// row.
using Row = std::vector<std::size_t>;

/// Greedy: each row takes the choices that show most pairs not seen yet. \param counts choices a factor
/// Source: pairwise covering arrays, D. M. Cohen et al., "The AETG system", IEEE Trans. Softw. Eng. 23 (1997)
/// 437 (from memory).
[[nodiscard]] std::vector<Row> pairwise(const std::vector<std::size_t> &counts);
/// All of them.
[[nodiscard]] std::vector<Row> everyRow(const std::vector<std::size_t> &counts);
/// How many pairs no row shows: 0 for what `pairwise` gives.
[[nodiscard]] std::size_t pairsMissing(const std::vector<Row> &rows, const std::vector<std::size_t> &counts);

} // namespace snugwalk::screens
