// SPDX-License-Identifier: Apache-2.0
// The product's own catalogue and its words, from the bytes compiled in.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "catalogue/supplies.hpp"
#include "catalogue/texts.hpp"

namespace snugwalk {

/// Loaded once; a catalogue that does not load is a broken build and ends the process.
[[nodiscard]] const Catalogue &productCatalogue();

/// What mends use up; loaded once.
[[nodiscard]] const SupplyList &productSupplies();

/// Words in a language ("en", "es"); `NotFound` for one we do not have.
[[nodiscard]] Result<Texts> productTexts(std::string_view language);
[[nodiscard]] std::vector<std::string> productLanguages();

} // namespace snugwalk
