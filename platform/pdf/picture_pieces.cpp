// SPDX-License-Identifier: Apache-2.0
// Photos are scaled once, to what print shows; drawings and maps are drawn by their SVG.
#include "pdf/picture_pieces.hpp"

#include <algorithm>
#include <cmath>

#include <QBuffer>
#include <QImageReader>
#include <QSvgRenderer>

#include "html/drawing_svg.hpp"
#include "html/map_svg.hpp"
#include "html/photo_svg.hpp"
#include "html/plot_svg.hpp"

namespace snugwalk::pdf {
namespace {

constexpr double gap = 6 * millimetre;
constexpr double tallestPhoto = 52 * millimetre;
constexpr double tallestDrawing = 95 * millimetre;
constexpr double dotsPerInch = 200.0;

using Svg = std::shared_ptr<QSvgRenderer>;

Svg svgOf(const std::string &text)
{
    if (text.empty())
        return nullptr;
    auto renderer = std::make_shared<QSvgRenderer>(QByteArray::fromStdString(text));
    return renderer->isValid() ? renderer : nullptr;
}

// Nothing reaches out of its frame.
void drawSvg(QPainter &painter, const Svg &svg, const QRectF &where)
{
    painter.save();
    painter.setClipRect(where);
    svg->render(&painter, where);
    painter.restore();
}

QImage decoded(const std::string &bytes)
{
    QByteArray data = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    return reader.read();
}

// What print shows at this width, without texts, profiles or see-through parts.
QImage forPrint(const QImage &image, double width)
{
    const int most = static_cast<int>(width / unitsPerInch * dotsPerInch);
    const QImage small = image.width() > most ? image.scaledToWidth(most, Qt::SmoothTransformation) : image;
    return small.convertToFormat(QImage::Format_RGB32);
}

// A photo in a column: the picture, the lines drawn on it, words below.
struct Plate {
    QImage image;
    Svg over;
    LaidText caption;
    double width = 0.0; ///< of the picture
    double high = 0.0;
    [[nodiscard]] double height() const { return high + 1.2 * millimetre + caption.height(); }
    void draw(QPainter &painter, double x) const
    {
        const QRectF where(x, 0, width, high);
        if (image.isNull()) {
            painter.setPen(QPen(quietInk, point, Qt::DashLine));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(where);
        } else {
            painter.drawImage(where, image);
        }
        if (over)
            drawSvg(painter, over, where);
        caption.draw(painter, {x, high + 1.2 * millimetre});
    }
};

Plate plateOf(const PhotoPicture &picture, const html::PageParts &parts, double column)
{
    const auto photo = parts.photos ? parts.photos(picture.photo) : std::nullopt;
    const std::string words =
        photo ? picture.caption : picture.caption + " (" + parts.texts.phrase("page_photo_elsewhere") + ")";
    Plate plate{QImage(), nullptr, LaidText(words, letters(smallPoints), column, quietInk), column,
                20 * millimetre};
    if (!photo)
        return plate;
    const QImage image = decoded(photo->bytes);
    if (image.isNull())
        return plate;
    const double shape = static_cast<double>(image.width()) / image.height();
    plate.high = std::min(tallestPhoto, column / shape);
    plate.width = plate.high * shape;
    plate.image = forPrint(image, plate.width);
    if (picture.drawing)
        plate.over = svgOf(html::drawnSvg(*picture.drawing, html::sizeOf(picture.photo), parts.units));
    return plate;
}

Piece platesPiece(const std::vector<Plate> &plates, double column)
{
    Piece piece;
    for (const Plate &plate : plates)
        piece.height = std::max(piece.height, plate.height());
    piece.above = 2.5 * millimetre;
    piece.draw = [plates, column](QPainter &painter) {
        for (std::size_t i = 0; i < plates.size(); ++i)
            plates[i].draw(painter, static_cast<double>(i) * (column + gap));
    };
    return piece;
}

double columnOf(double width) { return (width - gap) / 2; }

// In the middle of `width`, at most `wide`.
Piece svgPiece(const std::string &text, double width, double aspect, double wide)
{
    const Svg svg = svgOf(text);
    const double high = std::min(tallestDrawing, wide / aspect);
    const QRectF where((width - high * aspect) / 2, 0, high * aspect, high);
    Piece piece;
    piece.height = high;
    piece.above = 2.5 * millimetre;
    piece.draw = [svg, where](QPainter &painter) {
        if (svg)
            drawSvg(painter, svg, where);
    };
    return piece;
}

} // namespace

Pieces findingPieces(const FindingBlock &block, double width)
{
    const double indent = 17 * millimetre;
    const LaidText title(block.title, letters(bodyPoints + 0.5, true), width - indent);
    const Svg glyph = svgOf(html::glyphSvg(block.call));
    const LaidText number(std::to_string(block.number), letters(bodyPoints, true), 7 * millimetre, ink,
                          Qt::AlignHCenter);
    Piece head;
    head.height = std::max(title.height(), 7 * millimetre);
    head.above = 3.5 * millimetre;
    head.keepWithNext = !block.lines.empty();
    head.draw = [=, has = block.number > 0](QPainter &painter) {
        const double side = 6.6 * millimetre;
        if (has) {
            painter.setPen(QPen(ink, point));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QRectF(0.2 * millimetre, 0, side, side));
            number.draw(painter, {0, (side - number.lineHeight()) / 2});
        }
        if (glyph)
            glyph->render(&painter,
                          QRectF(9 * millimetre, 0.4 * millimetre, 5.6 * millimetre, 5.6 * millimetre));
        title.draw(painter, {indent, std::max(0.0, (side - title.lineHeight()) / 2)});
    };
    Pieces pieces{head};
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        const LaidText text(block.lines[i], letters(bodyPoints - 0.5), width - indent,
                            i == 0 ? ink : quietInk);
        for (Piece &piece : linePieces(text, indent, 0.6 * millimetre))
            pieces.push_back(std::move(piece));
    }
    for (std::size_t i = 0; i + 1 < pieces.size() && pieces.size() < 12; ++i)
        pieces[i].keepWithNext = true; // a short story stays whole
    return pieces;
}

Pieces photoPieces(const PhotosBlock &block, const html::PageParts &parts, double width)
{
    Pieces pieces;
    const double column = columnOf(width);
    for (std::size_t i = 0; i < block.photos.size(); i += 2) {
        std::vector<Plate> plates{plateOf(block.photos[i], parts, column)};
        if (i + 1 < block.photos.size())
            plates.push_back(plateOf(block.photos[i + 1], parts, column));
        pieces.push_back(platesPiece(plates, column));
    }
    return pieces;
}

Pieces pairPieces(const PairBlock &block, const html::PageParts &parts, double width)
{
    Pieces pieces;
    if (!block.title.empty())
        pieces = headingPieces({3, block.title}, width);
    std::vector<Plate> plates;
    for (const auto *side : {&block.then, &block.now}) {
        if (*side)
            plates.push_back(plateOf(**side, parts, columnOf(width)));
    }
    if (!plates.empty())
        pieces.push_back(platesPiece(plates, columnOf(width)));
    return pieces;
}

Pieces drawingPieces(const RigDrawingBlock &block, const html::PageParts &parts, double width)
{
    Pieces pieces;
    const std::vector<html::DrawingSheet> sheets =
        html::drawingSheets(block, html::drawingWords(block, parts.texts));
    // every sheet as wide as the first comes out, so that all their balloons are alike
    const double wide = std::min(width, tallestDrawing * sheets.front().aspect);
    for (const html::DrawingSheet &sheet : sheets)
        pieces.push_back(svgPiece(sheet.svg, width, sheet.aspect, wide));
    const std::string legend = html::drawingLegend(block, parts.texts);
    if (legend.empty())
        return pieces;
    pieces.back().keepWithNext = true;
    for (Piece &piece : linePieces(LaidText(legend, letters(smallPoints), width, quietInk), 0, millimetre))
        pieces.push_back(std::move(piece));
    return pieces;
}

Pieces mapPieces(const MapBlock &block, const html::PageParts &parts, double width)
{
    const std::string map = html::mapSvg(block, {parts.coast, parts.places, parts.units}, "");
    if (map.empty())
        return {};
    Pieces pieces{svgPiece(map, width, html::mapAspect, width)};
    pieces.back().keepWithNext = true;
    const std::string caption = parts.texts.phrase("page_map") + (block.caption.empty() ? "" : ": ") +
                                block.caption + "." + html::mapSources(parts);
    for (Piece &piece : linePieces(LaidText(caption, letters(smallPoints), width, quietInk), 0, millimetre))
        pieces.push_back(std::move(piece));
    for (const MapSpot &spot : block.spots) {
        if (spot.text.empty())
            continue;
        const LaidText text(std::to_string(spot.number) + ": " + spot.text, letters(bodyPoints), width);
        for (Piece &piece : linePieces(text, 0, millimetre))
            pieces.push_back(std::move(piece));
    }
    return pieces;
}

Pieces plotPieces(const PlotBlock &block, double width)
{
    const Plot &plot = block.plot;
    Pieces pieces = headingPieces({3, plot.title}, width);
    const std::string svg = html::plotSvg(plot);
    if (!svg.empty()) {
        const Svg drawn = svgOf(svg);
        const QSizeF size = drawn ? drawn->viewBoxF().size() : QSizeF(1, 1);
        pieces.push_back(svgPiece(svg, width, size.width() / size.height(), width));
        pieces.back().keepWithNext = true;
    }
    const std::string words = plot.empty.empty() ? plot.about : plot.empty;
    for (Piece &piece : linePieces(LaidText(words, letters(bodyPoints), width), 0, millimetre))
        pieces.push_back(std::move(piece));
    for (const std::string &note : plot.notes) {
        for (Piece &piece : linePieces(LaidText(note, letters(smallPoints), width, quietInk), 0, millimetre))
            pieces.push_back(std::move(piece));
    }
    return pieces;
}

} // namespace snugwalk::pdf
