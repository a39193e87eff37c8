// SPDX-License-Identifier: Apache-2.0
// Lines drawn on a photo, kept beside it: the picture's own bytes are never touched.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.hpp"
#include "base/quantity.hpp"
#include "base/time.hpp"
#include "base/value.hpp"

namespace snugwalk {

enum class ShapeKind { Circle, Arrow, Ruler };

/// One shape. Coordinates are shares 0 to 1 of the upright picture, origin top left.
/// Circle: centre and a point of the rim. Arrow: tail and tip. Ruler: its two ends.
struct DrawnShape {
    ShapeKind kind = ShapeKind::Circle;
    double x1 = 0.0;
    double y1 = 0.0;
    double x2 = 0.0;
    double y2 = 0.0;
    std::optional<Length> length; ///< of a ruler: how long it is on the rig
    std::string text;             ///< a word beside it, may be empty
    friend bool operator==(const DrawnShape &, const DrawnShape &) = default;
};

/// The drawing of one photo.
struct Drawing {
    Id id;
    Id photo;
    std::vector<DrawnShape> shapes;
    std::string by;
    LocalTime at;
    friend bool operator==(const Drawing &, const Drawing &) = default;
};

inline constexpr std::size_t maxShapes = 50;

[[nodiscard]] std::string_view slug(ShapeKind kind);
[[nodiscard]] std::optional<ShapeKind> parseShapeKind(std::string_view slug);

/// `OutOfRange` for a coordinate outside 0 to 1, a shape without size, a ruler longer than 30 m, a text
/// over 200 bytes or too many shapes; `InvalidInput` for a ruler without its length.
[[nodiscard]] Status checkShapes(const std::vector<DrawnShape> &shapes);

/// How far two spots of the photo are apart on the rig, by the drawing's longest ruler.
///
/// \param aspect width over height of the upright picture, above 0
/// \returns the length; `NotFound` when the drawing has no ruler, `OutOfRange` for a coordinate outside
///          0 to 1 or an impossible aspect.
///
/// Formula:  ruler length · |(aspect·dx, dy)| / |(aspect·dx, dy) of the ruler|
/// Limits:   holds only where ruler and spots lie in one plane that faces the camera; a plane turned
///           away by 20 degrees shortens by 6 % (1 - cos 20°)
/// Tests:    tests/unit/walk/tst_drawing.cpp
[[nodiscard]] Result<Length> measure(const Drawing &drawing, double x1, double y1, double x2, double y2,
                                     double aspect);

/// A shape as people type it: "0.4,0.5,0.6,0.5", with "=120 mm" after a ruler's ends and ":words" last.
/// \returns `InvalidInput` with an example, or the errors of `checkShapes`.
[[nodiscard]] Result<DrawnShape> parseShape(ShapeKind kind, std::string_view typed);

[[nodiscard]] Value toValue(const DrawnShape &shape);
[[nodiscard]] Value toValue(const Drawing &drawing);
/// Shapes of a kind that a newer version drew are left out.
[[nodiscard]] Drawing drawingFromValue(const Value &value);

} // namespace snugwalk
