// SPDX-License-Identifier: Apache-2.0
// A logbook on a disk without room: writing stops with words, what was written before is all there.
#include <doctest/doctest.h>

#include <cerrno>
#include <csignal>
#include <cstring>
#include <sys/mount.h>
#include <sys/resource.h>

#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Files may not grow over `bytes`; the signal is ignored, as the system then says EFBIG.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes) : m_handler(std::signal(SIGXFSZ, SIG_IGN))
    {
        REQUIRE(::getrlimit(RLIMIT_FSIZE, &m_before) == 0);
        rlimit limit = m_before;
        limit.rlim_cur = bytes;
        REQUIRE(::setrlimit(RLIMIT_FSIZE, &limit) == 0);
    }
    FileSizeLimit(const FileSizeLimit &) = delete;
    FileSizeLimit &operator=(const FileSizeLimit &) = delete;
    ~FileSizeLimit()
    {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }

private:
    void (*m_handler)(int);
    rlimit m_before{};
};

// Marks the points of the walk over and over until an act is refused.
struct Filled {
    int acknowledged = 0;
    Error error;
};
Filled markUntilRefused(Logbook &book, Walker &walker)
{
    Filled filled;
    for (int i = 0; i < 5000; ++i) {
        walker.home.clock.advance(std::chrono::minutes(1));
        const auto marked = markPoint(book, realCatalogue(), walker.rig, walker.walk,
                                      passOf("chains-run", "act " + std::to_string(i)), walker.doer);
        if (!marked) {
            filled.error = marked.error();
            return filled;
        }
        ++filled.acknowledged;
    }
    FAIL("the disk was never full");
    return filled;
}

void wantAllThere(Logbook &book, Walker &walker, const Filled &filled)
{
    MESSAGE("acknowledged before the disk was full: ", filled.acknowledged, "; told: ", filled.error.what,
            "; ", filled.error.act);
    CHECK(filled.error.code == Errc::Io);
    CHECK_FALSE(filled.error.act.empty());
    CHECK(filled.error.where.find("book.snug") != std::string::npos);
    const auto marks = marksOf(book, walker.walk.id).value();
    REQUIRE(marks.size() == 1);
    CHECK(marks[0].note == "act " + std::to_string(filled.acknowledged - 1));
    CHECK(entryCount(book) == filled.acknowledged + 2);
    CHECK(checkLogbook(book, true)->faults.empty());
}

} // namespace

TEST_CASE("files that may not grow: the last act that was acknowledged stands, and with room it goes on")
{
    for (const rlim_t more : {rlim_t{1}, rlim_t{50'000}, rlim_t{300'001}}) {
        CAPTURE(more);
        Walker walker;
        Logbook &book = walker.book();
        REQUIRE(walker.mark(passOf("chains-run", "act -1")));
        REQUIRE(book.db().exec("PRAGMA wal_checkpoint(TRUNCATE)"));
        const Filled filled = [&] {
            const FileSizeLimit limit(std::filesystem::file_size(walker.home.file()) + more);
            return markUntilRefused(book, walker);
        }();
        MESSAGE("told: ", filled.error.what, "; ", filled.error.act);
        CHECK(filled.error.act.find("free space") != std::string::npos);
        CHECK(filled.error.code == Errc::Io);
        const auto marks = marksOf(book, walker.walk.id).value();
        CHECK(marks.at(0).note == "act " + std::to_string(filled.acknowledged - 1));
        CHECK(checkLogbook(book, true)->faults.empty());
        CHECK(entryCount(book) == filled.acknowledged + 3);
        CHECK(walker.mark(passOf("spring-bars")));
        CHECK(checkLogbook(walker.home.reopened(), true)->faults.empty());
        CHECK(marksOf(walker.book(), walker.walk.id)->size() == 2);
    }
}

TEST_CASE("a small disk fills up: nothing acknowledged is lost, and with room it goes on")
{
    const TempFolder disk;
    const bool isMounted = ::mount("tmpfs", disk.path().c_str(), "tmpfs", 0, "size=2m") == 0;
    MESSAGE("small disk: ",
            isMounted ? std::string("mounted 2 MiB") : std::string("not mounted, ") + std::strerror(errno));
    if (!isMounted)
        return; // the size limit above is tried everywhere
    {
        Walker walker;
        const std::string file = disk.file("book.snug");
        spill(disk.file("ballast"), std::string(300'000, 'x'));
        auto book = walker.home.tryOpen(file).value();
        walker.rig.id = saveRig(book, walker.rig, walker.doer).value();
        walker.walk =
            startWalk(book, realCatalogue(), walker.rig, "before_road", {}, {}, walker.doer).value();
        const Filled filled = markUntilRefused(book, walker);
        CHECK(filled.error.what.find("no room left on the disk") != std::string::npos);
        CHECK(marksOf(book, walker.walk.id)->front().note ==
              "act " + std::to_string(filled.acknowledged - 1));
        std::filesystem::remove(disk.file("ballast"));
        wantAllThere(book, walker, filled);
        CHECK(markPoint(book, realCatalogue(), walker.rig, walker.walk, passOf("spring-bars"), walker.doer));
        CHECK(checkLogbook(book, true)->faults.empty());
    }
    CHECK(::umount2(disk.path().c_str(), MNT_DETACH) == 0);
}

TEST_CASE("no room to begin a logbook, and none to copy one")
{
    Walker walker;
    const TempFolder elsewhere;
    const FileSizeLimit limit(2000);
    CHECK(walker.home.tryOpen(elsewhere.file("new.snug")).error().code == Errc::Io);
    const Status copied = backupLogbook(walker.book(), elsewhere.file("copy.snug"));
    REQUIRE_FALSE(copied);
    CHECK(copied.error().code == Errc::Io);
    CHECK_FALSE(std::filesystem::exists(elsewhere.file("copy.snug")));
    CHECK_FALSE(std::filesystem::exists(elsewhere.file("copy.snug.part")));
    CHECK_FALSE(std::filesystem::exists(elsewhere.file("copy.snug.photos")));
}
