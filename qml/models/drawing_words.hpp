// SPDX-License-Identifier: Apache-2.0
// Lines on a photo as pages hold them: maps in shares of the picture, rulers with their length in words.
#pragma once

#include <optional>
#include <vector>

#include <QVariantList>

#include "voice.hpp"
#include "walk/drawing.hpp"

namespace snugwalk {

/// Stands beside a ruler whose length was not typed but told by ratio from another.
inline constexpr const char *byRatio = "\u2248";

/// [{kind, x1, y1, x2, y2, text, metres, told}]: text is a ruler's length, "about …" when told by ratio.
[[nodiscard]] QVariantList shapeMaps(const Voice &voice, const std::vector<DrawnShape> &shapes);

/// The other way round; shapes of no known kind are left out.
[[nodiscard]] std::vector<DrawnShape> readShapes(const QVariantList &maps);
/// circle, arrow or ruler; nothing for any other word.
[[nodiscard]] std::optional<ShapeKind> readShapeKind(const QString &slug);

} // namespace snugwalk
