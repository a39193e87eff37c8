// SPDX-License-Identifier: Apache-2.0
// Pens of paper: ink, two widths, dashes.
#include "html/outline_svg.hpp"

#include "base/text.hpp"
#include "html/drawing_svg.hpp"

namespace snugwalk::html {
namespace {

using outline::Dash;
using outline::Pen;
using outline::Stroke;

std::string n(double v) { return fixed(v, 1); }

bool isSmall(double scale) { return scale < 72.0; } // user units a metre

// Attributes of one path; a small view has finer lines.
std::string pen(const Stroke &stroke, double scale)
{
    const double heavy = isSmall(scale) ? 1.8 : 2.5;
    const double width = stroke.pen == Pen::Bold ? heavy * 3 : stroke.pen == Pen::Heavy ? heavy : heavy / 2;
    std::string out = " stroke-width='" + n(width) + "'";
    if (stroke.pen == Pen::Quiet)
        out += " stroke='#777'";
    if (stroke.dash == Dash::Dashed)
        out += " stroke-dasharray='7 5'";
    if (stroke.dash == Dash::Chain)
        out += " stroke-dasharray='18 4 3 4'";
    if (stroke.filled)
        out += " fill='#fff'";
    return out;
}

// A hexagon, as a nut's head: on a place where things were found, whatever became of them.
std::string everShape(const RigSpot &spot)
{
    const bool open = spot.shape == SpotShape::EverOpen;
    return std::string("<path d='M-14 0 L-7 -12 L7 -12 L14 0 L7 12 L-7 12 Z' fill='#fff'") +
           (open ? " stroke-width='2.2'" : " stroke-dasharray='4 3'") +
           "/><text x='0' y='6' font-size='17' text-anchor='middle' stroke='none'>" +
           std::to_string(spot.times) + "</text>";
}

} // namespace

std::string outlineSvg(const outline::Outline &outline, double scale, outline::PaperSpot offset)
{
    std::string out = "<g stroke-linejoin='round' stroke-linecap='round'>";
    for (const Stroke &stroke : outline.strokes)
        out += "<path d='" + outline::pathData(stroke, scale, offset) + "'" + pen(stroke, scale) + "/>";
    out += "</g>";
    if (outline.tanks.empty())
        return out;
    out += "<g fill='#555' stroke='none' font-size='18'>";
    for (const outline::TankLetter &tank : outline.tanks)
        out += "<text x='" + n(tank.at.x * scale + offset.x) + "' y='" + n(tank.at.y * scale + offset.y + 6) +
               "' text-anchor='middle'>" + tank.letter + "</text>";
    return out + "</g>";
}

std::string spotSvg(const RigSpot &spot, outline::PaperSpot at, double scale)
{
    const std::string where = "translate(" + n(at.x) + " " + n(at.y) + ")";
    if (spot.shape != SpotShape::Call)
        return "<g transform='" + where + "'>" + everShape(spot) + "</g>";
    return "<g transform='" + where + " scale(" + n(isSmall(scale) ? 1.0 : 1.5) + ")'>" +
           callShape(spot.call) + "</g>";
}

std::string callShape(Call call)
{
    switch (call) {
    case Call::Hold:
        return "<rect x='-9' y='-9' width='18' height='18' fill='#D55E00'/><rect x='-9' y='-2' width='18' "
               "height='4' fill='#fff' stroke='none'/>";
    case Call::MendSoon:
        return "<path d='M-10 8 L10 8 L10 -8 Z' fill='#CC79A7'/>";
    case Call::Watch:
        return "<path d='M-9 4 A9 9 0 0 1 9 4 Z' fill='#0072B2'/>";
    case Call::None:
        return "<circle r='8' fill='none'/><circle r='3'/>";
    }
    return "";
}

std::string glyphSvg(Call call)
{
    return "<svg xmlns='http://www.w3.org/2000/svg' width='20' height='20' viewBox='-11 -11 22 22' "
           "stroke='#1B1F23' stroke-width='1.5' "
           "aria-hidden='true'>" +
           callShape(call) + "</svg>";
}

} // namespace snugwalk::html
