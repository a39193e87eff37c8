// SPDX-License-Identifier: Apache-2.0
// Words, boxes to tick, and lines to write on.
#include "pdf/text_pieces.hpp"

#include <algorithm>

#include <QPainterPath>

namespace snugwalk::pdf {
namespace {

constexpr double writingRow = 8.5 * millimetre; ///< between lines that are written on by hand
constexpr double hair = 0.5 * point;

void rule(QPainter &painter, double x1, double x2, double y, const QColor &colour, double width = hair)
{
    painter.setPen(QPen(colour, width));
    painter.drawLine(QPointF(x1, y), QPointF(x2, y));
}

// In a box of that width; a stroke of one spot is a dot, which round caps draw.
QPainterPath pathOf(const Signature &signature, double width)
{
    QPainterPath path;
    for (const std::vector<Signature::Spot> &line : signature.lines) {
        for (std::size_t i = 0; i < line.size(); ++i) {
            const QPointF at(line[i].across * width, line[i].down * width);
            if (i == 0)
                path.moveTo(at);
            else
                path.lineTo(at);
        }
        if (line.size() == 1)
            path.lineTo(path.currentPosition() + QPointF(0.01, 0));
    }
    return path;
}

} // namespace

Pieces linePieces(const LaidText &text, double indent, double above)
{
    Pieces pieces;
    for (int i = 0; i < text.lines(); ++i) {
        Piece piece;
        piece.height = text.lineHeight();
        piece.above = i == 0 ? above : 0.0;
        piece.keepWithNext = i + 1 < text.lines() && (i == 0 || i == text.lines() - 2);
        piece.draw = [text, i, indent](QPainter &painter) { text.draw(painter, {indent, 0.0}, i, i + 1); };
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

Pieces headingPieces(const HeadingBlock &block, double width)
{
    const bool isPart = block.level <= 2;
    const LaidText text(block.text, letters(isPart ? 14.0 : 11.5, true), width);
    Piece piece;
    const double line = isPart ? 2 * millimetre : 0.0;
    piece.height = text.height() + line;
    piece.above = (isPart ? 6 : 3.5) * millimetre;
    piece.keepWithNext = true;
    piece.draw = [text, width, isPart, line](QPainter &painter) {
        if (isPart)
            rule(painter, 0, width, 0, ink, 1.2 * point);
        text.draw(painter, {0.0, line});
    };
    return {piece};
}

Pieces textPieces(const TextBlock &block, double width)
{
    const bool isState = block.tone == TextTone::State;
    const bool isQuiet = block.tone == TextTone::Quiet;
    const LaidText text(block.text,
                        letters(isState   ? 12.0
                                : isQuiet ? smallPoints
                                          : bodyPoints),
                        width, isQuiet ? quietInk : ink);
    return linePieces(text, 0.0, (isState ? 3.0 : 1.4) * millimetre);
}

Pieces tickPieces(const TickBlock &block, double width)
{
    Pieces pieces;
    const double indent = 7 * millimetre;
    for (const std::string &line : block.lines) {
        const LaidText text(line, letters(bodyPoints), width - indent);
        Piece piece;
        piece.height = text.height();
        piece.above = 1.8 * millimetre;
        piece.draw = [text, indent](QPainter &painter) {
            const double side = 3.6 * millimetre;
            painter.setPen(QPen(ink, 0.9 * point));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF(0.5 * point, (text.lineHeight() - side) / 2, side, side));
            text.draw(painter, {indent, 0.0});
        };
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

Pieces cautionPieces(const CautionBlock &block, const std::string &title, double width)
{
    const double padding = 3 * millimetre;
    const double gap = 1.2 * millimetre;
    std::vector<LaidText> texts{LaidText(title, letters(bodyPoints, true), width - 2 * padding)};
    for (const std::string &line : block.lines)
        texts.emplace_back(line, letters(bodyPoints), width - 2 * padding);
    double height = 2 * padding - gap;
    for (const LaidText &text : texts)
        height += text.height() + gap;
    Piece piece;
    piece.height = height;
    piece.above = 3 * millimetre;
    piece.draw = [texts, width, height, padding, gap](QPainter &painter) {
        painter.setPen(QPen(cautionEdge, 1.5 * point));
        painter.setBrush(cautionPaper);
        painter.drawRect(QRectF(0, 0, width, height));
        double y = padding;
        for (const LaidText &text : texts) {
            text.draw(painter, {padding, y});
            y += text.height() + gap;
        }
    };
    return {piece};
}

Pieces blankPieces(const BlankBlock &block, double width)
{
    Pieces pieces;
    if (!block.label.empty()) {
        pieces = linePieces(LaidText(block.label, letters(bodyPoints), width), 0.0, 2.5 * millimetre);
        for (Piece &piece : pieces)
            piece.keepWithNext = true;
    }
    for (int i = 0; i < block.rows; ++i) {
        Piece piece;
        piece.height = writingRow;
        piece.keepWithNext = i + 2 == block.rows; // no lonely last line
        piece.draw = [width](QPainter &painter) { rule(painter, 0, width, writingRow, ink); };
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

Pieces signaturePieces(const SignatureBlock &block, const Texts &texts, double width)
{
    const double gap = 8 * millimetre;
    const double half = (width - gap) / 2;
    const LaidText who(block.who, letters(bodyPoints, true), width);
    const LaidText where(block.drawn ? block.drawn->placeAndDate : texts.phrase("page_place_date"),
                         letters(smallPoints), half, quietInk);
    const LaidText sign(texts.phrase(block.drawn ? "paper_signed_on_screen" : "page_signature"),
                        letters(smallPoints), half, quietInk);
    Piece piece;
    const double room = block.drawn ? half * signatureHeight : 13 * millimetre;
    const double line = who.height() + room;
    const QPen signing(ink, 0.6 * millimetre, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    const QPainterPath drawn = block.drawn ? pathOf(*block.drawn, half) : QPainterPath();
    piece.height = line + where.lineHeight() + millimetre;
    piece.above = 5 * millimetre;
    piece.draw = [=](QPainter &painter) {
        who.draw(painter, {0, 0});
        painter.strokePath(drawn.translated(half + gap, line - room), signing);
        rule(painter, 0, half, line, ink);
        rule(painter, half + gap, width, line, ink);
        where.draw(painter, {0, line + millimetre});
        sign.draw(painter, {half + gap, line + millimetre});
    };
    return {piece};
}

} // namespace snugwalk::pdf
