// SPDX-License-Identifier: Apache-2.0
// A sheet of the map as the page draws and names it.
#pragma once

#include <QVariantMap>

#include "map_sheet.hpp"

namespace snugwalk {

/// {width, height, over, land: [[x, y, …]], sea, coast, grid: [{at, text, meridian}], lines: [{points,
/// dash}], groups: [{x, y, shape, count, spoken, kind, id}], labels: [{x, y, left, top, width, height,
/// text}], scale: {length, text}, near, spoken}; lengths in pixels, `near` is where the middle is.
[[nodiscard]] QVariantMap sheetWords(const Shown &shown, const MapSheet &sheet);

/// {kind: finding, trip or stay, shape, id, title, detail}.
[[nodiscard]] QVariantMap memberWords(const Shown &shown, const MapItem &item);

/// [{slug, name, on}].
[[nodiscard]] QVariantList wishWords(const MapWish &wish);
/// Null for a slug there is not.
[[nodiscard]] bool *wishOf(MapWish &wish, const QString &slug);

} // namespace snugwalk
