// SPDX-License-Identifier: Apache-2.0
// Tables: columns as wide as their words ask, rows that stay whole.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "pdf/text_pieces.hpp"

namespace snugwalk::pdf {
namespace {

constexpr double gap = 3.5 * millimetre;  ///< between columns
constexpr double room = 0.9 * millimetre; ///< above and below a row's words
constexpr double cellPoints = 9.0;
constexpr double writingHeight = 7 * millimetre; ///< of a row that is filled in by hand

struct Columns {
    std::vector<double> left;
    std::vector<double> width;
};

// A column to be written in by hand.
bool isBlank(const TableBlock &block, std::size_t column)
{
    return !block.rows.empty() && std::all_of(block.rows.begin(), block.rows.end(), [&](const auto &row) {
        return column >= row.size() || row[column].empty();
    });
}

struct Asked {
    std::vector<double> least;   ///< the longest word
    std::vector<double> natural; ///< all in one line
};

Asked askedBy(const TableBlock &block)
{
    const std::size_t count = block.head.size();
    Asked asked{std::vector<double>(count, 0.0), std::vector<double>(count, 0.0)};
    const auto measure = [&](const std::vector<std::string> &row, bool bold) {
        const QFont font = letters(cellPoints, bold);
        for (std::size_t i = 0; i < std::min(count, row.size()); ++i) {
            asked.least[i] = std::max(asked.least[i], LaidText::longestWord(row[i], font));
            asked.natural[i] = std::max(asked.natural[i], LaidText::naturalWidth(row[i], font));
        }
    };
    measure(block.head, true);
    for (const auto &row : block.rows)
        measure(row, false);
    return asked;
}

// The narrow columns get what they ask for, the wide ones share the rest, the wider more but not in
// proportion; none gets less than its longest word.
std::vector<double> shared(const Asked &asked, double all)
{
    const std::size_t count = asked.natural.size();
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return asked.natural[a] < asked.natural[b]; });
    std::vector<double> widths(count, 0.0);
    double left = all;
    for (std::size_t n = 0; n < count; ++n) {
        const std::size_t i = order[n];
        double kept = 0.0; // for the longest words of those still to come
        double shares = 0.0;
        for (std::size_t m = n; m < count; ++m) {
            kept += m > n ? std::min(asked.least[order[m]], all / 2) : 0.0;
            shares += std::sqrt(asked.natural[order[m]]);
        }
        const double fair = left * std::sqrt(asked.natural[i]) / std::max(shares, 1.0);
        widths[i] = std::min(asked.natural[i], std::max(std::min(asked.least[i], all / 2), fair));
        widths[i] = std::max(all / 20, std::min(widths[i], left - kept));
        left -= widths[i];
    }
    return widths;
}

Columns columnsOf(const TableBlock &block, double width)
{
    const std::size_t count = block.head.size();
    const double all = width - gap * static_cast<double>(count - 1);
    std::vector<double> widths = shared(askedBy(block), all);
    const double left = std::max(0.0, all - std::accumulate(widths.begin(), widths.end(), 0.0));
    std::vector<std::size_t> blanks;
    for (std::size_t i = 0; i < count; ++i) {
        if (isBlank(block, i))
            blanks.push_back(i);
    }
    for (const std::size_t i : blanks) // room to write
        widths[i] += left / static_cast<double>(blanks.size());
    if (blanks.empty() && !(count <= block.numeric.size() && block.numeric[count - 1]))
        widths.back() += left; // words may run to the edge
    Columns columns{{}, widths};
    double x = 0.0;
    for (const double one : widths) {
        columns.left.push_back(x);
        x += one + gap;
    }
    return columns;
}

struct Row {
    std::vector<LaidText> cells;
    int lines = 0;
    double lineHeight = 0.0;
};

Row rowOf(const TableBlock &block, const std::vector<std::string> &texts, const Columns &columns, bool bold)
{
    Row row;
    for (std::size_t i = 0; i < std::min(texts.size(), columns.width.size()); ++i) {
        const bool numeric = i < block.numeric.size() && block.numeric[i];
        row.cells.emplace_back(texts[i], letters(cellPoints, bold), columns.width[i], ink,
                               numeric ? Qt::AlignRight : Qt::AlignLeft);
        row.lines = std::max(row.lines, row.cells.back().lines());
        row.lineHeight = row.cells.back().lineHeight();
    }
    return row;
}

Piece slice(const Row &row, const Columns &columns, double width, int first, int last, bool isHead,
            double least = 0.0)
{
    Piece piece;
    piece.height = std::max(least, (last - first) * row.lineHeight + 2 * room);
    const bool closes = last >= row.lines;
    piece.draw = [row, columns, width, first, last, closes, isHead,
                  height = piece.height](QPainter &painter) {
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            row.cells[i].draw(painter, {columns.left[i], room}, first, last);
        if (!closes)
            return;
        painter.setPen(QPen(isHead ? ink : hairInk, isHead ? point : 0.5 * point));
        painter.drawLine(QPointF(0, height), QPointF(width, height));
    };
    return piece;
}

} // namespace

Pieces tablePieces(const TableBlock &block, double width, double pageHeight)
{
    if (block.head.empty())
        return {};
    const Columns columns = columnsOf(block, width);
    const Row headRow = rowOf(block, block.head, columns, true);
    Piece head = slice(headRow, columns, width, 0, headRow.lines, true);
    head.above = 2 * millimetre;
    head.keepWithNext = true;
    const auto kept = std::make_shared<const Piece>(head);
    Pieces pieces{head};
    bool toWriteIn = false;
    for (std::size_t i = 0; i < block.head.size(); ++i)
        toWriteIn = toWriteIn || isBlank(block, i);
    for (const auto &texts : block.rows) {
        const Row row = rowOf(block, texts, columns, false);
        const int most = std::max(1, static_cast<int>(pageHeight / 2 / std::max(1.0, row.lineHeight)));
        for (int first = 0; first < std::max(1, row.lines); first += most) {
            Piece piece = slice(row, columns, width, first, std::min(row.lines, first + most), false,
                                toWriteIn ? writingHeight : 0.0);
            piece.head = kept;
            pieces.push_back(std::move(piece));
        }
    }
    if (pieces.size() > 2) // no lonely last row
        pieces[pieces.size() - 2].keepWithNext = true;
    return pieces;
}

} // namespace snugwalk::pdf
