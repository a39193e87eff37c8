// SPDX-License-Identifier: Apache-2.0
// Head, foot and pieces of each page, on a PDF or on a picture.
#include "pdf/document_pdf.hpp"

#include <algorithm>

#include <QBuffer>
#include <QMarginsF>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

#include "pdf/block_pieces.hpp"
#include "pdf/laid_text.hpp"

namespace snugwalk::pdf {
namespace {

class Printed {
public:
    Printed(const Document &document, const html::PageParts &parts, const Sheet &sheet)
        : m_document(document),
          m_texts(parts.texts),
          m_sheet(sheet),
          m_pieces(documentPieces(document, parts, sheet)),
          m_pages(paginate(m_pieces, sheet.height()))
    {}
    [[nodiscard]] int count() const { return static_cast<int>(m_pages.size()); }
    void draw(QPainter &painter, int page) const;

private:
    void drawHead(QPainter &painter) const;
    void drawFoot(QPainter &painter, int page) const;

    const Document &m_document;
    const Texts &m_texts;
    const Sheet m_sheet;
    const std::vector<Piece> m_pieces;
    const std::vector<Page> m_pages;
};

void Printed::draw(QPainter &painter, int page) const
{
    for (const Placed &placed : m_pages[static_cast<std::size_t>(page)]) {
        painter.save();
        painter.translate(m_sheet.left, m_sheet.top + placed.top);
        placed.piece->draw(painter);
        painter.restore();
    }
    if (page > 0)
        drawHead(painter);
    drawFoot(painter, page);
}

// A sheet that was parted from the others says what it belongs to.
void Printed::drawHead(QPainter &painter) const
{
    const LaidText words(m_document.title + ", " + m_document.subtitle, letters(7.5), m_sheet.width(),
                         quietInk);
    words.draw(painter, {m_sheet.left, m_sheet.top - 6 * millimetre}, 0, 1);
}

void Printed::drawFoot(QPainter &painter, int page) const
{
    const QFont font = letters(7.5);
    const double right = 30 * millimetre;
    const double width = m_sheet.width();
    const LaidText words(m_document.footer, font, width - right, quietInk);
    const LaidText number(m_texts.phrase("page_of", {std::to_string(page + 1), std::to_string(count())}),
                          font, right, quietInk, Qt::AlignRight);
    painter.save();
    painter.translate(m_sheet.left, m_sheet.size.height() - m_sheet.foot + 3 * millimetre);
    painter.setPen(QPen(hairInk, 0.5 * point));
    painter.drawLine(QPointF(0, 0), QPointF(width, 0));
    words.draw(painter, {0, 1.5 * millimetre});
    number.draw(painter, {width - right, 1.5 * millimetre});
    painter.restore();
}

} // namespace

Result<std::string> documentPdf(const Document &document, const html::PageParts &parts, SheetSize size)
{
    const Sheet sheet = sheetOf(size);
    const Printed printed(document, parts, sheet);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(unitsPerInch);
    writer.setTitle(QString::fromStdString(document.title + ", " + document.subtitle));
    writer.setCreator(QStringLiteral("Snugwalk"));
    writer.setPageLayout(QPageLayout(QPageSize(size == SheetSize::A4 ? QPageSize::A4 : QPageSize::Letter),
                                     QPageLayout::Portrait, QMarginsF()));
    QPainter painter;
    if (!painter.begin(&writer))
        return Error{Errc::Io, "the PDF could not be made", "", "close something and try again"};
    for (int page = 0; page < printed.count(); ++page) {
        if (page > 0)
            writer.newPage();
        printed.draw(painter, page);
    }
    painter.end();
    return bytes.toStdString();
}

Pictures documentPictures(const Document &document, const html::PageParts &parts, SheetSize size, int width,
                          int most)
{
    const Sheet sheet = sheetOf(size);
    const Printed printed(document, parts, sheet);
    Pictures pictures{{}, printed.count()};
    const double scale = width / sheet.size.width();
    for (int page = 0; page < std::min(most, printed.count()); ++page) {
        QImage image(width, static_cast<int>(sheet.size.height() * scale), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing |
                               QPainter::SmoothPixmapTransform);
        painter.scale(scale, scale);
        printed.draw(painter, page);
        painter.end();
        pictures.pages.push_back(std::move(image));
    }
    return pictures;
}

} // namespace snugwalk::pdf
