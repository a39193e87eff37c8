// SPDX-License-Identifier: Apache-2.0
// Durable files over POSIX: every call's answer is looked at, interrupted calls are tried again.
#include "logbook/files.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

#include "base/text.hpp"
#include "keys/hash.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

template <typename Call>
auto untilNotInterrupted(Call call)
{
    auto answer = call();
    while (answer < 0 && errno == EINTR)
        answer = call();
    return answer;
}

// Owns one open file.
class OpenFile {
public:
    OpenFile(const fs::path &path, int flags)
        : m_fd(untilNotInterrupted([&] { return ::open(path.c_str(), flags | O_CLOEXEC, 0666); }))
    {}
    OpenFile(const OpenFile &) = delete;
    OpenFile &operator=(const OpenFile &) = delete;
    ~OpenFile()
    {
        if (m_fd >= 0)
            ::close(m_fd); // only after a failure that is reported already, or after reading
    }
    [[nodiscard]] bool isOpen() const { return m_fd >= 0; }
    [[nodiscard]] int fd() const { return m_fd; }
    // Some file systems tell of a failed write only now. Never tried again: the number is free by then.
    [[nodiscard]] bool close()
    {
        const int answer = ::close(m_fd);
        m_fd = -1;
        return answer == 0 || errno == EINTR;
    }

private:
    int m_fd;
};

struct Words {
    int number;
    const char *what;
    const char *act;
};

constexpr Words words[] = {
    {ENOSPC, "no room left on the disk", "free some space and try again"},
    {EDQUOT, "no room left in your share of the disk", "free some space and try again"},
    {EFBIG, "the file would be larger than this system lets it be", "save on another disk and try again"},
    {EROFS, "the disk is read-only", "choose a folder on a disk that can be written"},
    {EACCES, "this folder or file may not be used by you", "change its permissions or choose another folder"},
    {EPERM, "the system does not allow this here", "change its permissions or choose another folder"},
    {ENOENT, "no such file or folder", "look at the path and try again"},
    {ENOTDIR, "a part of the path is a file, not a folder", "choose another folder"},
    {EISDIR, "this is a folder, not a file", "give the path of a file"},
    {ENAMETOOLONG, "the path is too long", "choose a folder with a shorter path"},
    {EIO, "the disk reports an error", "copy what you need to another disk"},
    {EMFILE, "too many files are open", "close something and try again"},
    {ENFILE, "too many files are open", "close something and try again"},
};

Error tooLarge(const fs::path &path, std::size_t maxBytes)
{
    constexpr std::size_t mebibyte = std::size_t{1024} * 1024;
    const std::string limit = maxBytes % mebibyte == 0 && maxBytes > 0
                                  ? std::to_string(maxBytes / mebibyte) + " MiB"
                                  : std::to_string(maxBytes) + " bytes";
    return {Errc::OutOfRange, "the file is larger than " + limit, path.string(), "use a smaller file"};
}

Status writeAll(int fd, std::string_view bytes, const fs::path &path)
{
    while (!bytes.empty()) {
        const auto written = untilNotInterrupted([&] { return ::write(fd, bytes.data(), bytes.size()); });
        if (written < 0)
            return systemError(errno, path);
        if (written == 0) // POSIX allows it for a plain file; trying for ever would hang
            return systemError(ENOSPC, path);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return done();
}

Status writePart(const fs::path &part, std::string_view bytes, const fs::path &path)
{
    OpenFile file(part, O_WRONLY | O_CREAT | O_EXCL);
    if (!file.isOpen())
        return systemError(errno, path);
    SNUG_TRY(writeAll(file.fd(), bytes, path));
    if (untilNotInterrupted([&] { return ::fsync(file.fd()); }) != 0)
        return systemError(errno, path);
    return file.close() ? done() : Status(systemError(errno, path));
}

// After this a name made or changed in the folder outlives a power cut.
Status syncFolder(const fs::path &folder)
{
    const fs::path named = folder.empty() ? fs::path(".") : folder;
    OpenFile file(named, O_RDONLY | O_DIRECTORY);
    if (!file.isOpen())
        return systemError(errno, named);
    // EINVAL: this kind of file system has no such thing, then there is nothing more to do
    if (untilNotInterrupted([&] { return ::fsync(file.fd()); }) != 0 && errno != EINVAL)
        return systemError(errno, named);
    return done();
}

int renameUnlessThere(const fs::path &from, const fs::path &to)
{
#ifdef RENAME_NOREPLACE
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return 0;
    if (errno != EINVAL && errno != ENOSYS)
        return -1;
#endif
    // this file system cannot do it in one step; we are the only writer of these names
    struct stat about {};
    if (::lstat(to.c_str(), &about) == 0) {
        errno = EEXIST;
        return -1;
    }
    return errno == ENOENT ? ::rename(from.c_str(), to.c_str()) : -1;
}

Status settleWithPresent(const fs::path &path, std::string_view bytes)
{
    const auto present = readFile(path, bytes.size());
    if (present && present.value() == bytes)
        return done();
    if (!present && present.error().code != Errc::OutOfRange)
        return present.error();
    return Error{Errc::Conflict, "another file of this name is there", path.string(),
                 "move it away and try again"};
}

enum class Present { Keep, Replace };

Status moveInPlace(const fs::path &part, const fs::path &path, std::string_view bytes, Present present)
{
    const int moved =
        present == Present::Replace ? ::rename(part.c_str(), path.c_str()) : renameUnlessThere(part, path);
    if (moved == 0)
        return done();
    if (errno != EEXIST)
        return systemError(errno, path);
    SNUG_TRY(settleWithPresent(path, bytes));
    return ::unlink(part.c_str()) == 0 ? done() : Status(systemError(errno, part));
}

Status writeDurably(const fs::path &path, std::string_view bytes, Present present)
{
    fs::path part = path;
    part += std::string(partMark) + toHex(randomBytes(6));
    Status status = writePart(part, bytes, path);
    if (status)
        status = moveInPlace(part, path, bytes, present);
    if (!status) {
        ::unlink(part.c_str()); // it may never have been made; what is reported is the first failure
        return status;
    }
    return syncFolder(path.parent_path());
}

} // namespace

Error systemError(int number, const fs::path &path)
{
    const Errc code = number == ENOENT ? Errc::NotFound : Errc::Io;
    const auto *found =
        std::find_if(std::begin(words), std::end(words), [&](const Words &w) { return w.number == number; });
    if (found != std::end(words))
        return {code, found->what, path.string(), found->act};
    return {code, std::system_category().message(number), path.string(), "try again"};
}

Result<std::string> readFile(const fs::path &path, std::size_t maxBytes)
{
    OpenFile file(path, O_RDONLY | O_NONBLOCK); // a pipe of that name must not make us wait
    if (!file.isOpen())
        return systemError(errno, path);
    struct stat about {};
    if (::fstat(file.fd(), &about) != 0)
        return systemError(errno, path);
    if (S_ISDIR(about.st_mode))
        return systemError(EISDIR, path);
    if (!S_ISREG(about.st_mode))
        return Error{Errc::Io, "this is not a plain file", path.string(), "give the path of a file"};
    if (static_cast<std::uintmax_t>(about.st_size) > maxBytes)
        return tooLarge(path, maxBytes);
    std::string bytes(static_cast<std::size_t>(about.st_size) + 1, '\0'); // one more, to see the end
    std::size_t filled = 0;
    while (true) {
        const auto got = untilNotInterrupted(
            [&] { return ::read(file.fd(), bytes.data() + filled, bytes.size() - filled); });
        if (got < 0)
            return systemError(errno, path);
        if (got == 0)
            break;
        filled += static_cast<std::size_t>(got);
        if (filled > maxBytes) // it grew while we read
            return tooLarge(path, maxBytes);
        if (filled == bytes.size())
            bytes.resize(std::min(bytes.size() * 2, maxBytes) + 1);
    }
    bytes.resize(filled);
    return bytes;
}

Status makeFolder(const fs::path &folder)
{
    std::error_code ignored; // when this cannot tell, mkdir will
    if (folder.empty() || fs::is_directory(folder, ignored))
        return done();
    const fs::path above = folder.parent_path();
    if (above != folder)
        SNUG_TRY(makeFolder(above));
    if (::mkdir(folder.c_str(), 0777) == 0)
        return syncFolder(above);
    const int number = errno;
    if (number == EEXIST && fs::is_directory(folder, ignored)) // made by another meanwhile
        return done();
    return systemError(number == EEXIST ? ENOTDIR : number, folder);
}

Status writeNewFile(const fs::path &path, std::string_view bytes)
{
    return writeDurably(path, bytes, Present::Keep);
}

Status replaceFile(const fs::path &path, std::string_view bytes)
{
    return writeDurably(path, bytes, Present::Replace);
}

namespace {

Status syncFile(const fs::path &path)
{
    OpenFile file(path, O_RDONLY);
    if (!file.isOpen())
        return systemError(errno, path);
    const bool isSynced = untilNotInterrupted([&] { return ::fsync(file.fd()); }) == 0;
    return isSynced ? done() : Status(systemError(errno, path));
}

} // namespace

Status publishFileOver(const fs::path &part, const fs::path &path)
{
    SNUG_TRY(syncFile(part));
    if (::rename(part.c_str(), path.c_str()) != 0)
        return systemError(errno, path);
    return syncFolder(path.parent_path());
}

Status publishFile(const fs::path &part, const fs::path &path)
{
    SNUG_TRY(syncFile(part));
    if (renameUnlessThere(part, path) != 0) {
        if (errno == EEXIST)
            return Error{Errc::Conflict, "another file of this name is there", path.string(),
                         "move it away and try again"};
        return systemError(errno, path);
    }
    return syncFolder(path.parent_path());
}

} // namespace snugwalk
