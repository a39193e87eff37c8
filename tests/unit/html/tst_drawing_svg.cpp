// SPDX-License-Identifier: Apache-2.0
// The drawing on paper has the lines of the core, its balloons keep apart, and other faces come when needed.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <regex>

#include "base/text.hpp"
#include "html/drawing_svg.hpp"
#include "rig/names.hpp"
#include "rig/outline/outline.hpp"
#include "rig/usual_measures.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using snugwalk::outline::PaperSpot;

namespace {

html::DrawingWords words()
{
    return {"whole", [](Face face) { return "face " + std::string(slug(face)); }};
}

RigSpot spot(int number, Face face, double aft, double right, double up)
{
    return {number, Call::MendSoon, RigPlace{"", face, RigPosition{metres(aft), metres(right), metres(up)}}};
}

std::vector<std::string> pathsOf(const std::string &svg)
{
    static const std::regex path("<path d='([^']*)' stroke-width");
    std::vector<std::string> found;
    for (std::sregex_iterator it(svg.begin(), svg.end(), path), end; it != end; ++it)
        found.push_back((*it)[1]);
    return found;
}

// All numbers of a path, in order.
std::vector<double> numbers(const std::string &text)
{
    static const std::regex number("-?[0-9]+\\.?[0-9]*");
    std::vector<double> found;
    for (std::sregex_iterator it(text.begin(), text.end(), number), end; it != end; ++it)
        found.push_back(std::stod(it->str()));
    return found;
}

std::string letters(const std::string &text)
{
    std::string found;
    std::copy_if(text.begin(), text.end(), std::back_inserter(found),
                 [](char c) { return c >= 'A' && c <= 'Z'; });
    return found;
}

struct Shapes {
    std::vector<PaperSpot> balloons;
    std::vector<std::array<PaperSpot, 2>> leaders;
};

Shapes shapesOf(const std::string &svg)
{
    static const std::regex circle("<circle cx='([^']*)' cy='([^']*)' r='23");
    static const std::regex leader("<line x1='([^']*)' y1='([^']*)' x2='([^']*)' y2='([^']*)'/>");
    Shapes shapes;
    for (std::sregex_iterator it(svg.begin(), svg.end(), circle), end; it != end; ++it)
        shapes.balloons.push_back({std::stod((*it)[1]), std::stod((*it)[2])});
    for (std::sregex_iterator it(svg.begin(), svg.end(), leader), end; it != end; ++it)
        shapes.leaders.push_back({PaperSpot{std::stod((*it)[1]), std::stod((*it)[2])},
                                  PaperSpot{std::stod((*it)[3]), std::stod((*it)[4])}});
    return shapes;
}

long turns(PaperSpot a, PaperSpot b, PaperSpot c)
{
    return std::lround(std::copysign(1.0, (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)));
}

bool cross(const std::array<PaperSpot, 2> &a, const std::array<PaperSpot, 2> &b)
{
    return turns(a[0], a[1], b[0]) != turns(a[0], a[1], b[1]) &&
           turns(b[0], b[1], a[0]) != turns(b[0], b[1], a[1]);
}

// Every path of `outline`, as the sheet has it from path `first` on: one scale and one place for all.
void checkLines(const std::vector<std::string> &paths, std::size_t first, const outline::Outline &outline)
{
    REQUIRE(paths.size() >= first + outline.strokes.size());
    // scale and place by the widest path there is
    double scale = 0;
    PaperSpot offset;
    double widest = 0;
    for (std::size_t i = 0; i < outline.strokes.size(); ++i) {
        const std::vector<double> there = numbers(paths[first + i]);
        const PaperSpot a = outline.strokes[i].steps.front().to;
        const PaperSpot b = outline.strokes[i].steps[1].to;
        if (outline.strokes[i].steps[1].kind != outline::Step::Kind::Line || std::fabs(b.x - a.x) <= widest)
            continue;
        widest = std::fabs(b.x - a.x);
        scale = (there[2] - there[0]) / (b.x - a.x);
        offset = {there[0] - a.x * scale, there[1] - a.y * scale};
    }
    REQUIRE(scale > 10);
    for (std::size_t i = 0; i < outline.strokes.size(); ++i) {
        const std::string wanted = outline::pathData(outline.strokes[i], scale, offset);
        const std::vector<double> here = numbers(wanted);
        const std::vector<double> there = numbers(paths[first + i]);
        CAPTURE(i);
        CHECK(letters(paths[first + i]) == letters(wanted));
        REQUIRE(here.size() == there.size());
        for (std::size_t k = 0; k < here.size(); ++k)
            CHECK(std::fabs(here[k] - there[k]) <= 0.21); // one decimal, and the place found from such
    }
}

} // namespace

TEST_CASE("kerb side and plan have the paths of the core, for every kind")
{
    for (const RigKind kind : {RigKind::TravelTrailer, RigKind::FifthWheel, RigKind::FoldingTrailer,
                               RigKind::Teardrop, RigKind::TruckCamper, RigKind::Motorhome, RigKind::Van}) {
        for (const Practice practice : {Practice::NorthAmerica, Practice::AustraliaNewZealand}) {
            INFO(slug(kind), " ", slug(practice));
            const Rig rig = usualRig(kind, practice);
            const auto sheets = html::drawingSheets({rig, {}, ""}, words());
            REQUIRE(sheets.size() == 1);
            const std::vector<std::string> paths = pathsOf(sheets[0].svg);
            const bool left = kerbIsLeft(rig);
            const outline::Outline side = outline::outlineOf(rig, {left ? Face::Left : Face::Right, true});
            const outline::Outline plan = outline::outlineOf(rig, {Face::Top, left});
            CHECK(paths.size() == side.strokes.size() + plan.strokes.size());
            checkLines(paths, 0, side);
            checkLines(paths, side.strokes.size(), plan);
        }
    }
}

TEST_CASE("other faces are drawn where a finding lies on them, with their own lines")
{
    const Rig rig = tandem();
    const RigDrawingBlock block{rig,
                                {spot(1, Face::Rear, 6.4, 0.3, 1), spot(2, Face::Underside, 4, 0.3, 0.6),
                                 spot(3, Face::Top, 2, 0, 2.8)},
                                ""};
    CHECK(html::otherFaces(block) == std::vector<Face>{Face::Rear, Face::Underside});
    const auto sheets = html::drawingSheets(block, words());
    REQUIRE(sheets.size() == 2);
    const std::vector<std::string> paths = pathsOf(sheets[1].svg);
    const outline::Outline rear = outline::outlineOf(rig, {Face::Rear, kerbIsLeft(rig)});
    const outline::Outline below = outline::outlineOf(rig, {Face::Underside, kerbIsLeft(rig)});
    CHECK(paths.size() >= rear.strokes.size() + below.strokes.size());
    checkLines(paths, 0, rear);
    for (const char *caption : {">face rear<", ">face underside<"})
        CHECK(sheets[1].svg.find(caption) != std::string::npos);
    CHECK(sheets[1].svg.find("face front") == std::string::npos);
    CHECK(sheets[0].svg.find(">face top<") != std::string::npos);
    CHECK(sheets[1].svg.find(">A</text>") != std::string::npos); // its tanks
}

TEST_CASE("balloons keep apart within the sheet, one a finding, and leaders do not cross")
{
    const Rig rig = tandem();
    RigDrawingBlock block{rig, {}, ""};
    for (int i = 0; i < 26; ++i) // more than one row
        block.spots.push_back(spot(i + 1, i % 2 == 0 ? Face::Right : Face::Top, 0.3 + (i * 7 % 26) * 0.22,
                                   i % 3 - 1.0, 0.7 + i % 5 * 0.4));
    for (int i = 0; i < 7; ++i)
        block.spots.push_back(spot(30 + i, Face::Rear, 6.4, 0.2 * i - 0.6, 1 + 0.1 * i));
    std::size_t balloons = 0;
    for (const html::DrawingSheet &sheet : html::drawingSheets(block, words())) {
        const Shapes shapes = shapesOf(sheet.svg);
        balloons += shapes.balloons.size();
        CHECK(shapes.leaders.size() == shapes.balloons.size());
        const double high = 850.0 / sheet.aspect;
        for (std::size_t i = 0; i < shapes.balloons.size(); ++i) {
            const PaperSpot &a = shapes.balloons[i];
            CHECK(a.x >= 23);
            CHECK(a.x <= 850 - 23);
            CHECK(a.y >= 23);
            CHECK(a.y <= high - 23);
            for (std::size_t k = 0; k < i; ++k) {
                CHECK(std::hypot(a.x - shapes.balloons[k].x, a.y - shapes.balloons[k].y) >= 46);
                CHECK(!cross(shapes.leaders[i], shapes.leaders[k]));
            }
        }
    }
    CHECK(balloons == block.spots.size());
}

TEST_CASE("a place where things were found carries how often, dashed where nothing is open")
{
    RigSpot open = spot(1, Face::Top, 2, 0, 2.8);
    open.shape = SpotShape::EverOpen;
    open.times = 4;
    RigSpot mended = spot(2, Face::Top, 4, 0, 2.8);
    mended.shape = SpotShape::EverMended;
    mended.times = 1;
    const auto draw = [&](const RigSpot &one) {
        return html::drawingSheets({tandem(), {one}, ""}, words()).front().svg;
    };
    CHECK(draw(open).find(">4</text>") != std::string::npos);
    CHECK(draw(open).find("stroke-dasharray='4 3'") == std::string::npos);
    CHECK(draw(mended).find("stroke-dasharray='4 3'") != std::string::npos);
    CHECK(draw(mended).find("CC79A7") == std::string::npos); // no colour: nothing there needs hands
}

TEST_CASE("a named place is drawn where it is; a name of another rig is not")
{
    RigDrawingBlock block{tandem(),
                          {{1, Call::Watch, {"vent 1", std::nullopt, std::nullopt}},
                           {2, Call::Watch, {"vent 9", std::nullopt, std::nullopt}}},
                          ""};
    CHECK(shapesOf(html::drawingSheets(block, words()).front().svg).balloons.size() == 1);
}
