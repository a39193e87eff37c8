// SPDX-License-Identifier: Apache-2.0
// Disks without room: a small file system when we may mount one, and always a limit on the size of files.
#include "damage.hpp"

#include <cerrno>
#include <csignal>
#include <cstring>
#include <fstream>
#include <sys/mount.h>
#include <sys/resource.h>

#include "logbook/files.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Files may not grow over `bytes`; the signal that comes with it is ignored, as the system then says EFBIG.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
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
    rlimit m_before{};
    void (*m_handler)(int) = SIG_DFL;
};

// A file system in memory, if this process may mount one.
class SmallDisk {
public:
    explicit SmallDisk(const std::filesystem::path &at) : m_at(at)
    {
        m_isMounted = ::mount("tmpfs", at.c_str(), "tmpfs", 0, "size=128k") == 0;
        const std::string outcome =
            m_isMounted ? "mounted 128 KiB" : std::string("not mounted, ") + std::strerror(errno);
        MESSAGE("small disk: ", outcome);
    }
    SmallDisk(const SmallDisk &) = delete;
    SmallDisk &operator=(const SmallDisk &) = delete;
    ~SmallDisk()
    {
        if (m_isMounted)
            ::umount2(m_at.c_str(), MNT_DETACH);
    }
    [[nodiscard]] bool isMounted() const { return m_isMounted; }

private:
    std::filesystem::path m_at;
    bool m_isMounted = false;
};

} // namespace

TEST_CASE("a full disk: said, and nothing half-written")
{
    const ScratchFolder scratch;
    const SmallDisk disk(scratch.path());
    if (!disk.isMounted())
        return; // the size limit below is tried everywhere
    PhotoStore store(scratch.path());
    const std::string photo = makeJpeg(400, 300, noise, 95);
    REQUIRE(photo.size() > 128U * 1024);
    const auto added = store.add(photo, PlainCodec());
    REQUIRE_FALSE(added);
    CHECK(added.error().code == Errc::Io);
    CHECK(added.error().what == "no room left on the disk");
    CHECK(added.error().act == "free some space and try again");
    CHECK(added.error().where.starts_with(scratch.path().string()));
    CHECK(scratch.content().empty());
}

TEST_CASE("the disk fills up between original and thumbnail; with room again it works")
{
    const ScratchFolder scratch;
    const SmallDisk disk(scratch.path());
    if (!disk.isMounted())
        return;
    PhotoStore store(scratch.path());
    const std::string photo = makeJpeg(240, 160, noise, 60);
    // a page for the original, none for the rest
    const std::size_t room = (photo.size() + 4095) / 4096 * 4096;
    const auto filler = scratch.path() / "filler";
    REQUIRE(writeNewFile(filler, std::string(128U * 1024 - room, 'x')));
    const auto added = store.add(photo, PlainCodec());
    REQUIRE_FALSE(added);
    CHECK(added.error().what == "no room left on the disk");
    CHECK(scratch.content() == std::vector<std::string>{"filler"});
    std::filesystem::remove(filler);
    CHECK(store.add(photo, PlainCodec()));
    CHECK(store.strays().empty());
}

TEST_CASE("files that may not grow: wherever the limit hits, nothing is left")
{
    // a small photo whose thumbnail is larger than itself, so that the limit can hit either
    const std::string photo = makePng(300, 200, [](int x, int y) { return noise(x % 16, y % 16); });
    const ScratchFolder free;
    PhotoStore freeStore(free.path());
    const Hash hash = freeStore.add(photo, PlainCodec()).value().hash;
    const std::size_t thumb = freeStore.thumbnail(hash).value().size();
    REQUIRE(thumb > photo.size());
    MESSAGE("file size limit: photo of ", photo.size(), " bytes, thumbnail of ", thumb);
    for (const std::size_t limit :
         {std::size_t{0}, std::size_t{1}, photo.size() - 1, photo.size(), thumb - 1}) {
        CAPTURE(limit);
        const ScratchFolder scratch;
        PhotoStore store(scratch.path());
        const auto added = [&] {
            const FileSizeLimit limited(limit);
            return store.add(photo, PlainCodec());
        }();
        REQUIRE_FALSE(added);
        CHECK(added.error().code == Errc::Io);
        CHECK(added.error().what == "the file would be larger than this system lets it be");
        CHECK(scratch.content().empty());
        CHECK(store.add(photo, PlainCodec())); // and afterwards it works
    }
}

TEST_CASE("replacing a file fails whole: the old one is still there")
{
    const ScratchFolder scratch;
    const auto path = scratch.path() / "f";
    REQUIRE(writeNewFile(path, "old"));
    const Status replaced = [&] {
        const FileSizeLimit limited(100);
        return replaceFile(path, std::string(5000, 'n'));
    }();
    CHECK_FALSE(replaced);
    CHECK(readFile(path, 100).value() == "old");
    CHECK(scratch.content() == std::vector<std::string>{"f"});
}
