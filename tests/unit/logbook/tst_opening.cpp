// SPDX-License-Identifier: Apache-2.0
// Files that are no logbook of ours, or one of tomorrow, are refused and left as they are.
#include <doctest/doctest.h>

#include "logbook/check.hpp"
#include "logbook/schema.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Opens `file` for writing, wants `code`, and wants its bytes and its folder as they were.
Error refused(TestBook &home, const std::string &file, Errc code)
{
    const Hash before = blake2b(slurp(file));
    const auto opened = home.tryOpen(file);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == code);
    CHECK(opened.error().where == file);
    CHECK_FALSE(opened.error().what.empty());
    CHECK_FALSE(opened.error().act.empty());
    CHECK(blake2b(slurp(file)) == before);
    CHECK_FALSE(std::filesystem::exists(file + "-wal"));
    CHECK_FALSE(std::filesystem::exists(file + "-journal"));
    return opened.error();
}

// The bytes of a closed logbook with a walk in it.
std::string closedBook()
{
    Walker walker;
    REQUIRE(walker.mark(attentionOn("chains-condition", 3)));
    walker.home.close();
    return slurp(walker.home.file());
}

} // namespace

TEST_CASE("a new logbook: version 3, ours, WAL, full, foreign keys, strict tables")
{
    TestBook home;
    auto &db = home.book().db();
    CHECK(db.number("PRAGMA user_version").value() == logbookVersion);
    CHECK(logbookVersion == 3);
    CHECK(db.number("PRAGMA application_id").value() == 0x534E5547); // "SNUG"
    CHECK(db.number("PRAGMA synchronous").value() == 2);
    CHECK(db.number("PRAGMA foreign_keys").value() == 1);
    CHECK(db.number("SELECT count(*) FROM pragma_journal_mode WHERE journal_mode = 'wal'").value() == 1);
    CHECK(db.number("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND "
                    "strict = 0 AND "
                    "name NOT LIKE 'sqlite%'")
              .value() == 0);
}

TEST_CASE("opening again changes no entry and keeps the version")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    const auto entries = entryCount(walker.book());
    const Hash projection = projectionNow(walker.book());
    CHECK(entryCount(walker.home.reopened()) == entries);
    CHECK(projectionNow(walker.book()) == projection);
}

TEST_CASE("other rules of the projection: it is made again on opening")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    const Hash projection = projectionNow(walker.book());
    REQUIRE(walker.book().db().exec("UPDATE meta SET value = 0 WHERE key = 'projection'; DELETE FROM thing"));
    CHECK(projectionNow(walker.home.reopened()) == projection);
}

TEST_CASE("a logbook of a newer version is not touched, whatever its journal")
{
    for (const char *mode : {"PRAGMA journal_mode = DELETE", "PRAGMA journal_mode = WAL"}) {
        TestBook home;
        const std::string file = home.folder().file("newer.snug");
        spill(file, closedBook());
        {
            auto db = sqlite::Connection::open(file, sqlite::OpenMode::ReadWrite).value();
            REQUIRE(db.exec(mode));
            REQUIRE(db.exec("PRAGMA user_version = 4; CREATE TABLE tomorrow(x)"));
        }
        CHECK(refused(home, file, Errc::Unsupported).what.find("newer") != std::string::npos);
    }
}

TEST_CASE("a database of another program is not touched")
{
    TestBook home;
    const std::string file = home.folder().file("other.db");
    {
        auto db = sqlite::Connection::open(file, sqlite::OpenMode::Create).value();
        REQUIRE(db.exec("CREATE TABLE recipe(x)"));
    }
    CHECK(refused(home, file, Errc::Unsupported).what.find("another program") != std::string::npos);
}

TEST_CASE("an empty database with another program's mark or version is not taken over")
{
    TestBook home;
    const std::string file = home.folder().file("marked.db");
    {
        auto db = sqlite::Connection::open(file, sqlite::OpenMode::Create).value();
        REQUIRE(db.exec("PRAGMA application_id = 77"));
    }
    refused(home, file, Errc::Unsupported);
}

TEST_CASE("text, noise and pictures are no logbook")
{
    TestBook home;
    const std::string file = home.folder().file("x.snug");
    for (const std::string &bytes :
         {std::string("Dear diary,\n"), std::string(10000, 'x'), std::string(4096, '\0'),
          std::string("\xFF\xD8\xFF\xE0"), std::string("SQLite format 3"),
          std::string("SQLite format 3\0", 16) + std::string(5000, '\xA5')}) {
        CAPTURE(bytes.size());
        spill(file, bytes);
        refused(home, file, Errc::Corrupt);
    }
}

TEST_CASE("a logbook cut short anywhere is refused, or opened only to be found damaged")
{
    TestBook home;
    const std::string whole = closedBook();
    const std::string file = home.folder().file("cut.snug");
    REQUIRE(whole.size() > 8 * 4096);
    for (std::size_t size = 100; size < whole.size(); size += 1000) {
        CAPTURE(size);
        spill(file, whole.substr(0, size));
        refused(home, file, Errc::Corrupt);
    }
}

TEST_CASE("pages overwritten with noise: told as damage by opening or by the check, never a crash")
{
    TestBook home;
    const std::string whole = closedBook();
    const std::string file = home.folder().file("noise.snug");
    int found = 0;
    const std::size_t pages = whole.size() / 4096;
    for (std::size_t page = 1; page < pages; ++page) {
        std::string bytes = whole;
        bytes.replace(page * 4096, 4096, std::string(4096, '\xA5'));
        spill(file, bytes);
        auto opened = home.tryOpen(file);
        if (!opened) {
            CHECK(opened.error().code == Errc::Corrupt);
            ++found;
            continue;
        }
        const auto report = checkLogbook(*opened, true);
        found += !report || !report->faults.empty() ? 1 : 0;
    }
    CHECK(found == static_cast<int>(pages) - 1);
}

TEST_CASE("no file, no folder, no name")
{
    TestBook home;
    CHECK(home.tryOpen(home.folder().file("none.snug"), false).error().code == Errc::NotFound);
    CHECK_FALSE(std::filesystem::exists(home.folder().file("none.snug")));
    CHECK(home.tryOpen(home.folder().file("no/folder.snug")).error().code == Errc::Io);
    CHECK(home.tryOpen(home.folder().path().string()).error().code == Errc::Io);
    CHECK(home.tryOpen(home.folder().path().string(), false).error().code == Errc::Io);
    CHECK(home.tryOpen("").error().code == Errc::InvalidInput);
}
