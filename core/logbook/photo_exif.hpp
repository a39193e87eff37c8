// SPDX-License-Identifier: Apache-2.0
// When and where a photo was taken, and how it is to be turned, as its Exif block tells.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/geo.hpp"
#include "base/time.hpp"

namespace snugwalk {

struct ExifFacts {
    int orientation = 1; ///< 1 to 8; 1 when absent or out of range
    /// DateTimeOriginal with its offset; without an offset the GPS time, if there is one.
    std::optional<LocalTime> taken;
    std::string takenText; ///< what the camera's clock showed, "2026-11-24 21:10:00"; empty if unknown
    std::optional<GeoPoint> place;
};

/// Reads a TIFF block, never refuses: what is missing, malformed or out of range is left out.
///
/// A place needs both hemispheres' letters; 0 N 0 E is what receivers write before their first fix and is
/// left out, and so is a place on the Tokyo datum, up to half a kilometre off. Altitudes above or below the
/// ellipsoid are left out: `GeoPoint` means sea level.
/// Source: CIPA DC-008 (Exif 2.3, 2.31 for offsets and positioning error), section 4.6.
/// Tests:  tests/published/exif
[[nodiscard]] ExifFacts readExif(std::string_view tiff);

} // namespace snugwalk
