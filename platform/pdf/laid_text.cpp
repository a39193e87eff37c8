// SPDX-License-Identifier: Apache-2.0
// Line breaking by Qt.
#include "pdf/laid_text.hpp"

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>

namespace snugwalk::pdf {
namespace {

constexpr double leading = 1.28; ///< of the font's size

QString textOf(std::string_view utf8)
{
    QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    text.replace(u'\n', QChar::LineSeparator);
    return text;
}

} // namespace

LaidText::LaidText(std::string_view utf8, const QFont &font, double width, const QColor &colour,
                   Qt::Alignment alignment)
    : m_layout(std::make_shared<QTextLayout>(textOf(utf8), font)),
      m_lineHeight(font.pixelSize() * leading),
      m_colour(colour)
{
    QTextOption option(alignment);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    m_layout->setTextOption(option);
    m_layout->setCacheEnabled(true);
    m_layout->beginLayout();
    double y = 0.0;
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        line.setLineWidth(width);
        line.setPosition({0.0, y});
        y += m_lineHeight;
    }
    m_layout->endLayout();
}

double LaidText::widest() const
{
    double width = 0.0;
    for (int i = 0; i < lines(); ++i)
        width = std::max(width, m_layout->lineAt(i).naturalTextWidth());
    return width;
}

void LaidText::draw(QPainter &painter, QPointF at, int first, int last) const
{
    painter.setPen(m_colour);
    for (int i = first; i < std::min(last, lines()); ++i) {
        const QTextLine line = m_layout->lineAt(i);
        const double slack = (m_lineHeight - line.height()) / 2.0;
        line.draw(&painter, {at.x(), at.y() - first * m_lineHeight + slack});
    }
}

double LaidText::naturalWidth(std::string_view utf8, const QFont &font)
{
    return std::ceil(QFontMetricsF(font).horizontalAdvance(textOf(utf8))) + 1.0;
}

double LaidText::longestWord(std::string_view utf8, const QFont &font)
{
    const QFontMetricsF metrics(font);
    double width = 0.0;
    for (const QString &word : textOf(utf8).split(u' '))
        width = std::max(width, metrics.horizontalAdvance(word));
    return std::ceil(width) + 1.0;
}

} // namespace snugwalk::pdf
