// SPDX-License-Identifier: Apache-2.0
// Names on a map, each beside its place and none over another or over a spot.
#pragma once

#include <string>
#include <vector>

#include "map/frame.hpp"
#include "map/gazetteer.hpp"

namespace snugwalk {

/// On paper, from its upper left corner.
struct PaperBox {
    double left = 0.0;
    double top = 0.0;
    double width = 0.0;
    double height = 0.0;
};
[[nodiscard]] bool overlap(const PaperBox &a, const PaperBox &b);

struct PlaceLabel {
    std::string name;
    double x = 0.0; ///< of the place, on paper
    double y = 0.0;
    PaperBox box; ///< of the name
};

/// Lengths in the unit of the paper.
struct LabelStyle {
    double height = 16.0;    ///< of a line of text
    double letter = 8.0;     ///< width of a letter, generous: no text is measured here
    double gap = 5.0;        ///< between a place's dot and its name
    std::size_t atMost = 14; ///< names
};

/// The largest places first, a name right of its dot, else left, above or below; what has no room is left
/// out. All boxes are on the paper, `paperWidth` wide and shaped as `frame`.
/// \param taken where nothing may lie
[[nodiscard]] std::vector<PlaceLabel> placeLabels(const Gazetteer &places, const MapFrame &frame,
                                                  double paperWidth, const LabelStyle &style,
                                                  std::vector<PaperBox> taken);

} // namespace snugwalk
