// SPDX-License-Identifier: Apache-2.0
// Checking, measuring and reading shapes.
#include "walk/drawing.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr auto kindSlugs = std::to_array<std::string_view>({"circle", "arrow", "ruler"});
constexpr Length longestRuler = metres(30.0);
constexpr double leastSize = 1e-4; ///< a share of the picture; less is a slip of the finger

bool isShare(double v) { return v >= 0.0 && v <= 1.0; } // NaN is none

double span(double dx, double dy, double aspect) { return std::hypot(aspect * dx, dy); }

Status checkShape(const DrawnShape &s)
{
    const std::string where(slug(s.kind));
    if (!isShare(s.x1) || !isShare(s.y1) || !isShare(s.x2) || !isShare(s.y2))
        return Error{Errc::OutOfRange, "a spot outside the picture", where,
                     "give shares of its width and height from 0 to 1, such as 0.4,0.5,0.6,0.5"};
    if (!(span(s.x2 - s.x1, s.y2 - s.y1, 1.0) >= leastSize))
        return Error{Errc::OutOfRange, "a shape without size", where, "give two different spots"};
    if (s.kind == ShapeKind::Ruler && !s.length)
        return Error{Errc::InvalidInput, "a ruler without its length", where,
                     "add how long it is on the rig, such as =120 mm"};
    if (s.length && !(s.length->si() > 0.0 && *s.length <= longestRuler))
        return Error{Errc::OutOfRange, "no ruler is that long", where, "give more than 0 and at most 30 m"};
    if (s.text.size() > 200 || !isUtf8(s.text))
        return Error{Errc::OutOfRange, "words over 200 bytes or not UTF-8", where, "shorten them"};
    return done();
}

Error notAShape(ShapeKind kind, std::string_view typed)
{
    const std::string example = kind == ShapeKind::Ruler ? "0.1,0.9,0.7,0.9=120 mm" : "0.4,0.5,0.6,0.5";
    return {Errc::InvalidInput,
            "not a drawn " + std::string(slug(kind)) + ": \"" + std::string(typed.substr(0, 60)) + "\"",
            std::string(slug(kind)), "write its two spots as " + example};
}

} // namespace

std::string_view slug(ShapeKind kind) { return kindSlugs.at(static_cast<std::size_t>(kind)); }

std::optional<ShapeKind> parseShapeKind(std::string_view text)
{
    for (std::size_t i = 0; i < kindSlugs.size(); ++i) {
        if (kindSlugs[i] == text)
            return static_cast<ShapeKind>(i);
    }
    return std::nullopt;
}

Status checkShapes(const std::vector<DrawnShape> &shapes)
{
    if (shapes.size() > maxShapes)
        return Error{Errc::OutOfRange, "more than 50 shapes on one photo", "drawing", "draw fewer"};
    for (const DrawnShape &shape : shapes)
        SNUG_TRY(checkShape(shape));
    return done();
}

Result<Length> measure(const Drawing &drawing, double x1, double y1, double x2, double y2, double aspect)
{
    if (!(aspect > 0.0) || !std::isfinite(aspect))
        return Error{Errc::OutOfRange, "a picture without a shape", "aspect", "give width over height"};
    if (!isShare(x1) || !isShare(y1) || !isShare(x2) || !isShare(y2))
        return Error{Errc::OutOfRange, "a spot outside the picture", "measure",
                     "give shares of its width and height from 0 to 1"};
    const DrawnShape *ruler = nullptr;
    double longest = 0.0;
    for (const DrawnShape &shape : drawing.shapes) {
        const double size = span(shape.x2 - shape.x1, shape.y2 - shape.y1, aspect);
        if (shape.kind == ShapeKind::Ruler && shape.length && size > longest) {
            ruler = &shape;
            longest = size;
        }
    }
    if (ruler == nullptr)
        return Error{Errc::NotFound, "this photo has no ruler on it", drawing.photo.shortText(),
                     "draw one over something of known length first"};
    return *ruler->length * (span(x2 - x1, y2 - y1, aspect) / longest);
}

Result<DrawnShape> parseShape(ShapeKind kind, std::string_view typed)
{
    DrawnShape shape;
    shape.kind = kind;
    std::string_view spots = typed;
    if (const auto colon = spots.find(':'); colon != std::string_view::npos) {
        shape.text = std::string(trim(spots.substr(colon + 1)));
        spots = spots.substr(0, colon);
    }
    if (const auto equals = spots.find('='); equals != std::string_view::npos) {
        const auto length = parseQuantity<Length>(spots.substr(equals + 1));
        if (kind != ShapeKind::Ruler || !length)
            return notAShape(kind, typed);
        shape.length = *length;
        spots = spots.substr(0, equals);
    }
    const auto parts = split(spots, ',');
    std::array<double *, 4> to = {&shape.x1, &shape.y1, &shape.x2, &shape.y2};
    if (parts.size() != to.size())
        return notAShape(kind, typed);
    for (std::size_t i = 0; i < to.size(); ++i) {
        const auto share = parseDouble(trim(parts[i]));
        if (!share)
            return notAShape(kind, typed);
        *to[i] = *share;
    }
    SNUG_TRY(checkShape(shape));
    return shape;
}

Value toValue(const DrawnShape &shape)
{
    Value::Map out{{"kind", slug(shape.kind)}, {"x1", shape.x1}, {"y1", shape.y1},
                   {"x2", shape.x2},           {"y2", shape.y2}, {"text", shape.text}};
    if (shape.length)
        out["length"] = Value::Map{{"value", shape.length->si()}, {"unit", "m"}};
    return out;
}

Value toValue(const Drawing &drawing)
{
    Value::List shapes;
    for (const DrawnShape &shape : drawing.shapes)
        shapes.push_back(toValue(shape));
    return Value::Map{{"photo", drawing.photo.isNull() ? Value() : Value(drawing.photo.text())},
                      {"shapes", shapes},
                      {"by", drawing.by},
                      {"at", formatLocal(drawing.at)}};
}

Drawing drawingFromValue(const Value &v)
{
    const auto text = [](const Value &t) { return t.asString().value_or(""); };
    Drawing drawing;
    drawing.photo = Id::parse(text(v["photo"])).value_or(Id{});
    drawing.by = text(v["by"]);
    drawing.at = parseLocal(text(v["at"])).value_or(LocalTime{});
    for (const Value &item : v["shapes"].list()) {
        const auto kind = parseShapeKind(text(item["kind"]));
        if (!kind)
            continue;
        DrawnShape shape{*kind,
                         item["x1"].asDouble().value_or(0.0),
                         item["y1"].asDouble().value_or(0.0),
                         item["x2"].asDouble().value_or(0.0),
                         item["y2"].asDouble().value_or(0.0),
                         std::nullopt,
                         text(item["text"])};
        if (const auto length = item["length"]["value"].asDouble())
            shape.length = Length::fromSi(*length);
        if (checkShape(shape))
            drawing.shapes.push_back(std::move(shape));
    }
    return drawing;
}

} // namespace snugwalk
