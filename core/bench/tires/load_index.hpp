// SPDX-License-Identifier: Apache-2.0
// What the code on a sidewall says: "115/112 Q" is 1,215 kg single, 1,120 kg in a pair, 160 km/h.
#pragma once

#include <optional>
#include <string_view>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// The load of an index, one tire. A table, no formula: 45 kg times 10^(index / 80) is up to 2 % off.
///
/// \returns `OutOfRange` naming `index` outside 60 to 160.
/// Source:   [ISO-4000-1] annex, [UN-R54] annex 4; 90 to 125 as reprinted in public code, the rest from
/// memory Accuracy: the table's own Tests:    tests/published/bench/tires/tst_load_index.cpp
[[nodiscard]] Result<Mass> loadOfIndex(int index);

/// The speed of a symbol, B to Y; nothing for letters that are none. Source [ISO-4000-1], from memory.
[[nodiscard]] std::optional<Speed> speedOfSymbol(char symbol);

/// A code as it stands on the sidewall.
struct ServiceCode {
    int single = 0;
    std::optional<int> dual; ///< each tire of a pair
    std::optional<char> symbol;
};

/// "121", "121R", "115/112Q", "115/112 Q".
/// \returns `InvalidInput` naming `index` for anything else.
[[nodiscard]] Result<ServiceCode> parseServiceCode(std::string_view text);

} // namespace snugwalk
