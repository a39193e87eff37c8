// SPDX-License-Identifier: Apache-2.0
// The rig's drawing as SVG: the outline of `rig/outline`, findings by shape with numbered balloons.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "report/document.hpp"

namespace snugwalk::html {

/// The app's own; a web page lays its choice of others over it.
inline constexpr const char *svgFonts = "Atkinson Hyperlegible Next";

struct DrawingWords {
    std::string whole;                     ///< for who does not see it
    std::function<std::string(Face)> face; ///< under each view
};

/// One SVG, ink on paper; scales to the width it is given.
struct DrawingSheet {
    std::string svg;
    double aspect = 1.0; ///< width over height
};

/// Kerb side over plan; where a finding lies on another face a second sheet with small views of those. The
/// far side has the same lines as in the app: one source, `outline::outlineOf`.
/// Tests:   tests/unit/html/tst_drawing_svg.cpp
[[nodiscard]] std::vector<DrawingSheet> drawingSheets(const RigDrawingBlock &block,
                                                      const DrawingWords &words);

/// The faces of `drawingSheets` beyond kerb side and plan, in drawing order.
[[nodiscard]] std::vector<Face> otherFaces(const RigDrawingBlock &block);

/// The shape of a call around the origin, some 20 units wide, for a place in another drawing.
[[nodiscard]] std::string callShape(Call call);
/// The shape of a call alone, 20 x 20.
[[nodiscard]] std::string glyphSvg(Call call);

} // namespace snugwalk::html
