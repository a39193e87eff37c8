// SPDX-License-Identifier: Apache-2.0
// Where the demo's scenario, tracks and photos are read from.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

#include "base/result.hpp"

namespace snugwalk {

/// Bytes of a file of the demo by its name, such as "photos/rivet-2026-09.jpg"; `NotFound` or `Io`.
using DemoSource = std::function<Result<std::string>(const std::string &name)>;

/// Those compiled into the program.
[[nodiscard]] DemoSource builtInDemo();
/// Those of a folder; files of at most 64 MiB.
[[nodiscard]] DemoSource demoFolder(std::filesystem::path folder);

} // namespace snugwalk
