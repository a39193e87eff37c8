// SPDX-License-Identifier: Apache-2.0
// The shopping list in words.
#pragma once

#include <string>
#include <vector>

#include "catalogue/texts.hpp"
#include "round/supplies.hpp"

namespace snugwalk {

/// "310 mL", "12", "340 g".
[[nodiscard]] std::string supplyAmount(const SupplyItem &item, double si, UnitSystem units);
/// "cartridge of 300 mL"; "piece".
[[nodiscard]] std::string packWords(const SupplyItem &item, const Texts &texts, UnitSystem units);
/// A line and, indented, what it is for.
[[nodiscard]] std::string supplyWords(const SupplyLine &line, const SupplyList &list, const Texts &texts,
                                      UnitSystem units);
/// The short cautions of the items to get, each once, a line each.
[[nodiscard]] std::string supplyCautions(const std::vector<SupplyLine> &lines, const SupplyList &list,
                                         const Texts &texts);

} // namespace snugwalk
