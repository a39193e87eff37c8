// SPDX-License-Identifier: Apache-2.0
// A document's blocks as HTML.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "html/drawing_svg.hpp"
#include "html/page_photo.hpp"
#include "map/gazetteer.hpp"
#include "report/document.hpp"
#include "weather/coast.hpp"

namespace snugwalk::html {

/// What a document does not hold itself. The references outlive the call.
struct PageParts {
    const Texts &texts; ///< in the document's language
    UnitSystem units = UnitSystem::Si;
    PagePhotos photos;
    const Coast *coast = nullptr;      ///< of the maps; may be null
    const Gazetteer *places = nullptr; ///< names on the maps; may be null
};

[[nodiscard]] std::string blockHtml(const Block &block, const PageParts &parts);

/// Whose work the maps of `parts` show: " Coast: …. Place names: ….", or "" without any.
[[nodiscard]] std::string mapSources(const PageParts &parts);

/// "1: Lap sealant, roof. 2: …" of the findings that the drawing has numbers for: what it shows, in words.
[[nodiscard]] std::string drawingSpoken(const RigDrawingBlock &block, const Texts &texts);
/// Those, and the name of each face.
[[nodiscard]] DrawingWords drawingWords(const RigDrawingBlock &block, const Texts &texts);
/// What the letters of the underside stand for; "" where it is not shown.
[[nodiscard]] std::string drawingLegend(const RigDrawingBlock &block, const Texts &texts);

} // namespace snugwalk::html
