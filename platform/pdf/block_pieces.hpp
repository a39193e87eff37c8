// SPDX-License-Identifier: Apache-2.0
// A document's blocks as pieces of pages.
#pragma once

#include <vector>

#include "html/block_html.hpp"
#include "pdf/piece.hpp"
#include "pdf/sheet.hpp"

namespace snugwalk::pdf {

/// Title, subtitle and every block, in reading order. Decodes photos.
[[nodiscard]] std::vector<Piece> documentPieces(const Document &document, const html::PageParts &parts,
                                                const Sheet &sheet);

} // namespace snugwalk::pdf
