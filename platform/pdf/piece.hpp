// SPDX-License-Identifier: Apache-2.0
// The smallest thing that stays on one page, and how pieces become pages.
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QPainter>

namespace snugwalk::pdf {

/// Lengths in tenths of a point.
struct Piece {
    double height = 0.0;
    std::function<void(QPainter &)> draw; ///< from its upper left corner
    double above = 0.0;                   ///< room before it, none at the top of a page
    bool keepWithNext = false;
    bool breakBefore = false;
    std::shared_ptr<const Piece> head; ///< drawn once more where this piece begins a page: a table's head
};

/// A piece at its place on a page.
struct Placed {
    const Piece *piece = nullptr;
    double top = 0.0;
};
using Page = std::vector<Placed>;

/// Fills pages from the top. What is to be kept with the next piece goes over to the next page with it,
/// unless all of it is higher than a page. A piece higher than a page stands on one alone.
/// \returns at least one page; places into `pieces`, which must outlive it.
[[nodiscard]] std::vector<Page> paginate(const std::vector<Piece> &pieces, double height);

} // namespace snugwalk::pdf
