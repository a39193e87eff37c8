// SPDX-License-Identifier: Apache-2.0
// Every step goes from an open folder to a name below it, so that no link can lead outside.
#include "sync/folder_store.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <dirent.h>
#include <fcntl.h>
#include <memory>
#include <sys/stat.h>
#include <unistd.h>

#include "base/text.hpp"
#include "keys/hash.hpp"
#include "logbook/files.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view partStart = "_part-"; // fine as a name, and hidden from lists
constexpr std::size_t maxListed = 1'000'000;

class Fd {
public:
    explicit Fd(int fd = -1) : m_fd(fd) {}
    Fd(Fd &&other) noexcept : m_fd(other.release()) {}
    Fd &operator=(Fd &&other) noexcept
    {
        std::swap(m_fd, other.m_fd);
        return *this;
    }
    ~Fd()
    {
        if (m_fd >= 0)
            ::close(m_fd);
    }
    [[nodiscard]] int get() const { return m_fd; }
    [[nodiscard]] bool isOpen() const { return m_fd >= 0; }
    int release() { return std::exchange(m_fd, -1); }

private:
    int m_fd;
};

template <typename Call>
auto untilNotInterrupted(Call call)
{
    auto answer = call();
    while (answer < 0 && errno == EINTR)
        answer = call();
    return answer;
}

// A link or a file where a folder should be: somebody put it there.
Error refused(int number, const fs::path &path)
{
    if (number == ELOOP || number == ENOTDIR)
        return {Errc::Io, "a link or a file lies where a folder of the store should be", path.string(),
                "remove it from the store"};
    return systemError(number, path);
}

enum class Missing { Fails, IsMade };

Result<Fd> openFolder(const fs::path &root, const std::vector<std::string_view> &parts, Missing missing)
{
    fs::path path = root;
    Fd at(untilNotInterrupted([&] { return ::open(root.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC); }));
    if (!at.isOpen())
        return systemError(errno, path);
    for (const std::string_view part : parts) {
        const std::string name(part);
        path /= name;
        const auto open = [&] {
            return ::openat(at.get(), name.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC);
        };
        Fd next(untilNotInterrupted(open));
        if (!next.isOpen() && errno == ENOENT && missing == Missing::IsMade) {
            if (::mkdirat(at.get(), name.c_str(), 0777) != 0 && errno != EEXIST)
                return systemError(errno, path);
            if (::fsync(at.get()) != 0 && errno != EINVAL)
                return systemError(errno, path);
            next = Fd(untilNotInterrupted(open));
        }
        if (!next.isOpen())
            return refused(errno, path);
        at = std::move(next);
    }
    return at;
}

Result<std::string> readPlain(int folder, const std::string &name, std::int64_t limit, const fs::path &path)
{
    const Fd file(untilNotInterrupted(
        [&] { return ::openat(folder, name.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC); }));
    struct stat about {};
    if (!file.isOpen() || ::fstat(file.get(), &about) != 0)
        return refused(errno, path);
    if (!S_ISREG(about.st_mode))
        return Error{Errc::Io, "this is not a plain file", path.string(), "remove it from the store"};
    std::string bytes;
    std::string piece(std::size_t{64} * 1024, '\0');
    if (about.st_size <= limit)
        bytes.reserve(static_cast<std::size_t>(about.st_size));
    while (static_cast<std::int64_t>(bytes.size()) <= limit && about.st_size <= limit) {
        const auto got = untilNotInterrupted([&] { return ::read(file.get(), piece.data(), piece.size()); });
        if (got < 0)
            return systemError(errno, path);
        if (got == 0)
            return bytes;
        bytes.append(piece, 0, static_cast<std::size_t>(got));
    }
    return Error{Errc::OutOfRange, "a file of the store is larger than it may be", path.string(), ""};
}

Status writeAll(int fd, std::string_view bytes, const fs::path &path)
{
    while (!bytes.empty()) {
        const auto written = untilNotInterrupted([&] { return ::write(fd, bytes.data(), bytes.size()); });
        if (written <= 0)
            return systemError(written < 0 ? errno : ENOSPC, path);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return done();
}

Status writePart(int folder, const std::string &part, std::string_view bytes, const fs::path &path)
{
    Fd file(untilNotInterrupted([&] {
        return ::openat(folder, part.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
    }));
    if (!file.isOpen())
        return systemError(errno, path);
    SNUG_TRY(writeAll(file.get(), bytes, path));
    if (untilNotInterrupted([&] { return ::fsync(file.get()); }) != 0)
        return systemError(errno, path);
    if (::close(file.release()) != 0 && errno != EINTR) // some systems tell of a failed write only now
        return systemError(errno, path);
    const Result<std::string> back = readPlain(folder, part, static_cast<std::int64_t>(bytes.size()), path);
    if (!back || *back != bytes)
        return Error{Errc::Io, "what was written did not read back the same", path.string(),
                     "try another stick or folder"};
    return done();
}

int renameUnlessThere(int folder, const std::string &from, const std::string &to)
{
#ifdef RENAME_NOREPLACE
    if (::renameat2(folder, from.c_str(), folder, to.c_str(), RENAME_NOREPLACE) == 0)
        return 0;
    if (errno != EINVAL && errno != ENOSYS)
        return -1;
#endif
    // FAT cannot do it in one step; a name holds the hash of its bytes, so a race would replace like by like
    struct stat about {};
    if (::fstatat(folder, to.c_str(), &about, AT_SYMLINK_NOFOLLOW) == 0) {
        errno = EEXIST;
        return -1;
    }
    return errno == ENOENT ? ::renameat(folder, from.c_str(), folder, to.c_str()) : -1;
}

Status settleWithPresent(int folder, const std::string &name, std::string_view bytes, const fs::path &path)
{
    const auto present = readPlain(folder, name, static_cast<std::int64_t>(bytes.size()), path);
    if (present && *present == bytes)
        return done();
    return Error{Errc::Conflict, "another file of this name is in the store", path.string(),
                 "look at the store; nothing was overwritten"};
}

Status place(int folder, const std::string &name, std::string_view bytes, const fs::path &path)
{
    struct stat about {};
    if (::fstatat(folder, name.c_str(), &about, AT_SYMLINK_NOFOLLOW) == 0)
        return settleWithPresent(folder, name, bytes, path);
    const std::string part = std::string(partStart) + toHex(randomBytes(8));
    Status status = writePart(folder, part, bytes, path);
    if (status && renameUnlessThere(folder, part, name) != 0) {
        const int number = errno;
        ::unlinkat(folder, part.c_str(), 0);
        return number == EEXIST ? settleWithPresent(folder, name, bytes, path)
                                : Status(systemError(number, path));
    }
    if (!status) {
        ::unlinkat(folder, part.c_str(), 0); // it may never have been made
        return status;
    }
    if (untilNotInterrupted([&] { return ::fsync(folder); }) != 0 && errno != EINVAL)
        return systemError(errno, path);
    return done();
}

struct CloseList {
    void operator()(DIR *dir) const { ::closedir(dir); }
};

std::optional<StoreFile> listed(int folder, const char *name)
{
    struct stat about {};
    if (std::string_view(name).starts_with(partStart) || !nameIsFine(name) ||
        ::fstatat(folder, name, &about, AT_SYMLINK_NOFOLLOW) != 0)
        return std::nullopt;
    if (S_ISDIR(about.st_mode))
        return StoreFile{std::string(name) + "/", 0};
    if (S_ISREG(about.st_mode))
        return StoreFile{name, static_cast<std::int64_t>(about.st_size)};
    return std::nullopt;
}

} // namespace

Result<std::vector<StoreFile>> FolderStore::list(std::string_view folder)
{
    if (!folder.empty())
        SNUG_TRY(checkStoreName(folder));
    std::error_code fault;
    if (!fs::is_directory(m_root, fault))
        return Error{Errc::NotFound, "the store's folder is not there", m_root.string(),
                     "put the stick in, or connect the drive, and try again"};
    Result<Fd> opened = openFolder(
        m_root, folder.empty() ? std::vector<std::string_view>() : split(folder, '/'), Missing::Fails);
    if (!opened && opened.error().code == Errc::NotFound)
        return std::vector<StoreFile>();
    if (!opened)
        return opened.error();
    const int fd = opened->get();
    const std::unique_ptr<DIR, CloseList> dir(::fdopendir(fd));
    if (!dir)
        return systemError(errno, m_root / folder);
    static_cast<void>(opened->release()); // the list closes it
    std::vector<StoreFile> found;
    errno = 0;
    while (const dirent *item = ::readdir(dir.get())) {
        if (auto file = listed(fd, item->d_name))
            found.push_back(std::move(*file));
        if (found.size() > maxListed)
            return Error{Errc::OutOfRange, "more files than a store may have", (m_root / folder).string(),
                         "look at the store"};
        errno = 0;
    }
    if (errno != 0)
        return systemError(errno, m_root / folder);
    std::sort(found.begin(), found.end(),
              [](const StoreFile &a, const StoreFile &b) { return a.name < b.name; });
    return found;
}

Result<std::string> FolderStore::read(std::string_view name, std::int64_t limit)
{
    SNUG_TRY(checkStoreName(name));
    auto parts = split(name, '/');
    const std::string last(parts.back());
    parts.pop_back();
    const Result<Fd> folder = openFolder(m_root, parts, Missing::Fails);
    if (!folder)
        return folder.error();
    return readPlain(folder->get(), last, limit, m_root / name);
}

Status FolderStore::publish(std::string_view name, std::string_view bytes)
{
    SNUG_TRY(checkStoreName(name));
    auto parts = split(name, '/');
    const std::string last(parts.back());
    parts.pop_back();
    const Result<Fd> folder = openFolder(m_root, parts, Missing::IsMade);
    if (!folder)
        return folder.error();
    return place(folder->get(), last, bytes, m_root / name);
}

} // namespace snugwalk
