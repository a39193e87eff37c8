// SPDX-License-Identifier: Apache-2.0
// Parts of a drawing as SVG: the outline's paths, and the shape at a spot.
#pragma once

#include <string>

#include "report/document.hpp"
#include "rig/outline/outline.hpp"

namespace snugwalk::html {

/// Every path of `outline` with its pen, in its order; letters of tanks above them. Spots are times `scale`
/// from `offset` on. Within what SVG Tiny 1.2 knows, for paper takes the same text.
[[nodiscard]] std::string outlineSvg(const outline::Outline &outline, double scale,
                                     outline::PaperSpot offset);

/// The shape of a finding's call, or of a place where things were found, with how often.
/// \param scale of the view: a small view has smaller ones
[[nodiscard]] std::string spotSvg(const RigSpot &spot, outline::PaperSpot at, double scale);

} // namespace snugwalk::html
