// SPDX-License-Identifier: Apache-2.0
// The device's key file, with permissions for its owner alone.
#include "device/device.hpp"

#include <array>
#include <cerrno>
#include <cstdlib>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "logbook/files.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

Result<DeviceKey> readKey(const fs::path &file)
{
    const Result<std::string> bytes = readFile(file, 64);
    if (!bytes)
        return bytes.error();
    if (bytes->size() != 32)
        return Error{Errc::Corrupt, "the device's key is damaged", file.string(),
                     "restore it from a backup; or delete it, and this device starts a new stream"};
    return DeviceKey::fromSeed(*bytes);
}

} // namespace

fs::path dataFolder()
{
    if (const char *folder = std::getenv("XDG_DATA_HOME"); folder != nullptr && *folder != '\0')
        return fs::path(folder) / "snugwalk";
    const char *home = std::getenv("HOME");
    return fs::path(home == nullptr ? "." : home) / ".local" / "share" / "snugwalk";
}

std::string deviceLabel()
{
    std::array<char, 256> name{};
    return gethostname(name.data(), name.size() - 1) == 0 ? name.data() : "device";
}

Result<DeviceKey> deviceKey(const fs::path &folder)
{
    const fs::path file = folder / "device.key";
    std::error_code fault;
    if (fs::exists(file, fault))
        return readKey(file);
    SNUG_TRY(makeFolder(folder));
    const DeviceKey key = DeviceKey::random();
    const mode_t before = umask(S_IRWXG | S_IRWXO);
    const Status written = writeNewFile(file, key.seed());
    umask(before);
    // Two programs started at once: the one that lost takes the other's key.
    if (!written && written.error().code == Errc::Conflict)
        return readKey(file);
    if (!written)
        return written.error();
    return key;
}

} // namespace snugwalk
