// SPDX-License-Identifier: Apache-2.0
// Listing, copying and renaming; what fails leaves the photo where it was.
#include "taken_photos.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr const char *awayEnding = ".away";

bool isInside(const fs::path &folder, const fs::path &file)
{
    return !folder.empty() && file.parent_path() == folder;
}

std::vector<fs::path> filesOf(const fs::path &folder)
{
    std::vector<fs::path> files;
    std::error_code fault;
    for (fs::directory_iterator at(folder, fault), end; !fault && at != end; at.increment(fault)) {
        if (at->is_regular_file(fault))
            files.push_back(at->path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace

TakenPhotos listTaken(const fs::path &folder)
{
    TakenPhotos taken;
    for (const fs::path &file : filesOf(folder)) {
        if (file.extension() == awayEnding)
            ++taken.away;
        else
            taken.waiting.push_back(file.string());
    }
    return taken;
}

Status keepTaken(const fs::path &folder, const std::string &file, const std::string &stem)
{
    std::error_code fault;
    fs::create_directories(folder, fault);
    const fs::path source(file);
    if (!fault)
        fs::copy_file(source, folder / (stem + source.extension().string()), fault);
    if (fault)
        return Error{Errc::Io, "the photo cannot be copied", file, "make room, or choose another"};
    return done();
}

void putTakenAway(const fs::path &folder, const std::string &file)
{
    std::error_code fault;
    if (isInside(folder, file))
        fs::rename(file, file + awayEnding, fault);
}

void bringTakenBack(const fs::path &folder)
{
    std::error_code fault;
    for (const fs::path &file : filesOf(folder)) {
        if (file.extension() == awayEnding)
            fs::rename(file, fs::path(file).replace_extension(), fault);
    }
}

void dropTaken(const fs::path &folder, const std::string &file)
{
    std::error_code fault;
    if (isInside(folder, file))
        fs::remove(file, fault);
}

} // namespace snugwalk
