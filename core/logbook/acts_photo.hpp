// SPDX-License-Identifier: Apache-2.0
// What people do with a photo that is kept: draw on it, name it, put it in its place among the others.
#pragma once

#include "logbook/acts.hpp"
#include "walk/drawing.hpp"

namespace snugwalk {

/// Keeps the drawing of a photo beside it; the picture's bytes are not touched. A drawing replaces the one
/// before; without shapes it is taken away. Done while the rig has an open walk, it belongs to that walk,
/// so that undo takes it back. \returns the drawing's id, the errors of `checkShapes`, `NotFound` for an
/// unknown photo.
[[nodiscard]] Result<Id> saveDrawing(Logbook &book, const Id &photo, const std::vector<DrawnShape> &shapes,
                                     const Doer &doer);

/// `OutOfRange` for a caption over 500 bytes or not UTF-8, `NotFound` for an unknown photo.
[[nodiscard]] Status captionPhoto(Logbook &book, const Id &photo, const std::string &caption,
                                  const Doer &doer);

/// Puts a photo at `place` (from 1) among those of its finding, the others in their order after it or
/// before it. `InvalidInput` for a photo of no finding, `OutOfRange` for a place that is not there.
[[nodiscard]] Status movePhoto(Logbook &book, const Id &photo, int place, const Doer &doer);

} // namespace snugwalk
