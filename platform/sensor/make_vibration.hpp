// SPDX-License-Identifier: Apache-2.0
// The makers of vibration sources.
#pragma once

#include <memory>
#include <string>

#include "base/result.hpp"
#include "vibration_source.hpp"

namespace snugwalk {

/// The machine's own accelerometer, or null where it has none: then logs are imported.
[[nodiscard]] std::unique_ptr<VibrationSource> systemVibration();

/// Gives an accelerometer log of CSV sample by sample within `start`, then ends: for tests and screenshots.
/// \returns errors of `AccelReader` with the file's name, `OutOfRange` over 64 MiB.
[[nodiscard]] Result<std::unique_ptr<VibrationSource>> recordedVibration(const std::string &file);

} // namespace snugwalk
