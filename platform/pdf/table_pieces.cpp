// SPDX-License-Identifier: Apache-2.0
// Tables: columns as wide as their words ask, rows that stay whole.
#include <algorithm>
#include <numeric>

#include "pdf/text_pieces.hpp"

namespace snugwalk::pdf {
namespace {

constexpr double gap = 3.5 * millimetre;  ///< between columns
constexpr double room = 0.9 * millimetre; ///< above and below a row's words
constexpr double cellPoints = 9.0;

struct Columns {
    std::vector<double> left;
    std::vector<double> width;
};

// Each column gets its longest word; what is left goes by how much more each would take.
Columns columnsOf(const TableBlock &block, double width)
{
    const std::size_t count = block.head.size();
    std::vector<double> least(count, 0.0);
    std::vector<double> natural(count, 0.0);
    const auto measure = [&](const std::vector<std::string> &row, bool bold) {
        const QFont font = letters(cellPoints, bold);
        for (std::size_t i = 0; i < std::min(count, row.size()); ++i) {
            least[i] = std::max(least[i], LaidText::longestWord(row[i], font));
            natural[i] = std::max(natural[i], LaidText::naturalWidth(row[i], font));
        }
    };
    measure(block.head, true);
    for (const auto &row : block.rows)
        measure(row, false);
    const double all = width - gap * static_cast<double>(count - 1);
    for (double &one : least)
        one = std::min(one, all * 0.5); // a hash is broken rather than its neighbours
    const double asked = std::accumulate(natural.begin(), natural.end(), 0.0);
    const double floor = std::accumulate(least.begin(), least.end(), 0.0);
    Columns columns;
    double x = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        double w = natural[i];
        if (asked > all) {
            const double more = std::max(asked - floor, 1.0);
            w = floor >= all ? all * least[i] / floor
                             : least[i] + (all - floor) * std::max(0.0, natural[i] - least[i]) / more;
        } else if (i + 1 == count && !(i < block.numeric.size() && block.numeric[i])) {
            w = all - x + gap * static_cast<double>(i); // words may run to the edge
        }
        columns.left.push_back(x);
        columns.width.push_back(w);
        x += w + gap;
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

Piece slice(const Row &row, const Columns &columns, double width, int first, int last, bool isHead)
{
    Piece piece;
    piece.height = (last - first) * row.lineHeight + 2 * room;
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
    for (const auto &texts : block.rows) {
        const Row row = rowOf(block, texts, columns, false);
        const int most = std::max(1, static_cast<int>(pageHeight / 2 / std::max(1.0, row.lineHeight)));
        for (int first = 0; first < std::max(1, row.lines); first += most) {
            Piece piece = slice(row, columns, width, first, std::min(row.lines, first + most), false);
            piece.head = kept;
            pieces.push_back(std::move(piece));
        }
    }
    return pieces;
}

} // namespace snugwalk::pdf
