// SPDX-License-Identifier: Apache-2.0
// A document as plain text: for a terminal, a mail, or a printer that knows nothing else.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "report/document.hpp"

namespace snugwalk::papers {

/// UTF-8 in lines of `columns` characters at most, each ended by \n. Photos are told by their captions,
/// drawings and maps left to what is said beside them. `columns` from 40 on.
[[nodiscard]] std::string plainText(const Document &document, const Texts &texts, std::size_t columns = 72);

} // namespace snugwalk::papers
