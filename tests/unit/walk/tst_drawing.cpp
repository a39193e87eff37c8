// SPDX-License-Identifier: Apache-2.0
// Shapes on a photo: what is taken, what is refused, and what a ruler tells.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <random>

#include "base/units.hpp"
#include "keys/hash.hpp"
#include "support/book.hpp"
#include "walk/drawing.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

DrawnShape ruler(double x1, double y1, double x2, double y2, Length length)
{
    return {ShapeKind::Ruler, x1, y1, x2, y2, length, ""};
}

Drawing drawingOf(std::vector<DrawnShape> shapes)
{
    return {Id{}, derivedId("test", "photo", "1"), std::move(shapes), "W. Tester",
            timeAt("2026-11-24T21:10:00+13:00")};
}

} // namespace

TEST_CASE("a drawing goes through its value and back; shapes of a newer version are left out")
{
    const Drawing drawing = drawingOf({{ShapeKind::Circle, 0.25, 0.5, 0.5, 0.5, std::nullopt, "here"},
                                       {ShapeKind::Arrow, 0.0, 0.0, 1.0, 1.0, std::nullopt, ""},
                                       ruler(0.1, 0.9, 0.7, 0.9, millimetres(120))});
    Value stored = decodeCbor(encodeCbor(toValue(drawing))).value();
    CHECK(drawingFromValue(stored) == drawing);
    Value::List more = stored["shapes"].list();
    more.push_back(Value::Map{{"kind", "spiral"}, {"x1", 0.1}});
    more.push_back(Value::Map{{"kind", "circle"}, {"x1", 7.0}, {"y1", 0.0}, {"x2", 0.0}, {"y2", 0.0}});
    stored.member("shapes") = more;
    CHECK(drawingFromValue(stored) == drawing);
}

TEST_CASE("shapes as typed")
{
    const DrawnShape circle = parseShape(ShapeKind::Circle, "0.25,0.5, 0.5,0.5: lifted head").value();
    CHECK(circle == DrawnShape{ShapeKind::Circle, 0.25, 0.5, 0.5, 0.5, std::nullopt, "lifted head"});
    CHECK(parseShape(ShapeKind::Ruler, "0.1,0.9,0.7,0.9=120 mm")->length == millimetres(120));
    // the inch is 25.4 mm exactly [NIST-SP811] B.8
    CHECK(parseShape(ShapeKind::Ruler, "0,0,1,0=1/2 in")->length->si() == doctest::Approx(0.0127));
    for (const char *bad : {"", "0.1,0.2,0.3", "0.1,0.2,0.3,0.4,0.5", "a,b,c,d", "0.1;0.2;0.3;0.4",
                            "nan,0,1,1", "0.1,0.1,0.9,0.9=3 apples", "0.1,0.1,0.9,0.9=120 mm"}) {
        CAPTURE(std::string(bad));
        CHECK(parseShape(ShapeKind::Circle, bad).error().code == Errc::InvalidInput);
    }
    CHECK(parseShape(ShapeKind::Ruler, "0.1,0.1,0.9,0.9").error().code == Errc::InvalidInput);
    for (const char *bad : {"1.1,0,0,0", "0,0,0,-0.1", "0.5,0.5,0.5,0.5", "40,50,60,50"}) {
        CAPTURE(std::string(bad));
        CHECK(parseShape(ShapeKind::Arrow, bad).error().code == Errc::OutOfRange);
    }
    CHECK(parseShape(ShapeKind::Ruler, "0,0,1,1=0 mm").error().code == Errc::OutOfRange);
    CHECK(parseShape(ShapeKind::Ruler, "0,0,1,1=31 m").error().code == Errc::OutOfRange);
}

TEST_CASE("too many shapes, too many words, and bytes that are no text are refused")
{
    const DrawnShape circle{ShapeKind::Circle, 0.25, 0.5, 0.5, 0.5, std::nullopt, ""};
    CHECK(checkShapes(std::vector<DrawnShape>(maxShapes, circle)));
    CHECK(checkShapes(std::vector<DrawnShape>(maxShapes + 1, circle)).error().code == Errc::OutOfRange);
    DrawnShape wordy = circle;
    wordy.text = std::string(201, 'a');
    CHECK_FALSE(checkShapes({wordy}));
    wordy.text = "\xff";
    CHECK_FALSE(checkShapes({wordy}));
    DrawnShape odd = circle;
    odd.x2 = std::numeric_limits<double>::quiet_NaN();
    CHECK_FALSE(checkShapes({odd}));
}

// The checks below are plane geometry, worked by hand: no source needed.
TEST_CASE("a ruler measures in its plane, whatever the picture's shape")
{
    // 4:3 picture: 0.3 of the width is as long as 0.4 of the height
    const Drawing flat = drawingOf({ruler(0.1, 0.9, 0.7, 0.9, millimetres(120))});
    CHECK(measure(flat, 0.1, 0.1, 0.4, 0.1, 4.0 / 3).value().si() == doctest::Approx(0.060));
    CHECK(measure(flat, 0.2, 0.1, 0.2, 0.5, 4.0 / 3).value().si() == doctest::Approx(0.060));
    // a 3-4-5 triangle in a square picture
    const Drawing square = drawingOf({ruler(0.0, 0.0, 0.3, 0.4, millimetres(50))});
    CHECK(measure(square, 0.5, 0.5, 0.8, 0.5, 1.0).value().si() == doctest::Approx(0.030));
    CHECK(measure(square, 0.5, 0.5, 0.5, 0.5, 1.0).value().si() == 0.0);
}

TEST_CASE("the longest ruler counts; none is told; odd pictures are refused")
{
    const Drawing two =
        drawingOf({ruler(0.0, 0.0, 0.1, 0.0, millimetres(99)), ruler(0.0, 0.1, 0.5, 0.1, millimetres(100))});
    CHECK(measure(two, 0.0, 0.5, 0.25, 0.5, 1.0).value().si() == doctest::Approx(0.050));
    CHECK(measure(drawingOf({}), 0.0, 0.0, 1.0, 0.0, 1.0).error().code == Errc::NotFound);
    for (const double aspect :
         {0.0, -1.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()})
        CHECK(measure(two, 0.0, 0.0, 1.0, 0.0, aspect).error().code == Errc::OutOfRange);
    CHECK(measure(two, 0.0, 0.0, 1.5, 0.0, 1.0).error().code == Errc::OutOfRange);
}

TEST_CASE("a ruler reads itself, both ways, over random pictures")
{
    std::mt19937 rng(20260301); // fixed: a failure must be repeatable
    std::uniform_real_distribution<double> share(0.0, 1.0);
    std::uniform_real_distribution<double> shape(0.3, 3.0);
    for (int i = 0; i < 10'000; ++i) {
        const double x1 = share(rng), y1 = share(rng), x2 = share(rng), y2 = share(rng);
        const double aspect = shape(rng);
        if (std::hypot(x2 - x1, y2 - y1) < 0.01)
            continue;
        const Drawing drawing = drawingOf({ruler(x1, y1, x2, y2, millimetres(250))});
        REQUIRE(measure(drawing, x1, y1, x2, y2, aspect).value().si() == doctest::Approx(0.25));
        REQUIRE(measure(drawing, x2, y2, x1, y1, aspect).value().si() == doctest::Approx(0.25));
    }
}
