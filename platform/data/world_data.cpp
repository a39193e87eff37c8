// SPDX-License-Identifier: Apache-2.0
// Looks for the world's data in the folders where an install or a build puts it.
#include "data/world_data.hpp"

#include <cstdlib>
#include <system_error>

#include "logbook/files.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t mostBytes = std::size_t{64} << 20;
constexpr const char *remedy =
    "put the file there or name its folder in SNUGWALK_DATA; until then days without a weather record of "
    "their own "
    "count as the reference climate, no place counts as near the sea and none has a name, all else works";

} // namespace

std::vector<fs::path> worldDataFolders()
{
    if (const char *chosen = std::getenv("SNUGWALK_DATA"); chosen != nullptr && *chosen != '\0')
        return {chosen};
    std::vector<fs::path> folders;
    std::error_code failed;
    const fs::path program = fs::read_symlink("/proc/self/exe", failed);
    if (!failed)
        folders.push_back(program.parent_path().parent_path() / "share" / "snugwalk");
    folders.emplace_back(SNUGWALK_BUILD_DATA);
    return folders;
}

Result<std::string> worldData(std::string_view name)
{
    std::string looked;
    for (const fs::path &folder : worldDataFolders()) {
        const fs::path path = folder / name;
        looked += (looked.empty() ? "" : ", ") + path.string();
        std::error_code failed;
        if (!fs::is_regular_file(path, failed))
            continue;
        Result<std::string> bytes = readFile(path, mostBytes);
        if (!bytes)
            return Error{Errc::Io, "this data file cannot be read", path.string(), remedy};
        return bytes;
    }
    return Error{Errc::NotFound, "a data file of the world is missing", looked, remedy};
}

} // namespace snugwalk
