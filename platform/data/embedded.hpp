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

/// Words in a language of `productLanguages`; `NotFound` for one we do not have.
[[nodiscard]] Result<Texts> productTexts(std::string_view language);

struct Language {
    std::string slug; ///< ISO 639-1
    std::string name; ///< as its speakers write it
};
/// By slug; loaded once.
[[nodiscard]] const std::vector<Language> &productLanguages();
[[nodiscard]] bool isProductLanguage(std::string_view slug);

} // namespace snugwalk
