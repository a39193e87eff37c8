// SPDX-License-Identifier: Apache-2.0
// Lines and numbered spots on the outline of the land, as SVG.
#pragma once

#include <string>

#include "report/document.hpp"
#include "weather/coast.hpp"

namespace snugwalk::html {

inline constexpr double mapAspect = 4.0 / 3.0; ///< width over height

/// Everything of the block with room around it, 60 km across at least, north up, with degrees along the
/// edges. \param coast may be null: nothing then says where the sea is \param spoken for who does not see it
/// \returns "" for a block without a place.
[[nodiscard]] std::string mapSvg(const MapBlock &block, const Coast *coast, const std::string &spoken);

} // namespace snugwalk::html
