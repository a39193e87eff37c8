// SPDX-License-Identifier: Apache-2.0
// This machine as a writer of logbooks: its key, its name, its folder.
#pragma once

#include <filesystem>
#include <string>

#include "base/result.hpp"
#include "keys/device_key.hpp"

namespace snugwalk {

/// Where a program keeps its own files: $XDG_DATA_HOME/snugwalk, else ~/.local/share/snugwalk.
[[nodiscard]] std::filesystem::path dataFolder();

/// The machine's name for people.
[[nodiscard]] std::string deviceLabel();

/// The key in `<folder>/device.key`, made on first use. Only its owner may read the file: it is not
/// locked by a passphrase yet, and whoever can read it can write entries in this device's name.
/// \returns `Io` when the folder cannot be written, `Corrupt` when the file is not a key.
[[nodiscard]] Result<DeviceKey> deviceKey(const std::filesystem::path &folder);

} // namespace snugwalk
