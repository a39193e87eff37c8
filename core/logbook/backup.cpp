// SPDX-License-Identifier: Apache-2.0
// A copy that opens by itself, made while the logbook is in use.
#include <filesystem>
#include <sqlite3.h>

#include "logbook/check.hpp"
#include "logbook/files.hpp"
#include "logbook/image_codec.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;
using sqlite::Connection;

Status copyPages(sqlite3 *from, Connection &to)
{
    sqlite3_backup *backup = sqlite3_backup_init(to.raw(), "main", from, "main");
    if (backup == nullptr)
        return sqlite::lastError(to.raw(), to.file());
    int code = sqlite3_backup_step(backup, -1);
    for (int tries = 0; (code == SQLITE_BUSY || code == SQLITE_LOCKED) && tries < 50; ++tries) {
        sqlite3_sleep(100);
        code = sqlite3_backup_step(backup, -1);
    }
    sqlite3_backup_finish(backup);
    return code == SQLITE_DONE ? done() : Status(sqlite::lastError(to.raw(), to.file()));
}

Status copyPhoto(const fs::path &from, const fs::path &to)
{
    const Result<std::string> bytes = readFile(from, maxPhotoBytes);
    if (!bytes)
        return bytes.error();
    SNUG_TRY(makeFolder(to.parent_path()));
    return writeNewFile(to, *bytes);
}

// Each file to the disk before the copy gets its name; parts that a killed process left stay behind.
Status copyPhotos(const fs::path &from, const fs::path &to)
{
    std::error_code fault;
    if (!fs::exists(from, fault))
        return done();
    for (auto at = fs::recursive_directory_iterator(from, fault);
         !fault && at != fs::recursive_directory_iterator(); at.increment(fault)) {
        const bool isPart = at->path().filename().string().find(partMark) != std::string::npos;
        if (at->is_regular_file(fault) && !isPart)
            SNUG_TRY(copyPhoto(at->path(), to / at->path().lexically_relative(from)));
    }
    return fault ? Status(systemError(fault.value(), from)) : done();
}

void removePart(const std::string &part)
{
    std::error_code ignored;
    for (const char *ending : {"", "-wal", "-shm", "-journal"})
        fs::remove(part + ending, ignored);
}

Status fill(Logbook &book, const std::string &part)
{
    Result<Connection> copy = Connection::open(part, sqlite::OpenMode::Create);
    if (!copy)
        return copy.error();
    SNUG_TRY(copyPages(book.db().raw(), *copy));
    // the copy must not go on with this device's sequence numbers: it starts a stream of its own
    return copy->exec("UPDATE stream SET own = 0; PRAGMA journal_mode = DELETE");
}

} // namespace

Status backupLogbook(Logbook &book, const std::string &target)
{
    std::error_code fault;
    if (fs::exists(target, fault) || fs::exists(target + ".photos", fault))
        return Error{Errc::Conflict, "something is there already", target, "give a name that is not taken"};
    const std::string part = target + ".part";
    removePart(part);
    Status status = fill(book, part);
    if (status)
        status = copyPhotos(book.photoFolder(), target + ".photos");
    if (status)
        status = publishFile(part, target);
    if (!status) {
        removePart(part);
        fs::remove_all(target + ".photos", fault);
    }
    return status;
}

} // namespace snugwalk
