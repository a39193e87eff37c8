// SPDX-License-Identifier: Apache-2.0
// Finds the data files that lie beside the program: the climate table, the coastline, the named places.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// The bytes of `climate.bin`, `coast.bin` or `places.bin`, which have licences of their own and so are no
/// part of the program. \returns `NotFound` or `Io`, saying where it looked and what works without.
[[nodiscard]] Result<std::string> worldData(std::string_view name);

/// Where `worldData` looks, in that order: the folder in SNUGWALK_DATA and no other where that is set; else
/// ../share/snugwalk from the program, then the copy of the build tree.
[[nodiscard]] std::vector<std::filesystem::path> worldDataFolders();

} // namespace snugwalk
