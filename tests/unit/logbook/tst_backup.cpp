// SPDX-License-Identifier: Apache-2.0
// A backup is a logbook of its own: it opens, checks clean and writes to another stream.
#include <doctest/doctest.h>

#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
namespace fs = std::filesystem;

namespace {

fs::path putPhoto(Walker &walker, const std::string &bytes)
{
    Photo photo;
    photo.rig = walker.rig.id;
    photo.hash = blake2b(bytes).text();
    photo.added = walker.home.clock.now();
    const fs::path name = fs::path(photo.hash.substr(0, 2)) / (photo.hash + ".jpg");
    const fs::path file = fs::path(walker.book().photoFolder()) / name;
    fs::create_directories(file.parent_path());
    spill(file, bytes);
    REQUIRE(addPhoto(walker.book(), photo, walker.doer));
    return name;
}

} // namespace

TEST_CASE("the copy has everything, and goes on in a stream of its own")
{
    Walker walker;
    REQUIRE(walker.mark(attentionOn("chains-condition", 3)));
    const fs::path photo = putPhoto(walker, "picture");
    const std::string target = walker.home.folder().file("copy.snug");
    REQUIRE(backupLogbook(walker.book(), target));
    REQUIRE(walker.mark(passOf("chains-run"))); // the logbook goes on, the copy does not

    auto copy = walker.home.tryOpen(target, false).value();
    CHECK(copy.stream().device == walker.book().stream().device);
    CHECK(copy.stream().incarnation != walker.book().stream().incarnation);
    CHECK(checkLogbook(copy, true)->faults.empty());
    CHECK(checkLogbook(copy, true)->photos == 1);
    CHECK(marksOf(copy, walker.walk.id)->size() == 1);
    CHECK(slurp(fs::path(copy.photoFolder()) / photo) == "picture");
    REQUIRE(markPoint(copy, realCatalogue(), walker.rig, walker.walk, passOf("spring-bars"), walker.doer));
    CHECK(checkLogbook(copy, true)->faults.empty());
    CHECK(checkLogbook(copy, true)->streams == 2);
    CHECK(copy.db().number("SELECT count(*) FROM stream WHERE own = 1").value() == 1);
}

TEST_CASE("nothing lies beside the copy but its photos")
{
    Walker walker;
    putPhoto(walker, "picture");
    spill(fs::path(walker.book().photoFolder()) / "ab.part-0123", "half a file of a killed process");
    const TempFolder elsewhere;
    REQUIRE(backupLogbook(walker.book(), elsewhere.file("copy.snug")));
    std::vector<std::string> names;
    for (const auto &item : fs::directory_iterator(elsewhere.path()))
        names.push_back(item.path().filename().string());
    std::sort(names.begin(), names.end());
    CHECK(names == std::vector<std::string>{"copy.snug", "copy.snug.photos"});
    CHECK_FALSE(fs::exists(elsewhere.file("copy.snug.photos/ab.part-0123")));
}

TEST_CASE("left-overs of a backup that was killed do no harm")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    const std::string target = walker.home.folder().file("copy.snug");
    for (const char *ending : {".part", ".part-wal", ".part-shm", ".part-journal"})
        spill(target + ending, "left over from a killed run, of no use to anyone");
    REQUIRE(backupLogbook(walker.book(), target));
    auto copy = walker.home.tryOpen(target, false).value();
    CHECK(checkLogbook(copy, true)->faults.empty());
    CHECK(marksOf(copy, walker.walk.id)->size() == 1);
    CHECK_FALSE(fs::exists(target + ".part-wal"));
}

TEST_CASE("what is there stays there")
{
    Walker walker;
    const std::string target = walker.home.folder().file("copy.snug");
    spill(target, "precious");
    const Status status = backupLogbook(walker.book(), target);
    REQUIRE_FALSE(status);
    CHECK(status.error().code == Errc::Conflict);
    CHECK(slurp(target) == "precious");
    CHECK(backupLogbook(walker.book(), walker.book().file()).error().code == Errc::Conflict);
    CHECK_FALSE(backupLogbook(walker.book(), walker.home.folder().file("no/such/folder.snug")));
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("a backup becomes a logbook again, and stays what it was")
{
    Walker walker;
    REQUIRE(walker.mark(attentionOn("chains-condition", 3)));
    const fs::path photo = putPhoto(walker, "picture");
    const std::string backup = walker.home.folder().file("copy.snug");
    REQUIRE(backupLogbook(walker.book(), backup));
    const std::string before = slurp(backup);
    const std::string target = walker.home.folder().file("again.snug");
    const Result<CheckReport> report = restoreLogbook(backup, target, walker.home.options());
    REQUIRE(report);
    CHECK(report->photos == 1);
    CHECK(slurp(backup) == before);
    auto again = walker.home.tryOpen(target, false).value();
    CHECK(marksOf(again, walker.walk.id)->size() == 1);
    CHECK(slurp(fs::path(again.photoFolder()) / photo) == "picture");
    CHECK(again.stream().incarnation != walker.book().stream().incarnation);
    for (const char *ending : {".part", ".part-wal", ".part.photos"})
        CHECK_FALSE(fs::exists(target + ending));
}

TEST_CASE("a restore never overwrites, and a damaged backup leaves nothing")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    putPhoto(walker, "picture");
    const std::string backup = walker.home.folder().file("copy.snug");
    REQUIRE(backupLogbook(walker.book(), backup));
    const std::string taken = walker.home.folder().file("taken.snug");
    spill(taken, "precious");
    const auto onto = [&](const std::string &from, const std::string &to) -> std::optional<Errc> {
        const Result<CheckReport> report = restoreLogbook(from, to, walker.home.options());
        if (report)
            return std::nullopt;
        return report.error().code;
    };
    CHECK(onto(backup, taken) == Errc::Conflict);
    CHECK(slurp(taken) == "precious");
    CHECK(onto(backup, walker.book().file()) == Errc::Conflict);
    CHECK(onto(walker.home.folder().file("none.snug"), walker.home.folder().file("x.snug")) ==
          Errc::NotFound);

    const std::string target = walker.home.folder().file("again.snug");
    for (const auto &item : fs::recursive_directory_iterator(backup + ".photos")) {
        if (item.is_regular_file())
            spill(item.path(), "another picture");
    }
    CHECK(onto(backup, target) == Errc::Corrupt);
    spill(backup, "no logbook at all, though it has its name");
    CHECK(onto(backup, target) == Errc::Corrupt);
    for (const char *ending : {"", ".photos", ".part", ".part-wal", ".part.photos"})
        CHECK_FALSE(fs::exists(target + ending));
}
