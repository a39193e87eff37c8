// SPDX-License-Identifier: Apache-2.0
// Pieces of words, tables and lines to write on.
#pragma once

#include <string>
#include <vector>

#include "catalogue/texts.hpp"
#include "pdf/laid_text.hpp"
#include "pdf/piece.hpp"
#include "report/document.hpp"

namespace snugwalk::pdf {

using Pieces = std::vector<Piece>;

/// One piece a line; the first two and the last two lines stay together. \param indent from the left
[[nodiscard]] Pieces linePieces(const LaidText &text, double indent, double above);
/// Stays with what follows.
[[nodiscard]] Pieces headingPieces(const HeadingBlock &block, double width);
[[nodiscard]] Pieces textPieces(const TextBlock &block, double width);
/// Rows are not broken unless one is higher than half a page; the head stands on each page.
[[nodiscard]] Pieces tablePieces(const TableBlock &block, double width, double pageHeight);
[[nodiscard]] Pieces tickPieces(const TickBlock &block, double width);
/// One framed piece, where it fits on a page.
[[nodiscard]] Pieces cautionPieces(const CautionBlock &block, const std::string &title, double width);
[[nodiscard]] Pieces blankPieces(const BlankBlock &block, double width);
[[nodiscard]] Pieces signaturePieces(const SignatureBlock &block, const Texts &texts, double width);

} // namespace snugwalk::pdf
