// SPDX-License-Identifier: Apache-2.0
// Lines and numbered spots on the outline of the land, as SVG.
#pragma once

#include <string>

#include "base/units.hpp"
#include "map/gazetteer.hpp"
#include "report/document.hpp"
#include "weather/coast.hpp"

namespace snugwalk::html {

inline constexpr double mapAspect = 4.0 / 3.0; ///< width over height

/// What lies under the block's own lines and spots. The pointers outlive the call.
struct MapData {
    const Coast *coast = nullptr;      ///< null: nothing says where the sea is
    const Gazetteer *places = nullptr; ///< null: no names
    UnitSystem units = UnitSystem::Si; ///< of the scale bar
};

/// Everything of the block with room around it, 60 km across at least, north up, with degrees along the
/// edges, the largest places' names and a scale bar. \param spoken for who does not see it
/// \returns "" for a block without a place.
[[nodiscard]] std::string mapSvg(const MapBlock &block, const MapData &data, const std::string &spoken);

} // namespace snugwalk::html
