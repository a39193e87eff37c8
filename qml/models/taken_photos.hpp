// SPDX-License-Identifier: Apache-2.0
// The folder where photos wait for their marks. Everything here touches the disk: for the worker.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

struct TakenPhotos {
    std::vector<std::string> waiting; ///< paths, by name: names begin with the time
    int away = 0;                     ///< put away, still there
};

/// An absent folder holds nothing.
[[nodiscard]] TakenPhotos listTaken(const std::filesystem::path &folder);
/// Copies a photo in under a name that begins with `stem`. \returns `Io` when it cannot be copied.
[[nodiscard]] Status keepTaken(const std::filesystem::path &folder, const std::string &file,
                               const std::string &stem);
/// Renames a waiting photo so that it is no longer offered; one outside the folder is left alone.
void putTakenAway(const std::filesystem::path &folder, const std::string &file);
void bringTakenBack(const std::filesystem::path &folder);
/// Removes a photo that the logbook now has; one outside the folder is left alone.
void dropTaken(const std::filesystem::path &folder, const std::string &file);

} // namespace snugwalk
