// SPDX-License-Identifier: Apache-2.0
// The makers of cameras.
#pragma once

#include <memory>
#include <string>

#include "base/result.hpp"
#include "camera_source.hpp"

namespace snugwalk {

/// The machine's own; whether there is one is asked when someone wants to know.
[[nodiscard]] std::unique_ptr<CameraSource> systemCamera();

/// Serves the pictures of a folder by name, one a photo, round and round: for tests and screenshots.
/// \returns `NotFound` for a folder without pictures.
[[nodiscard]] Result<std::unique_ptr<CameraSource>> recordedCamera(const std::string &folder);

} // namespace snugwalk
