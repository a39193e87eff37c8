// SPDX-License-Identifier: Apache-2.0
// Folders that cannot be written. Root passes every mode bit, so other obstacles stand in the way.
#include <doctest/doctest.h>

#include <cerrno>
#include <cstring>
#include <sys/mount.h>
#include <sys/stat.h>
#include <unistd.h>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

void wantIo(TestBook &home, const std::string &file)
{
    const auto opened = home.tryOpen(file);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Errc::Io);
    CHECK(opened.error().where == file);
    CHECK_FALSE(opened.error().act.empty());
    MESSAGE("tried ", file, ": ", opened.error().what, "; ", opened.error().act);
}

// A closed logbook, copied to `file`.
void putBook(const std::string &file)
{
    Walker walker;
    walker.home.close();
    spill(file, slurp(walker.home.file()));
}

} // namespace

TEST_CASE("a path below a file, and a file system that takes no files")
{
    TestBook home;
    spill(home.folder().file("file"), "x");
    wantIo(home, home.folder().file("file/book.snug"));
    wantIo(home, "/proc/snugwalk.snug");
}

TEST_CASE("a logbook on a disk that is read-only")
{
    TestBook home;
    const TempFolder disk;
    if (::mount("tmpfs", disk.path().c_str(), "tmpfs", 0, "size=4m") != 0) {
        MESSAGE("read-only disk: not mounted, ", std::strerror(errno));
        return;
    }
    putBook(disk.file("book.snug"));
    const std::string before = slurp(disk.file("book.snug"));
    REQUIRE(::mount("tmpfs", disk.path().c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, "size=4m") == 0);
    wantIo(home, disk.file("book.snug"));
    wantIo(home, disk.file("new.snug"));
    CHECK(slurp(disk.file("book.snug")) == before);
    CHECK(::umount2(disk.path().c_str(), MNT_DETACH) == 0);
}

TEST_CASE("a folder or a file without the right to write")
{
    if (::geteuid() == 0) {
        MESSAGE("mode bits: not tried, root passes them");
        return;
    }
    TestBook home;
    const TempFolder locked;
    putBook(locked.file("book.snug"));
    REQUIRE(::chmod(locked.file("book.snug").c_str(), 0444) == 0);
    wantIo(home, locked.file("book.snug"));
    REQUIRE(::chmod(locked.path().c_str(), 0555) == 0);
    wantIo(home, locked.file("new.snug"));
    CHECK(::chmod(locked.path().c_str(), 0755) == 0);
}

TEST_CASE(
    "the file is taken away or replaced under an open logbook: acts are refused, not written into nowhere")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    const std::string file = walker.home.file();
    std::filesystem::rename(file, file + ".moved");
    const auto marked = walker.mark(passOf("spring-bars"));
    REQUIRE_FALSE(marked);
    CHECK(marked.error().code == Errc::Io);
    CHECK_FALSE(marked.error().act.empty());
    spill(file, "something else");
    CHECK(walker.mark(passOf("spring-bars")).error().code == Errc::Io);
    std::filesystem::rename(file + ".moved", file);
    CHECK(walker.mark(passOf("spring-bars")));
}
