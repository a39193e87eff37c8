// SPDX-License-Identifier: Apache-2.0
// Words broken into lines of a width, ready to be drawn line by line.
#pragma once

#include <memory>
#include <string_view>

#include <QPainter>
#include <QTextLayout>

#include "pdf/sheet.hpp"

namespace snugwalk::pdf {

class LaidText {
public:
    /// \param width tenths of a point; words wider than it are broken anywhere
    LaidText(std::string_view utf8, const QFont &font, double width, const QColor &colour = ink,
             Qt::Alignment alignment = Qt::AlignLeft);

    [[nodiscard]] int lines() const { return m_layout->lineCount(); }
    [[nodiscard]] double lineHeight() const { return m_lineHeight; }
    [[nodiscard]] double height() const { return lines() * m_lineHeight; }
    [[nodiscard]] double widest() const;
    /// Lines from `first` up to, not including, `last`; `at` is the upper left corner of the first drawn.
    void draw(QPainter &painter, QPointF at, int first, int last) const;
    void draw(QPainter &painter, QPointF at) const { draw(painter, at, 0, lines()); }

    /// Of the text in one line, and of its longest word.
    [[nodiscard]] static double naturalWidth(std::string_view utf8, const QFont &font);
    [[nodiscard]] static double longestWord(std::string_view utf8, const QFont &font);

private:
    std::shared_ptr<QTextLayout> m_layout; ///< shared: pieces of one text hold it
    double m_lineHeight = 0.0;
    QColor m_colour;
};

} // namespace snugwalk::pdf
