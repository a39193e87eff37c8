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

Status fill(sqlite3 *from, const std::string &part)
{
    Result<Connection> copy = Connection::open(part, sqlite::OpenMode::Create);
    if (!copy)
        return copy.error();
    SNUG_TRY(copyPages(from, *copy));
    // the copy must not go on with this device's sequence numbers: it starts a stream of its own
    return copy->exec("UPDATE stream SET own = 0; PRAGMA journal_mode = DELETE");
}

Status refuseTaken(const std::string &target)
{
    std::error_code fault;
    if (fs::exists(target, fault) || fs::exists(target + ".photos", fault))
        return Error{Errc::Conflict, "something is there already", target, "give a name that is not taken"};
    return done();
}

Status fillFromFile(const std::string &backup, const std::string &part)
{
    Result<Connection> from = Connection::open(backup, sqlite::OpenMode::ReadOnly);
    if (!from)
        return from.error();
    SNUG_TRY(fill(from->raw(), part));
    return copyPhotos(backup + ".photos", part + ".photos");
}

// Closed again when this returns, so that the file can take its name.
Result<CheckReport> checkPart(const std::string &part, LogbookOptions options)
{
    options.createIfMissing = false;
    Result<Logbook> book = Logbook::open(part, std::move(options));
    if (!book)
        return book.error();
    Result<CheckReport> report = checkLogbook(*book, true);
    if (report && !report->faults.empty())
        return Error{Errc::Corrupt,
                     "the backup is damaged, " + std::to_string(report->faults.size()) + " faults",
                     report->faults.front(), "take an older backup; nothing was changed"};
    return report;
}

} // namespace

Status backupLogbook(Logbook &book, const std::string &target)
{
    SNUG_TRY(refuseTaken(target));
    const std::string part = target + ".part";
    removePart(part);
    Status status = fill(book.db().raw(), part);
    if (status)
        status = copyPhotos(book.photoFolder(), target + ".photos");
    if (status)
        status = publishFile(part, target);
    if (!status) {
        std::error_code fault;
        removePart(part);
        fs::remove_all(target + ".photos", fault);
    }
    return status;
}

Result<CheckReport> restoreLogbook(const std::string &backup, const std::string &target,
                                   LogbookOptions options)
{
    SNUG_TRY(refuseTaken(target));
    std::error_code fault;
    if (!fs::exists(backup, fault))
        return Error{Errc::NotFound, "no such backup", backup, "name the file that `backup` wrote"};
    const std::string part = target + ".part";
    removePart(part);
    fs::remove_all(part + ".photos", fault);
    const Status filled = fillFromFile(backup, part);
    Result<CheckReport> report = filled ? checkPart(part, std::move(options)) : filled.error();
    if (report && fs::exists(part + ".photos", fault)) {
        fs::rename(part + ".photos", target + ".photos", fault);
        if (fault)
            report = systemError(fault.value(), target + ".photos");
    }
    if (report) {
        if (const Status published = publishFile(part, target); !published)
            report = published.error();
    }
    if (!report) {
        removePart(part);
        fs::remove_all(part + ".photos", fault);
        fs::remove_all(target + ".photos", fault);
    }
    return report;
}

} // namespace snugwalk
