// SPDX-License-Identifier: Apache-2.0
// Filling pages.
#include "pdf/piece.hpp"

namespace snugwalk::pdf {
namespace {

// The height of a piece and of those that must stay with it, from the top of a page.
double chainHeight(const std::vector<Piece> &pieces, std::size_t first)
{
    double height = pieces[first].height;
    for (std::size_t i = first; pieces[i].keepWithNext && i + 1 < pieces.size(); ++i) {
        if (pieces[i + 1].breakBefore)
            break;
        height += pieces[i + 1].above + pieces[i + 1].height;
    }
    return height;
}

} // namespace

std::vector<Page> paginate(const std::vector<Piece> &pieces, double height)
{
    std::vector<Page> pages(1);
    double y = 0.0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece &piece = pieces[i];
        const bool isFirst = pages.back().empty();
        const bool fitsAlone = y + piece.above + piece.height <= height;
        const double chain = chainHeight(pieces, i);
        const bool chainGoesOver = y + piece.above + chain > height && chain <= height;
        if (!isFirst && (piece.breakBefore || !fitsAlone || chainGoesOver)) {
            pages.emplace_back();
            y = 0.0;
            if (piece.head) {
                pages.back().push_back({piece.head.get(), 0.0});
                y = piece.head->height;
            }
        } else if (!isFirst) {
            y += piece.above;
        }
        pages.back().push_back({&piece, y});
        y += piece.height;
    }
    return pages;
}

} // namespace snugwalk::pdf
