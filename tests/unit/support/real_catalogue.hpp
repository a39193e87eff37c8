// SPDX-License-Identifier: Apache-2.0
// The product's own catalogue, read from the source tree: for tests only.
#pragma once

#include <string>
#include <vector>

#include "catalogue/pick.hpp"
#include "catalogue/texts.hpp"

namespace snugwalk::test {

/// The bytes that `Catalogue::load` wants.
struct CatalogueBytes {
    std::vector<std::string> points; ///< one a zone, sorted by file name
    std::string sets;
    std::string sources;
    std::string holds;
    [[nodiscard]] Result<Catalogue> load() const;
};
[[nodiscard]] const CatalogueBytes &realCatalogueBytes();

/// Loaded once; a fault ends the test program.
[[nodiscard]] const Catalogue &realCatalogue();
/// \param language "en" or "es"
[[nodiscard]] const Texts &realTexts(const std::string &language = "en");

} // namespace snugwalk::test
