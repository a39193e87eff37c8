// SPDX-License-Identifier: Apache-2.0
// A copy of a photo that may leave the device: the picture, without what the camera wrote beside it.
#pragma once

#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

/// The same pixels, bit for bit, and of the rest only what showing them right needs: JFIF's density, a colour
/// profile, Adobe's colour transform, and one field for the orientation where it is not 1. Position, times,
/// camera, its numbers, previews, comments, texts and whatever follows the picture's end are left out.
///
/// \param orientation as Exif has it, 1 to 8
/// Source: ITU-T T.81 annex B (markers), T.871 (JFIF), T.872 (Adobe), ICC.1 annex B (profile);
///         W3C PNG, third edition, section 5
/// \returns the errors of `readPhotoParts`.
/// Tests:  tests/unit/photo/tst_photo_copy.cpp, tests/reference/photo/photo_copies.py (ExifTool, Pillow)
[[nodiscard]] Result<std::string> bareCopy(std::string_view bytes, int orientation);

} // namespace snugwalk
