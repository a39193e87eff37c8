// SPDX-License-Identifier: Apache-2.0
// Functions by the names of the C library, SQLite, libjpeg and libpng: the program's own come first.
#include "calls_by_thread.hpp"

#include <atomic>
#include <cstdarg>
#include <cstddef>
#include <cstdio>
#include <mutex>
#include <thread>

#include <dirent.h>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace snugwalk::test {
namespace {

enum class Kind { File, Database, Picture };

std::atomic<bool> counting = false;
std::mutex guard;
std::thread::id home;
CallWatch::Seen seen;
thread_local bool within = false; // what counting itself asks for is not counted

void note(Kind kind, const char *function, const char *path = nullptr)
{
    if (!counting || within)
        return;
    within = true;
    {
        const std::lock_guard<std::mutex> lock(guard);
        Calls &calls = std::this_thread::get_id() == home ? seen.here : seen.elsewhere;
        std::vector<std::string> &list = kind == Kind::File       ? calls.files
                                         : kind == Kind::Database ? calls.database
                                                                  : calls.pictures;
        list.push_back(path == nullptr ? function : std::string(function) + ' ' + path);
    }
    within = false;
}

template <typename Function>
Function *next(const char *name)
{
    return reinterpret_cast<Function *>(::dlsym(RTLD_NEXT, name));
}

mode_t modeOf(int flags, std::va_list more)
{
    return (flags & O_CREAT) != 0 || (flags & O_TMPFILE) == O_TMPFILE ? static_cast<mode_t>(va_arg(more, int))
                                                                      : 0;
}

} // namespace

CallWatch::CallWatch()
{
    const std::lock_guard<std::mutex> lock(guard);
    home = std::this_thread::get_id();
    seen = {};
    counting = true;
}

CallWatch::~CallWatch() { counting = false; }

CallWatch::Seen CallWatch::take()
{
    counting = false;
    const std::lock_guard<std::mutex> lock(guard);
    return seen;
}

} // namespace snugwalk::test

using snugwalk::test::Kind;
using snugwalk::test::modeOf;
using snugwalk::test::next;
using snugwalk::test::note;

// NOLINTBEGIN: names, signatures and varargs are those of the libraries
extern "C" {

#define OPEN_FILE(name)                                                                                      \
    __attribute__((visibility("default"))) int name(const char *path, int flags, ...)                        \
    {                                                                                                        \
        std::va_list more;                                                                                   \
        va_start(more, flags);                                                                               \
        const mode_t mode = modeOf(flags, more);                                                             \
        va_end(more);                                                                                        \
        note(Kind::File, #name, path);                                                                       \
        static auto *const real = next<int(const char *, int, ...)>(#name);                                  \
        return real(path, flags, mode);                                                                      \
    }
#define OPEN_FILE_AT(name)                                                                                   \
    __attribute__((visibility("default"))) int name(int folder, const char *path, int flags, ...)            \
    {                                                                                                        \
        std::va_list more;                                                                                   \
        va_start(more, flags);                                                                               \
        const mode_t mode = modeOf(flags, more);                                                             \
        va_end(more);                                                                                        \
        note(Kind::File, #name, path);                                                                       \
        static auto *const real = next<int(int, const char *, int, ...)>(#name);                             \
        return real(folder, path, flags, mode);                                                              \
    }
#define COUNTED_AS(kind, result, name, path, parameters, throwing, arguments)                                \
    __attribute__((visibility("default"))) result name parameters throwing                                   \
    {                                                                                                        \
        note(kind, #name, path);                                                                             \
        static auto *const real = next<result parameters>(#name);                                            \
        return real arguments;                                                                               \
    }
#define COUNTED(kind, result, name, path, parameters, arguments)                                             \
    COUNTED_AS(kind, result, name, path, parameters, , arguments)
// those that the C library declares so
#define COUNTED_QUIET(kind, result, name, path, parameters, arguments)                                       \
    COUNTED_AS(kind, result, name, path, parameters, noexcept, arguments)

OPEN_FILE(open)
OPEN_FILE(open64)
OPEN_FILE_AT(openat)
OPEN_FILE_AT(openat64)
COUNTED(Kind::File, int, __open_2, path, (const char *path, int flags), (path, flags))
COUNTED(Kind::File, int, __open64_2, path, (const char *path, int flags), (path, flags))
COUNTED(Kind::File, int, __openat_2, path, (int folder, const char *path, int flags), (folder, path, flags))
COUNTED(Kind::File, int, __openat64_2, path, (int folder, const char *path, int flags), (folder, path, flags))
COUNTED(Kind::File, std::FILE *, fopen, path, (const char *path, const char *mode), (path, mode))
COUNTED(Kind::File, std::FILE *, fopen64, path, (const char *path, const char *mode), (path, mode))
COUNTED(Kind::File, DIR *, opendir, path, (const char *path), (path))
COUNTED_QUIET(Kind::File, int, stat, path, (const char *path, struct stat *about), (path, about))
COUNTED_QUIET(Kind::File, int, stat64, path, (const char *path, struct stat64 *about), (path, about))
COUNTED_QUIET(Kind::File, int, lstat, path, (const char *path, struct stat *about), (path, about))
COUNTED_QUIET(Kind::File, int, lstat64, path, (const char *path, struct stat64 *about), (path, about))
COUNTED_QUIET(Kind::File, int, statx, path,
              (int folder, const char *path, int flags, unsigned mask, struct statx *about),
              (folder, path, flags, mask, about))
COUNTED_QUIET(Kind::File, int, access, path, (const char *path, int how), (path, how))
COUNTED_QUIET(Kind::File, int, mkdir, path, (const char *path, mode_t mode), (path, mode))
COUNTED_QUIET(Kind::File, int, rename, from, (const char *from, const char *to), (from, to))
COUNTED_QUIET(Kind::File, int, unlink, path, (const char *path), (path))
COUNTED(Kind::File, int, fsync, nullptr, (int file), (file))
COUNTED(Kind::File, int, fdatasync, nullptr, (int file), (file))

struct sqlite3;
struct sqlite3_stmt;
COUNTED(Kind::Database, int, sqlite3_open_v2, nullptr,
        (const char *file, sqlite3 **db, int flags, const char *vfs), (file, db, flags, vfs))
COUNTED(Kind::Database, int, sqlite3_prepare_v2, nullptr,
        (sqlite3 * db, const char *sql, int bytes, sqlite3_stmt **statement, const char **tail),
        (db, sql, bytes, statement, tail))
COUNTED(Kind::Database, int, sqlite3_prepare_v3, nullptr,
        (sqlite3 * db, const char *sql, int bytes, unsigned flags, sqlite3_stmt **statement,
         const char **tail),
        (db, sql, bytes, flags, statement, tail))
COUNTED(Kind::Database, int, sqlite3_step, nullptr, (sqlite3_stmt * statement), (statement))
COUNTED(Kind::Database, int, sqlite3_exec, nullptr,
        (sqlite3 * db, const char *sql, int (*row)(void *, int, char **, char **), void *context,
         char **fault),
        (db, sql, row, context, fault))

struct jpeg_decompress_struct;
struct jpeg_compress_struct;
COUNTED(Kind::Picture, int, jpeg_read_header, nullptr, (jpeg_decompress_struct * jpeg, int required),
        (jpeg, required))
COUNTED(Kind::Picture, int, jpeg_start_decompress, nullptr, (jpeg_decompress_struct * jpeg), (jpeg))
COUNTED(Kind::Picture, void, jpeg_start_compress, nullptr, (jpeg_compress_struct * jpeg, int whole),
        (jpeg, whole))

struct png_struct_def;
struct png_info_def;
COUNTED(Kind::Picture, void, png_read_info, nullptr, (png_struct_def * png, png_info_def *info), (png, info))
COUNTED(Kind::Picture, void, png_write_info, nullptr, (png_struct_def * png, const png_info_def *info),
        (png, info))

} // extern "C"
// NOLINTEND
