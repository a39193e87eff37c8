// SPDX-License-Identifier: Apache-2.0
// The shapes drawn on a photo, laid over it: the picture in the page stays as it was taken.
#pragma once

#include <string>

#include "base/units.hpp"
#include "logbook/image_codec.hpp"
#include "walk/drawing.hpp"
#include "walk/walk.hpp"

namespace snugwalk::html {

/// The upright size of a photo, in pixels.
[[nodiscard]] ImageSize sizeOf(const Photo &photo);

/// An SVG of the photo's own shape, transparent but for the lines: white under black, to be seen on any
/// ground. Nothing for a drawing without shapes or a photo without size.
[[nodiscard]] std::string drawnSvg(const Drawing &drawing, ImageSize size, UnitSystem units);

} // namespace snugwalk::html
