// SPDX-License-Identifier: Apache-2.0
// Tampering of every kind is found by the check, and nothing else is.
#include <doctest/doctest.h>

#include <algorithm>

#include "logbook/check.hpp"
#include "logbook/photo_store.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// A walk with a pass, a finding, an undo and a photo whose bytes lie in the folder.
struct Sample : Walker {
    Sample()
    {
        SNUG_ASSERT(mark(passOf("chains-run")).has_value());
        const MarkReceipt receipt = mark(attentionOn("chains-condition", 3)).value();
        SNUG_ASSERT(mark(passOf("spring-bars")).has_value());
        SNUG_ASSERT(undo().has_value());
        Photo photo;
        photo.rig = rig.id;
        photo.finding = receipt.findings.front();
        photo.hash = blake2b("picture").text();
        photo.added = home.clock.now();
        original =
            std::filesystem::path(book().photoFolder()) / photo.hash.substr(0, 2) / (photo.hash + ".jpg");
        std::filesystem::create_directories(original.parent_path());
        spill(original, "picture");
        SNUG_ASSERT(addPhoto(book(), photo, doer).has_value());
    }
    std::filesystem::path original;
};

void run(Logbook &book, const std::string &sql)
{
    REQUIRE(
        book.db().exec(("DROP TRIGGER IF EXISTS entry_never_changes; DROP TRIGGER IF EXISTS entry_never_goes;"
                        "PRAGMA foreign_keys = OFF;" +
                        sql)
                           .c_str()));
}

// Changes the file behind the program's back and wants a fault that tells `what`.
void wantFault(const std::string &what, const std::string &sql)
{
    CAPTURE(sql);
    Sample sample;
    run(sample.book(), sql);
    const auto report = checkLogbook(sample.book(), false);
    REQUIRE(report);
    const std::string all = [&] {
        std::string text;
        for (const std::string &fault : report->faults)
            text += fault + "\n";
        return text;
    }();
    CAPTURE(all);
    CHECK(all.find(what) != std::string::npos);
}

} // namespace

TEST_CASE("an untouched logbook has no fault, and checking it changes nothing")
{
    Sample sample;
    const Hash before = projectionNow(sample.book());
    const CheckReport report = checkLogbook(sample.book(), true).value();
    CHECK(report.faults.empty());
    CHECK(report.entries == entryCount(sample.book()));
    CHECK(report.streams == 1);
    CHECK(report.photos == 1);
    CHECK(report.projection == before);
    CHECK(projectionNow(sample.book()) == before);
}

TEST_CASE("entries refuse to be changed or removed")
{
    Sample sample;
    CHECK_FALSE(sample.book().db().exec("UPDATE entry SET hlc = 1"));
    CHECK_FALSE(sample.book().db().exec("DELETE FROM entry"));
}

TEST_CASE("a byte of an entry")
{
    wantFault(
        "changed",
        "UPDATE entry SET bytes = CAST(replace(bytes, 'chains-run', 'chains-rum') AS BLOB) WHERE seq = 3");
    wantFault(
        "changed",
        "UPDATE entry SET bytes = CAST(substr(bytes, 1, length(bytes) - 1) || x'00' AS BLOB) WHERE seq = 2");
    wantFault("changed", "UPDATE entry SET hash = zeroblob(32) WHERE seq = 4");
}

TEST_CASE("an entry taken away: the first, one between, the last")
{
    wantFault("missing", "DELETE FROM entry WHERE seq = 1");
    wantFault("missing", "DELETE FROM entry WHERE seq = 4");
    wantFault("differ", "DELETE FROM entry WHERE seq = (SELECT max(seq) FROM entry)");
    wantFault("differ", "DELETE FROM entry");
}

TEST_CASE("a column that differs from the entry's bytes")
{
    const std::string columns = "columns differ";
    wantFault(columns, "UPDATE entry SET hlc = hlc + 1 WHERE seq = 3");
    wantFault(columns, "UPDATE entry SET entity = zeroblob(16) WHERE seq = 3");
    wantFault(columns, "UPDATE entry SET act = zeroblob(16) WHERE seq = 3");
    wantFault(columns, "UPDATE entry SET scope = zeroblob(16) WHERE seq = 3");
    wantFault(columns, "UPDATE entry SET scope = NULL WHERE seq = 3");
    wantFault(columns, "UPDATE entry SET undoes = NULL WHERE undoes IS NOT NULL");
    wantFault(columns, "UPDATE entry SET undoes = act WHERE seq = 3");
}

TEST_CASE("tables that are read")
{
    wantFault("differ", "UPDATE thing SET doc = CAST(replace(doc, 'attention', 'attentiox') AS BLOB)");
    wantFault("differ", "UPDATE thing SET sort = sort + 1 WHERE type = 'mark'");
    wantFault("differ", "DELETE FROM thing WHERE type = 'finding'");
    wantFault("differ", "DELETE FROM head WHERE field = 'state'");
    wantFault("differ", "DELETE FROM dead");
}

TEST_CASE("streams")
{
    wantFault("key", "UPDATE stream SET public_key = zeroblob(32)");
    wantFault("columns differ", "UPDATE stream SET name = zeroblob(24)");
    wantFault("foreign_key_check", "DELETE FROM stream");
}

TEST_CASE("a photo that is gone, and one whose bytes are others")
{
    Sample sample;
    spill(sample.original, "picturf");
    CHECK(checkLogbook(sample.book(), false)->faults.empty()); // by name it is there
    REQUIRE(checkLogbook(sample.book(), true)->faults.size() == 1);
    CHECK(checkLogbook(sample.book(), true)->faults[0].starts_with("photo "));
    std::filesystem::remove(sample.original);
    CHECK(checkLogbook(sample.book(), false)->faults.size() == 1);
    CHECK(checkLogbook(sample.book(), true)->faults.size() == 1);
}
