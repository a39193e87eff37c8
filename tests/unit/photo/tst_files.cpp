// SPDX-License-Identifier: Apache-2.0
// Files that are wholly there or not at all.
#include <doctest/doctest.h>

#include <cerrno>
#include <fstream>
#include <sys/stat.h>

#include "logbook/files.hpp"
#include "pictures.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("what is written is read, byte for byte, and no part is left")
{
    const ScratchFolder scratch;
    const std::string bytes("a\0b\xff\r\n", 6);
    for (const std::string &content : {bytes, std::string(), std::string(300'000, 'x')}) {
        const auto path = scratch.path() / ("f" + std::to_string(content.size()));
        REQUIRE(writeNewFile(path, content));
        CHECK(readFile(path, content.size()).value() == content);
    }
    CHECK(scratch.content().size() == 3);
}

TEST_CASE("a new file never takes the place of another")
{
    const ScratchFolder scratch;
    const auto path = scratch.path() / "f";
    REQUIRE(writeNewFile(path, "first"));
    CHECK(writeNewFile(path, "first")); // named by content, so the same bytes are fine
    for (const char *other : {"other", "first and more", "fir", ""}) {
        CHECK(writeNewFile(path, other).error().code == Errc::Conflict);
        CHECK(readFile(path, 100).value() == "first");
    }
    CHECK(replaceFile(path, "second"));
    CHECK(readFile(path, 100).value() == "second");
    CHECK(scratch.content() == std::vector<std::string>{"f"});
}

TEST_CASE("reading is bounded, and says what is wrong")
{
    const ScratchFolder scratch;
    const auto path = scratch.path() / "f";
    REQUIRE(writeNewFile(path, std::string(1025, 'x')));
    CHECK(readFile(path, 1025).value().size() == 1025);
    const auto tooLarge = readFile(path, 1024);
    REQUIRE_FALSE(tooLarge);
    CHECK(tooLarge.error().code == Errc::OutOfRange);
    CHECK(tooLarge.error().what == "the file is larger than 1024 bytes");
    CHECK(tooLarge.error().where == path.string());

    const auto missing = readFile(scratch.path() / "none", 10);
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == Errc::NotFound);
    CHECK(readFile(scratch.path(), 10).error().code == Errc::Io);
    const auto pipe = scratch.path() / "pipe";
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    CHECK(readFile(pipe, 10).error().code == Errc::Io); // and does not wait for a writer
    // endless, and of size 0 by its own account
    CHECK(readFile("/proc/self/status", 16).error().code == Errc::OutOfRange);
}

TEST_CASE("folders are made with those above them")
{
    const ScratchFolder scratch;
    CHECK(makeFolder(scratch.path() / "a" / "b" / "c"));
    CHECK(makeFolder(scratch.path() / "a" / "b" / "c"));
    REQUIRE(writeNewFile(scratch.path() / "file", "x"));
    const auto blocked = makeFolder(scratch.path() / "file" / "b");
    REQUIRE_FALSE(blocked);
    CHECK(blocked.error().code == Errc::Io);
    CHECK(makeFolder(scratch.path() / "file").error().code == Errc::Io);
    CHECK(writeNewFile(scratch.path() / "none" / "f", "x").error().code == Errc::NotFound);
}

TEST_CASE("the system's answers in words that say what to do")
{
    for (const int number : {ENOSPC, EDQUOT, EROFS, EACCES, EIO, ENOTDIR, EMFILE, EFBIG}) {
        CAPTURE(number);
        const Error error = systemError(number, "/somewhere/f");
        CHECK(error.code == Errc::Io);
        CHECK(error.where == "/somewhere/f");
        CHECK_FALSE(error.what.empty());
        CHECK_FALSE(error.act.empty());
    }
    CHECK(systemError(ENOSPC, "f").what == "no room left on the disk");
    CHECK(systemError(ENOSPC, "f").act == "free some space and try again");
    CHECK(systemError(EROFS, "f").what == "the disk is read-only");
    CHECK(systemError(ENOENT, "f").code == Errc::NotFound);
}
