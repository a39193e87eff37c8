// SPDX-License-Identifier: Apache-2.0
// Small files beside the device's key that nobody else on the machine has to read.
#pragma once

#include <filesystem>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

/// Makes the folder if needed (mode 0700) and the file (mode 0600), whole or not at all.
[[nodiscard]] Status replacePrivateFile(const std::filesystem::path &file, std::string_view bytes);

/// The same folder without a file in it yet.
[[nodiscard]] Status makePrivateFolder(const std::filesystem::path &folder);

} // namespace snugwalk
