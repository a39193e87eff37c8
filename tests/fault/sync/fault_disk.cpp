// SPDX-License-Identifier: Apache-2.0
// A shim over the system's own VFS; what is not a write goes straight through.
#include "fault_disk.hpp"

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <sqlite3.h>
#include <string>
#include <vector>

#include "base/contract.hpp"

namespace snugwalk::test {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t sector = 512;

struct Unsynced {
    std::string file;
    std::size_t at = 0;
    std::size_t sizeBefore = 0;
    std::string before;
    std::string after;
};

struct State {
    std::int64_t calls = 0;
    std::int64_t left = -1;
    Fault fault = Fault::Once;
    bool failed = false;
    std::vector<Unsynced> unsynced;
    sqlite3_vfs *real = nullptr;
    sqlite3_vfs shim{};
};
State state;

struct File {
    sqlite3_file base;
    sqlite3_file *real;
    std::string *name;
};

File *of(sqlite3_file *file) { return reinterpret_cast<File *>(file); }
sqlite3_file *realOf(sqlite3_file *file) { return of(file)->real; }

// The code to give back, or none.
int trouble()
{
    ++state.calls;
    if (state.left < 0 || state.left-- > 0)
        return SQLITE_OK;
    state.failed = true;
    if (state.fault != Fault::Once)
        state.left = 0;
    return state.fault == Fault::Full ? SQLITE_FULL : SQLITE_IOERR_WRITE;
}

std::size_t sizeOf(const std::string &file)
{
    std::error_code fault;
    const auto size = fs::file_size(file, fault);
    return fault ? 0 : static_cast<std::size_t>(size);
}

std::string readFrom(const std::string &file, std::size_t at, std::size_t size)
{
    std::ifstream in(file, std::ios::binary);
    in.seekg(static_cast<std::streamoff>(at));
    std::string bytes(size, '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(size));
    bytes.resize(static_cast<std::size_t>(std::max<std::streamsize>(in.gcount(), 0)));
    return bytes;
}

void writeTo(const std::string &file, std::size_t at, const std::string &bytes)
{
    std::fstream out(file, std::ios::binary | std::ios::in | std::ios::out);
    out.seekp(static_cast<std::streamoff>(at));
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

void remember(sqlite3_file *file, std::size_t at, std::size_t size, std::string after)
{
    const std::string &name = *of(file)->name;
    if (!name.empty())
        state.unsynced.push_back({name, at, sizeOf(name), readFrom(name, at, size), std::move(after)});
}

int onClose(sqlite3_file *file)
{
    const int rc = realOf(file)->pMethods->xClose(realOf(file));
    sqlite3_free(of(file)->real);
    delete of(file)->name;
    return rc;
}
int onRead(sqlite3_file *file, void *to, int size, sqlite3_int64 at)
{
    return realOf(file)->pMethods->xRead(realOf(file), to, size, at);
}
int onWrite(sqlite3_file *file, const void *from, int size, sqlite3_int64 at)
{
    if (const int code = trouble(); code != SQLITE_OK)
        return code;
    remember(file, static_cast<std::size_t>(at), static_cast<std::size_t>(size),
             std::string(static_cast<const char *>(from), static_cast<std::size_t>(size)));
    return realOf(file)->pMethods->xWrite(realOf(file), from, size, at);
}
int onTruncate(sqlite3_file *file, sqlite3_int64 size)
{
    if (const int code = trouble(); code != SQLITE_OK)
        return code;
    const auto at = static_cast<std::size_t>(size);
    const std::size_t now = sizeOf(*of(file)->name);
    remember(file, at, now > at ? now - at : 0, {});
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}
int onSync(sqlite3_file *file, int flags)
{
    if (const int code = trouble(); code != SQLITE_OK)
        return code == SQLITE_FULL ? SQLITE_OK : SQLITE_IOERR_FSYNC;
    std::erase_if(state.unsynced, [&](const Unsynced &item) { return item.file == *of(file)->name; });
    static_cast<void>(flags); // what the machine's disk really keeps is not what is tested
    return SQLITE_OK;
}
int onSize(sqlite3_file *file, sqlite3_int64 *size)
{
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int onLock(sqlite3_file *file, int level) { return realOf(file)->pMethods->xLock(realOf(file), level); }
int onUnlock(sqlite3_file *file, int level) { return realOf(file)->pMethods->xUnlock(realOf(file), level); }
int onReserved(sqlite3_file *file, int *out)
{
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), out);
}
int onControl(sqlite3_file *file, int op, void *arg)
{
    return realOf(file)->pMethods->xFileControl(realOf(file), op, arg);
}
int onSector(sqlite3_file *) { return static_cast<int>(sector); }
int onTraits(sqlite3_file *) { return 0; } // nothing is promised: no atomic and no ordered writes
int onShmMap(sqlite3_file *file, int page, int size, int extend, void volatile **out)
{
    return realOf(file)->pMethods->xShmMap(realOf(file), page, size, extend, out);
}
int onShmLock(sqlite3_file *file, int offset, int n, int flags)
{
    return realOf(file)->pMethods->xShmLock(realOf(file), offset, n, flags);
}
void onShmBarrier(sqlite3_file *file) { realOf(file)->pMethods->xShmBarrier(realOf(file)); }
int onShmUnmap(sqlite3_file *file, int remove)
{
    return realOf(file)->pMethods->xShmUnmap(realOf(file), remove);
}

const sqlite3_io_methods methods = {2,        onClose,  onRead,    onWrite,      onTruncate, onSync,
                                    onSize,   onLock,   onUnlock,  onReserved,   onControl,  onSector,
                                    onTraits, onShmMap, onShmLock, onShmBarrier, onShmUnmap, nullptr,
                                    nullptr};

int onOpen(sqlite3_vfs *, const char *name, sqlite3_file *file, int flags, int *out)
{
    std::memset(file, 0, sizeof(File));
    auto *real = static_cast<sqlite3_file *>(sqlite3_malloc(state.real->szOsFile));
    std::memset(real, 0, static_cast<std::size_t>(state.real->szOsFile));
    const int rc = state.real->xOpen(state.real, name, real, flags, out);
    if (rc != SQLITE_OK) {
        if (real->pMethods != nullptr)
            real->pMethods->xClose(real);
        sqlite3_free(real);
        return rc;
    }
    of(file)->real = real;
    of(file)->name = new std::string(name == nullptr ? "" : name);
    file->pMethods = &methods;
    return SQLITE_OK;
}

int onDelete(sqlite3_vfs *, const char *name, int sync)
{
    if (const int code = trouble(); code != SQLITE_OK)
        return SQLITE_IOERR_DELETE;
    std::erase_if(state.unsynced, [&](const Unsynced &item) { return item.file == name; });
    return state.real->xDelete(state.real, name, sync);
}

} // namespace

FaultDisk::FaultDisk()
{
    state = State{};
    state.real = sqlite3_vfs_find(nullptr);
    SNUG_ASSERT(state.real != nullptr);
    state.shim = *state.real;
    state.shim.zName = "faults";
    state.shim.szOsFile = static_cast<int>(sizeof(File));
    state.shim.xOpen = onOpen;
    state.shim.xDelete = onDelete;
    sqlite3_vfs_register(&state.shim, 1);
}

FaultDisk::~FaultDisk()
{
    sqlite3_vfs_unregister(&state.shim);
    sqlite3_vfs_register(state.real, 1);
}

void FaultDisk::failAfter(std::int64_t calls, Fault fault)
{
    state.calls = 0;
    state.left = calls;
    state.fault = fault;
    state.failed = false;
}

std::int64_t FaultDisk::calls() const { return state.calls; }
bool FaultDisk::failed() const { return state.failed; }

void FaultDisk::loseUnsynced(std::mt19937 &rng)
{
    std::vector<Unsynced> lost;
    lost.swap(state.unsynced);
    for (auto item = lost.rbegin(); item != lost.rend(); ++item) {
        if (!fs::exists(item->file))
            continue;
        writeTo(item->file, item->at, item->before);
        fs::resize_file(item->file, item->sizeBefore);
    }
    std::shuffle(lost.begin(), lost.end(), rng);
    for (const Unsynced &item : lost) {
        if (item.after.empty() || rng() % 2 == 0 || !fs::exists(item.file))
            continue;
        const std::size_t sectors = item.after.size() / sector;
        writeTo(item.file, item.at,
                rng() % 3 == 0 && sectors > 0 ? item.after.substr(0, sector * (rng() % (sectors + 1)))
                                              : item.after);
    }
}

} // namespace snugwalk::test
