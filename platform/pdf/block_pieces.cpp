// SPDX-License-Identifier: Apache-2.0
// Choosing the pieces of each kind of block, and what stays together.
#include "pdf/block_pieces.hpp"

#include "pdf/picture_pieces.hpp"

namespace snugwalk::pdf {
namespace {

struct Maker {
    const html::PageParts &parts;
    double width;
    double pageHeight;

    Pieces operator()(const HeadingBlock &b) const { return headingPieces(b, width); }
    Pieces operator()(const TextBlock &b) const { return textPieces(b, width); }
    Pieces operator()(const TableBlock &b) const { return tablePieces(b, width, pageHeight); }
    Pieces operator()(const FindingBlock &b) const { return findingPieces(b, width); }
    Pieces operator()(const TickBlock &b) const { return tickPieces(b, width); }
    Pieces operator()(const CautionBlock &b) const
    {
        const std::string title = parts.texts.phrase("page_cautions");
        Pieces whole = cautionPieces(b, title, width);
        if (whole.front().height <= pageHeight)
            return whole;
        Pieces apart; // a frame for each line
        for (const std::string &line : b.lines) {
            for (Piece &piece : cautionPieces({{line}}, title, width))
                apart.push_back(std::move(piece));
        }
        return apart;
    }
    Pieces operator()(const PhotosBlock &b) const { return photoPieces(b, parts, width); }
    Pieces operator()(const PairBlock &b) const { return pairPieces(b, parts, width); }
    Pieces operator()(const RigDrawingBlock &b) const { return drawingPieces(b, parts, width); }
    Pieces operator()(const MapBlock &b) const { return mapPieces(b, parts, width); }
    Pieces operator()(const PlotBlock &b) const { return plotPieces(b, width); }
    Pieces operator()(const BlankBlock &b) const { return blankPieces(b, width); }
    Pieces operator()(const SignatureBlock &b) const { return signaturePieces(b, parts.texts, width); }
    Pieces operator()(const PageBreakBlock &) const { return {}; }
};

// A caution stays with the work before it, a finding's first photos with its words, a name with what is
// signed, and a quiet note with what it notes.
bool staysWithBefore(const Block &block)
{
    const auto *text = std::get_if<TextBlock>(&block);
    return (text != nullptr && text->tone == TextTone::Quiet) ||
           std::holds_alternative<CautionBlock>(block) || std::holds_alternative<PhotosBlock>(block) ||
           std::holds_alternative<SignatureBlock>(block);
}

Pieces titlePieces(const Document &document, double width)
{
    Pieces pieces;
    for (Piece &piece : linePieces(LaidText(document.title, letters(20.0, true), width), 0, 0))
        pieces.push_back(std::move(piece));
    for (Piece &piece :
         linePieces(LaidText(document.subtitle, letters(bodyPoints), width, quietInk), 0, 0.5 * millimetre))
        pieces.push_back(std::move(piece));
    for (Piece &piece : pieces)
        piece.keepWithNext = true;
    return pieces;
}

} // namespace

std::vector<Piece> documentPieces(const Document &document, const html::PageParts &parts, const Sheet &sheet)
{
    const Maker maker{parts, sheet.width(), sheet.height()};
    Pieces all = titlePieces(document, sheet.width());
    bool breaks = false;
    for (const Block &block : document.blocks) {
        breaks = breaks || std::holds_alternative<PageBreakBlock>(block);
        Pieces made = std::visit(maker, block);
        if (made.empty())
            continue;
        made.front().breakBefore = std::exchange(breaks, false);
        if (staysWithBefore(block) && !all.empty() && !made.front().breakBefore)
            all.back().keepWithNext = true;
        for (Piece &piece : made)
            all.push_back(std::move(piece));
    }
    return all;
}

} // namespace snugwalk::pdf
