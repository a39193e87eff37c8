// SPDX-License-Identifier: Apache-2.0
// Drawings, captions, the order of photos, and stock, as entries of the logbook.
#include <doctest/doctest.h>

#include <cmath>

#include "logbook/acts_photo.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const DrawnShape circle{ShapeKind::Circle, 0.25, 0.5, 0.5, 0.5, std::nullopt, "here"};
const DrawnShape ruler{ShapeKind::Ruler, 0.1, 0.9, 0.7, 0.9, millimetres(120), ""};

// A finding with `count` photos, added a minute apart.
std::vector<Id> photosOn(Walker &walker, int count)
{
    const auto receipt = walker.mark(attentionOn("chains-condition", 3)).value();
    std::vector<Id> ids;
    for (int i = 0; i < count; ++i) {
        walker.home.clock.advance(std::chrono::minutes(1));
        Photo photo;
        photo.rig = walker.rig.id;
        photo.finding = receipt.findings.front();
        photo.hash = blake2b("photo " + std::to_string(i)).text();
        photo.added = walker.home.clock.now();
        ids.push_back(addPhoto(walker.book(), photo, walker.doer).value());
    }
    return ids;
}

std::vector<Id> order(Walker &walker)
{
    std::vector<Id> ids;
    const auto histories = findingHistories(walker.book(), walker.rig.id).value();
    for (const Photo &photo : histories.front().photos)
        ids.push_back(photo.id);
    return ids;
}

} // namespace

TEST_CASE("a drawing stands with its finding; a new one replaces it, none takes it away")
{
    Walker walker;
    const Id photo = photosOn(walker, 1).front();
    const Photo before = photoOf(walker.book(), photo).value();
    const Id id = saveDrawing(walker.book(), photo, {circle}, walker.doer).value();
    REQUIRE(saveDrawing(walker.book(), photo, {circle, ruler}, walker.doer).value() == id);
    const auto history = findingHistories(walker.book(), walker.rig.id)->front();
    REQUIRE(history.drawings.size() == 1);
    CHECK(history.drawings[0].shapes == std::vector<DrawnShape>{circle, ruler});
    CHECK(history.drawings[0].by == "W. Tester");
    CHECK(drawingOf(history, photo) == &history.drawings[0]);
    CHECK(photoOf(walker.book(), photo).value() == before); // the photo's own entry is as it was
    REQUIRE(saveDrawing(walker.book(), photo, {}, walker.doer));
    CHECK(drawingsOf(walker.book(), walker.rig.id)->empty());
    CHECK(projectionRebuilt(walker.book()) == projectionNow(walker.book()));
}

TEST_CASE("undo takes a drawing of the walk back, then the mark before it")
{
    Walker walker;
    const Id photo = photosOn(walker, 1).front();
    REQUIRE(saveDrawing(walker.book(), photo, {circle}, walker.doer));
    REQUIRE(saveDrawing(walker.book(), photo, {ruler}, walker.doer));
    REQUIRE(walker.undo());
    CHECK(drawingsOf(walker.book(), walker.rig.id)->front().shapes == std::vector<DrawnShape>{circle});
    REQUIRE(walker.undo());
    CHECK(drawingsOf(walker.book(), walker.rig.id)->empty());
    CHECK(walker.stateOf("chains-condition") == MarkState::Attention);
    REQUIRE(walker.undo());
    CHECK(walker.stateOf("chains-condition") == MarkState::NotLooked);
}

TEST_CASE("what cannot be drawn is refused and leaves no entry")
{
    Walker walker;
    const Id photo = photosOn(walker, 1).front();
    const auto before = entryCount(walker.book());
    DrawnShape outside = circle;
    outside.x1 = 1.5;
    CHECK(saveDrawing(walker.book(), photo, {outside}, walker.doer).error().code == Errc::OutOfRange);
    CHECK(saveDrawing(walker.book(), walker.rig.id, {circle}, walker.doer).error().code == Errc::NotFound);
    CHECK(captionPhoto(walker.book(), photo, std::string(501, 'a'), walker.doer).error().code ==
          Errc::OutOfRange);
    CHECK(movePhoto(walker.book(), photo, 2, walker.doer).error().code == Errc::OutOfRange);
    CHECK(entryCount(walker.book()) == before);
}

TEST_CASE("photos keep the order a person gives them; later ones come after; captions stand")
{
    Walker walker;
    const auto ids = photosOn(walker, 3);
    CHECK(order(walker) == ids);
    REQUIRE(movePhoto(walker.book(), ids[2], 1, walker.doer));
    CHECK(order(walker) == std::vector<Id>{ids[2], ids[0], ids[1]});
    REQUIRE(captionPhoto(walker.book(), ids[1], "from below", walker.doer));
    CHECK(photoOf(walker.book(), ids[1])->caption == "from below");
    Photo late;
    late.rig = walker.rig.id;
    late.finding = photoOf(walker.book(), ids[0])->finding;
    late.added = walker.home.clock.now();
    const Id last = addPhoto(walker.book(), late, walker.doer).value();
    CHECK(order(walker) == std::vector<Id>{ids[2], ids[0], ids[1], last});
    REQUIRE(walker.undo()); // the caption
    REQUIRE(walker.undo()); // the move
    CHECK(order(walker) == std::vector<Id>{ids[0], ids[1], ids[2], last});
}

TEST_CASE("a count of stock replaces the one before; an absurd one is refused")
{
    Walker walker;
    Stock stock{Id{}, walker.rig.id, "rivets", Dimension::Count, 12.0, "", walker.home.clock.now(), "A"};
    const Id id = setStock(walker.book(), stock, walker.doer).value();
    stock.si = 40.0;
    CHECK(setStock(walker.book(), stock, walker.doer).value() == id);
    REQUIRE(stocksOf(walker.book(), walker.rig.id)->size() == 1);
    CHECK(stocksOf(walker.book(), walker.rig.id)->front().si == 40.0);
    for (const double bad : {-1.0, 1e9, std::nan("")}) {
        stock.si = bad;
        CHECK(setStock(walker.book(), stock, walker.doer).error().code == Errc::OutOfRange);
    }
}
