// SPDX-License-Identifier: Apache-2.0
// One rig of several: its entries and photos and no other's, each still verifiable.
#include <doctest/doctest.h>

#include "exchange/check_export.hpp"
#include "exchange/export_book.hpp"
#include "exchange/import_book.hpp"
#include "exchange_fixture.hpp"
#include "image/plain_codec.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("the only rig of a logbook is the whole logbook, and comes in anywhere")
{
    Walker walker;
    fillWithEverything(walker);
    const std::string file = walker.home.folder().file("rig.zip");
    const auto out = exportLogbook(walker.book(), file, walker.rig.id);
    REQUIRE(out);
    CHECK(out->entries == entryCount(walker.book()));
    TestBook other("other");
    REQUIRE(importLogbook(other.book(), file, PlainCodec()));
    CHECK(portableProjection(other.book()) == portableProjection(walker.book()));
}

TEST_CASE("of two rigs only one goes out; it checks, and is refused where the rest is missing")
{
    Walker walker;
    Rig second = walker.rig;
    second.id = Id{};
    second.name = "Second";
    second.id = saveRig(walker.book(), second, walker.doer).value();
    fillWithEverything(walker);
    const std::string file = walker.home.folder().file("second.zip");
    const auto out = exportLogbook(walker.book(), file, second.id);
    REQUIRE(out);
    CHECK(out->entries == 1);
    CHECK(out->photos == 0);
    const auto check = checkExport(file);
    REQUIRE(check);
    CHECK(check->faults.empty());
    CHECK(slurp(file).find(walker.rig.id.text()) == std::string::npos);

    TestBook other("other");
    const auto refused = importLogbook(other.book(), file, PlainCodec());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == Errc::NotFound);
    CHECK(entryCount(other.book()) == 0);
    const auto home = importLogbook(walker.book(), file, PlainCodec());
    REQUIRE(home);
    CHECK(home->entriesKnown == 1);

    const auto none =
        exportLogbook(walker.book(), walker.home.folder().file("none.zip"), walker.book().newId());
    REQUIRE_FALSE(none);
    CHECK(none.error().code == Errc::NotFound);
}
