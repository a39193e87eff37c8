// SPDX-License-Identifier: Apache-2.0
// Out and in again: the log, the photos and everything that is read are the same, and twice is once.
#include <doctest/doctest.h>

#include "exchange/check_export.hpp"
#include "exchange/export_book.hpp"
#include "exchange/import_book.hpp"
#include "exchange_fixture.hpp"
#include "image/plain_codec.hpp"
#include "logbook/check.hpp"
#include "logbook/photo_store.hpp"
#include "support/streams.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("a fresh logbook takes in everything, and a second time nothing")
{
    Walker walker;
    fillWithEverything(walker);
    const std::string file = walker.home.folder().file("all.zip");
    const auto out = exportLogbook(walker.book(), file);
    REQUIRE(out);
    CHECK(out->entries == entryCount(walker.book()));
    CHECK(out->photos == 2);
    CHECK(out->missing.empty());

    TestBook other("other");
    const PlainCodec codec;
    const auto in = importLogbook(other.book(), file, codec);
    REQUIRE(in);
    CHECK(in->entriesAdded == out->entries);
    CHECK(in->photosAdded == 2);
    CHECK(in->missing.empty());
    CHECK(in->notes.empty());
    CHECK_FALSE(in->mustReopen);
    CHECK(portableLog(other.book()) == portableLog(walker.book()));
    CHECK(portableProjection(other.book()) == portableProjection(walker.book()));
    CHECK(projectionRebuilt(other.book()) == projectionNow(other.book()));
    CHECK(checkLogbook(other.book(), true)->faults.empty());
    CHECK(checkLogbook(other.book(), true)->photos == 2);

    const Hash before = projectionNow(other.book());
    const auto again = importLogbook(other.book(), file, codec);
    REQUIRE(again);
    CHECK(again->entriesAdded == 0);
    CHECK(again->entriesKnown == out->entries);
    CHECK(again->photosAdded == 0);
    CHECK(again->photosKnown == 2);
    CHECK(projectionNow(other.book()) == before);
}

TEST_CASE("the same moment gives the same bytes, and a later import only what is new")
{
    Walker walker;
    fillWithEverything(walker);
    const auto &folder = walker.home.folder();
    REQUIRE(exportLogbook(walker.book(), folder.file("a.zip")));
    REQUIRE(exportLogbook(walker.book(), folder.file("b.zip")));
    CHECK(slurp(folder.file("a.zip")) == slurp(folder.file("b.zip")));

    TestBook other("other");
    REQUIRE(importLogbook(other.book(), folder.file("a.zip"), PlainCodec()));
    walker.nextWalk();
    REQUIRE(walker.mark(passOf("chains-run")));
    const auto out = exportLogbook(walker.book(), folder.file("c.zip"));
    REQUIRE(out);
    const auto in = importLogbook(other.book(), folder.file("c.zip"), PlainCodec());
    REQUIRE(in);
    CHECK(in->entriesAdded + in->entriesKnown == out->entries);
    CHECK(in->entriesAdded > 0);
    CHECK(portableProjection(other.book()) == portableProjection(walker.book()));
    // an older export after a newer one takes nothing back
    REQUIRE(importLogbook(other.book(), folder.file("a.zip"), PlainCodec()));
    CHECK(portableProjection(other.book()) == portableProjection(walker.book()));
}

TEST_CASE("two devices meet through exports, both ways, and answer alike")
{
    Walker here("here");
    fillWithEverything(here);
    here.nextWalk();
    TestBook there("there");
    const auto &folder = here.home.folder();
    REQUIRE(exportLogbook(here.book(), folder.file("1.zip")));
    REQUIRE(importLogbook(there.book(), folder.file("1.zip"), PlainCodec()));
    there.clock.set(timeAt("2011-01-01T00:00:00Z"));
    REQUIRE(markPoint(there.book(), realCatalogue(), here.rig, here.walk, passOf("chains-run"),
                      {"T. Tester", {}, {}}));
    REQUIRE(here.mark(couldNotLook("chains-run")));
    REQUIRE(exportLogbook(here.book(), folder.file("2.zip")));
    REQUIRE(exportLogbook(there.book(), folder.file("3.zip")));
    REQUIRE(importLogbook(there.book(), folder.file("2.zip"), PlainCodec()));
    REQUIRE(importLogbook(here.book(), folder.file("3.zip"), PlainCodec()));
    CHECK(portableLog(here.book()) == portableLog(there.book()));
    CHECK(portableProjection(here.book()) == portableProjection(there.book()));
    CHECK(checkExport(folder.file("3.zip"))->faults.empty());
    CHECK(checkExport(folder.file("3.zip"))->streams == 2);
}

TEST_CASE("a photo that is gone or damaged here is named, the rest goes out")
{
    Walker walker;
    fillWithEverything(walker);
    const Hash gone = addPicture(walker, 77);
    const Hash damaged = addPicture(walker, 88);
    const std::filesystem::path photos = walker.book().photoFolder();
    const auto fileOf = [&](const Hash &hash) {
        return photos / hash.text().substr(0, 2) / (hash.text() + ".png");
    };
    std::filesystem::remove(fileOf(gone));
    std::string bytes = slurp(fileOf(damaged));
    bytes[bytes.size() / 2] ^= 1;
    spill(fileOf(damaged), bytes);
    const std::string file = walker.home.folder().file("all.zip");
    const auto out = exportLogbook(walker.book(), file);
    REQUIRE(out);
    CHECK(out->photos == 2);
    CHECK(out->missing.size() == 2);
    TestBook other("other");
    const auto in = importLogbook(other.book(), file, PlainCodec());
    REQUIRE(in);
    CHECK(in->photosAdded == 2);
    CHECK(in->missing.size() == 2);
    CHECK(portableProjection(other.book()) == portableProjection(walker.book()));
}

TEST_CASE("what is there stays there, and nothing is left beside")
{
    Walker walker;
    const TempFolder elsewhere;
    spill(elsewhere.file("all.zip"), "precious");
    const auto out = exportLogbook(walker.book(), elsewhere.file("all.zip"));
    REQUIRE_FALSE(out);
    CHECK(out.error().code == Errc::Conflict);
    CHECK(slurp(elsewhere.file("all.zip")) == "precious");
    CHECK_FALSE(exportLogbook(walker.book(), elsewhere.file("no/such/folder/all.zip")));
    REQUIRE(exportLogbook(walker.book(), elsewhere.file("fine.zip")));
    std::size_t count = 0;
    for ([[maybe_unused]] const auto &item : std::filesystem::directory_iterator(elsewhere.path()))
        ++count;
    CHECK(count == 2);
}
