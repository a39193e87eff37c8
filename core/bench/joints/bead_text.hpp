// SPDX-License-Identifier: Apache-2.0
// A bead as people write it.
#pragma once

#include <string_view>

#include "base/result.hpp"
#include "bench/joints/sealant.hpp"

namespace snugwalk {

/// "1/4 in", "1/4 x 1/2", "6 x 3 mm", "3/8 in fillet", "10 x 5 mm half ellipse", "1 1/2 x 1/8 in flat".
/// A unit after the last size is meant for both. One size without a shape is a round bead as it leaves the
/// nozzle; two are a flat one; one size of another shape is its width and its height.
///
/// \param shape said apart, or nothing; a shape in the text goes before it
/// \returns the section, length and waste left as they are; `InvalidInput` or `OutOfRange` naming bead. A
/// bare
///          number that is no fraction is refused: inches and millimetres differ by a factor of 25.
/// Tests:   tests/unit/bench/tst_typed_sizes.cpp
[[nodiscard]] Result<Bead> parseBead(std::string_view text, std::string_view shape = {});

} // namespace snugwalk
