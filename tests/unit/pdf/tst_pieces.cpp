// SPDX-License-Identifier: Apache-2.0
// How pieces become pages: nothing lost, in order, together where that can be.
#include <doctest/doctest.h>

#include <random>

#include "pdf/piece.hpp"

using namespace snugwalk::pdf;

namespace {

Piece piece(double height, bool keep = false)
{
    Piece out;
    out.height = height;
    out.keepWithNext = keep;
    return out;
}

// Which page each piece stands on.
std::vector<int> pagesOf(const std::vector<Piece> &pieces, double height)
{
    std::vector<int> out;
    const auto pages = paginate(pieces, height);
    for (std::size_t page = 0; page < pages.size(); ++page) {
        for (const Placed &placed : pages[page]) {
            if (placed.piece >= pieces.data() && placed.piece < pieces.data() + pieces.size())
                out.push_back(static_cast<int>(page));
        }
    }
    return out;
}

} // namespace

TEST_CASE("no piece is one empty page") { CHECK(paginate({}, 100).size() == 1); }

TEST_CASE("what does not fit goes over, what fits to the brim stays")
{
    CHECK(pagesOf({piece(60), piece(40), piece(1)}, 100) == std::vector<int>{0, 0, 1});
}

TEST_CASE("room above counts within a page and not at its top")
{
    std::vector<Piece> pieces{piece(50), piece(50), piece(50)};
    for (Piece &one : pieces)
        one.above = 10;
    CHECK(pagesOf(pieces, 100) == std::vector<int>{0, 1, 2});
    CHECK(pagesOf(pieces, 110) == std::vector<int>{0, 0, 1});
    const auto pages = paginate(pieces, 110);
    CHECK(pages[0][0].top == 0.0);
    CHECK(pages[0][1].top == 60.0);
}

TEST_CASE("a heading goes over with what follows it, and so does a chain")
{
    CHECK(pagesOf({piece(80), piece(10, true), piece(20)}, 100) == std::vector<int>{0, 1, 1});
    CHECK(pagesOf({piece(70), piece(10, true), piece(10, true), piece(20)}, 100) ==
          std::vector<int>{0, 1, 1, 1});
}

TEST_CASE("a chain higher than a page is broken rather than begun on a new one")
{
    CHECK(pagesOf({piece(50), piece(40, true), piece(70)}, 100) == std::vector<int>{0, 0, 1});
}

TEST_CASE("a break is a break, but not before the first piece")
{
    std::vector<Piece> pieces{piece(10), piece(10)};
    pieces[0].breakBefore = true;
    pieces[1].breakBefore = true;
    CHECK(pagesOf(pieces, 100) == std::vector<int>{0, 1});
}

TEST_CASE("a table's head stands again where its rows go on")
{
    const auto head = std::make_shared<const Piece>(piece(10));
    std::vector<Piece> pieces{piece(10, true)};
    for (int i = 0; i < 12; ++i) {
        pieces.push_back(piece(20));
        pieces.back().head = head;
    }
    const auto pages = paginate(pieces, 100);
    REQUIRE(pages.size() == 3);
    for (std::size_t page = 1; page < pages.size(); ++page) {
        CHECK(pages[page][0].piece == head.get());
        CHECK(pages[page][1].top == 10.0);
    }
    CHECK(pagesOf(pieces, 100).size() == pieces.size());
}

TEST_CASE("laws: all pieces once and in order, none over the edge, none over another")
{
    std::mt19937 random(20261124);
    for (int round = 0; round < 300; ++round) {
        std::vector<Piece> pieces;
        for (int i = 0; i < 40; ++i) {
            pieces.push_back(piece(1.0 + random() % 60, random() % 3 == 0));
            pieces.back().above = random() % 8;
            pieces.back().breakBefore = random() % 20 == 0;
        }
        CAPTURE(round);
        const Piece *next = pieces.data();
        for (const Page &page : paginate(pieces, 100)) {
            double bottom = 0.0;
            REQUIRE_FALSE(page.empty());
            for (const Placed &placed : page) {
                CHECK(placed.piece == next++);
                CHECK(placed.top >= bottom);
                bottom = placed.top + placed.piece->height;
            }
            CHECK(bottom <= 100.0);
        }
        CHECK(next == pieces.data() + pieces.size());
    }
}
