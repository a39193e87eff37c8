// SPDX-License-Identifier: Apache-2.0
// Circle, arrow and ruler as lines.
#include "html/photo_svg.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "html/html_text.hpp"

namespace snugwalk::html {
namespace {

constexpr double unitsHigh = 1000.0; ///< user units of the longer side

std::string n(double v) { return fixed(v, 1); }

std::string line(double x1, double y1, double x2, double y2)
{
    return "<line x1='" + n(x1) + "' y1='" + n(y1) + "' x2='" + n(x2) + "' y2='" + n(y2) + "'/>";
}

// A short line at (x, y), turned by `angle` against the direction of the shape.
std::string stroke(double x, double y, double direction, double angle, double length)
{
    const double turned = direction + angle;
    return line(x, y, x + std::cos(turned) * length, y + std::sin(turned) * length);
}

struct Scaled {
    double x1, y1, x2, y2;
};

std::string lines(const DrawnShape &shape, const Scaled &s)
{
    const double direction = std::atan2(s.y2 - s.y1, s.x2 - s.x1);
    const double quarter = std::acos(0.0);
    switch (shape.kind) {
    case ShapeKind::Circle:
        return "<circle cx='" + n(s.x1) + "' cy='" + n(s.y1) + "' r='" +
               n(std::hypot(s.x2 - s.x1, s.y2 - s.y1)) + "'/>";
    case ShapeKind::Arrow:
        return line(s.x1, s.y1, s.x2, s.y2) + stroke(s.x2, s.y2, direction, 2.6, 45.0) +
               stroke(s.x2, s.y2, direction, -2.6, 45.0);
    case ShapeKind::Ruler:
        return line(s.x1, s.y1, s.x2, s.y2) + stroke(s.x1, s.y1, direction, quarter, 22.0) +
               stroke(s.x1, s.y1, direction, -quarter, 22.0) + stroke(s.x2, s.y2, direction, quarter, 22.0) +
               stroke(s.x2, s.y2, direction, -quarter, 22.0);
    }
    return {};
}

std::string words(const DrawnShape &shape, UnitSystem units)
{
    const std::string length = shape.length ? format(*shape.length, units) : "";
    return length + (length.empty() || shape.text.empty() ? "" : ", ") + shape.text;
}

std::string label(const DrawnShape &shape, const Scaled &s, double wide, UnitSystem units)
{
    const std::string text = words(shape, units);
    if (text.empty())
        return {};
    const bool right = s.x1 > wide * 0.6; // words stay within the picture
    return "<text x='" + n(s.x1 + (right ? -14.0 : 14.0)) + "' y='" + n(std::max(44.0, s.y1 - 18.0)) +
           "' text-anchor='" + (right ? "end" : "start") + "'>" + escape(text) + "</text>";
}

} // namespace

ImageSize sizeOf(const Photo &photo) { return upright({photo.width, photo.height}, photo.orientation); }

std::string drawnSvg(const Drawing &drawing, ImageSize size, UnitSystem units)
{
    if (drawing.shapes.empty() || size.width < 1 || size.height < 1)
        return {};
    const double scale = unitsHigh / std::max(size.width, size.height);
    const double wide = size.width * scale;
    const double high = size.height * scale;
    std::string shapes;
    std::string labels;
    for (const DrawnShape &shape : drawing.shapes) {
        const Scaled s{shape.x1 * wide, shape.y1 * high, shape.x2 * wide, shape.y2 * high};
        shapes += lines(shape, s);
        labels += label(shape, s, wide, units);
    }
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + n(wide) + " " + n(high) +
           "' fill='none' stroke-linecap='round' stroke-linejoin='round'>" +
           "<g stroke='#fff' stroke-width='14'>" + shapes + "</g><g stroke='#1B1F23' stroke-width='6'>" +
           shapes + "</g><g font-size='40' font-weight='bold' stroke='#fff' stroke-width='10'>" + labels +
           "</g><g font-size='40' font-weight='bold' fill='#1B1F23'>" + labels + "</g></svg>";
}

} // namespace snugwalk::html
