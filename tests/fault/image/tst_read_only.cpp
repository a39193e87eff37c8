// SPDX-License-Identifier: Apache-2.0
// Folders that cannot be written. Root passes every mode bit, so other obstacles stand in the way.
#include "damage.hpp"

#include <cerrno>
#include <cstring>
#include <sys/mount.h>
#include <sys/stat.h>
#include <unistd.h>

#include "logbook/files.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Error addFails(const std::filesystem::path &folder)
{
    PhotoStore store(folder);
    const auto added = store.add(makeJpeg(40, 30, noise), PlainCodec());
    REQUIRE_FALSE(added);
    CHECK_FALSE(added.error().what.empty());
    CHECK_FALSE(added.error().act.empty());
    MESSAGE("tried ", folder.string(), ": ", added.error().what);
    return added.error();
}

} // namespace

TEST_CASE("a file is in the way of the folder")
{
    const ScratchFolder scratch;
    REQUIRE(writeNewFile(scratch.path() / "file", "x"));
    CHECK(addFails(scratch.path() / "file" / "photos").code == Errc::Io);
    CHECK(addFails(scratch.path() / "file").what == "a part of the path is a file, not a folder");
    CHECK(scratch.content() == std::vector<std::string>{"file"});
}

TEST_CASE("a file is in the way of the hash's folder")
{
    const ScratchFolder scratch;
    const std::string name = blake2b(makeJpeg(40, 30, noise)).text().substr(0, 2);
    REQUIRE(writeNewFile(scratch.path() / name, "x"));
    CHECK(addFails(scratch.path()).code == Errc::Io);
    CHECK(scratch.content() == std::vector<std::string>{name});
}

TEST_CASE("a file system that takes no files, for root neither")
{
    CHECK_FALSE(addFails("/proc/snugwalk-photos").what.empty());
    CHECK_FALSE(writeNewFile("/proc/snugwalk-photo", "x"));
}

TEST_CASE("a read-only disk")
{
    const ScratchFolder scratch;
    if (::mount("tmpfs", scratch.path().c_str(), "tmpfs", MS_RDONLY, "size=64k") != 0) {
        MESSAGE("read-only disk: not mounted, ", std::strerror(errno));
        return;
    }
    MESSAGE("read-only disk: mounted");
    CHECK(addFails(scratch.path()).what == "the disk is read-only");
    CHECK(addFails(scratch.path() / "photos").what == "the disk is read-only");
    CHECK(::umount2(scratch.path().c_str(), MNT_DETACH) == 0);
}

TEST_CASE("a folder without the right to write")
{
    if (::geteuid() == 0) {
        MESSAGE("mode bits: not tried, root passes them");
        return;
    }
    const ScratchFolder scratch;
    REQUIRE(::chmod(scratch.path().c_str(), 0555) == 0);
    CHECK(addFails(scratch.path()).code == Errc::Io);
    CHECK(::chmod(scratch.path().c_str(), 0755) == 0);
    CHECK(scratch.content().empty());
}
