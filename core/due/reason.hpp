// SPDX-License-Identifier: Apache-2.0
// One ground for a date or a concern, kept as parts so that each language builds its own sentence.
#pragma once

#include <optional>
#include <string>
#include <utility>

#include "base/units.hpp"

namespace snugwalk {

/// `slug` picks the sentence, `detail` is the word or date in it, `si` the number in it.
struct Reason {
    std::string slug;
    std::string detail;
    std::optional<double> si;
    Dimension dimension = Dimension::Count; ///< of `si`
    friend bool operator==(const Reason &, const Reason &) = default;
};

template <typename Q>
[[nodiscard]] Reason reasonWith(std::string slug, Q quantity, std::string detail = {})
{
    return {std::move(slug), std::move(detail), quantity.si(), DimensionOf<Q>::value};
}

} // namespace snugwalk
