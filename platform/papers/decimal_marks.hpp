// SPDX-License-Identifier: Apache-2.0
// Quantities as the reader's language writes them.
#pragma once

#include <string>
#include <string_view>

#include "report/document.hpp"

namespace snugwalk::papers {

/// "448.2 kPa" as "448,2 kPa" where the language has a decimal comma: only a number that `formatSi` wrote,
/// which a no-break space binds to its unit, so that no clock, version or word of a person is touched. \param
/// language ISO 639-1 Source: Unicode CLDR, numbers: decimal "," in de, es, fr, "." in en (from memory)
[[nodiscard]] std::string withDecimalMark(std::string text, std::string_view language);
/// In all words of the document, but those on photos.
void putDecimalMarks(Document &document);

} // namespace snugwalk::papers
