// SPDX-License-Identifier: Apache-2.0
// Pieces with pictures: findings with their shape, photos, pairs, the drawing, maps.
#pragma once

#include "html/block_html.hpp"
#include "pdf/text_pieces.hpp"

namespace snugwalk::pdf {

[[nodiscard]] Pieces findingPieces(const FindingBlock &block, double width);
/// Two beside each other, at 200 dots an inch at most.
[[nodiscard]] Pieces photoPieces(const PhotosBlock &block, const html::PageParts &parts, double width);
[[nodiscard]] Pieces pairPieces(const PairBlock &block, const html::PageParts &parts, double width);
/// Lines, not dots.
[[nodiscard]] Pieces drawingPieces(const RigDrawingBlock &block, const html::PageParts &parts, double width);
[[nodiscard]] Pieces mapPieces(const MapBlock &block, const html::PageParts &parts, double width);

/// Title, lines and bars, what one sees in them.
[[nodiscard]] Pieces plotPieces(const PlotBlock &block, double width);

} // namespace snugwalk::pdf
