// SPDX-License-Identifier: Apache-2.0
// The rig's drawing as SVG: side elevation over plan, findings by shape with numbered balloons.
#pragma once

#include <string>

#include "report/document.hpp"

namespace snugwalk::html {

/// The app's own; a web page lays its choice of others over it.
inline constexpr const char *svgFonts = "Atkinson Hyperlegible Next";

struct DrawingWords {
    std::string whole; ///< for who does not see it
    std::string side;  ///< under the elevation
    std::string plan;  ///< under the plan
};

/// Ink on paper, in centimetres of the rig as user units; scales to the width it is given.
[[nodiscard]] std::string drawingSvg(const RigDrawingBlock &block, const DrawingWords &words);
/// Its width over its height.
[[nodiscard]] double drawingAspect(const Rig &rig);
/// The shape of a call around the origin, some 20 units wide, for a place in another drawing.
[[nodiscard]] std::string callShape(Call call);
/// The shape of a call alone, 20 x 20.
[[nodiscard]] std::string glyphSvg(Call call);

} // namespace snugwalk::html
