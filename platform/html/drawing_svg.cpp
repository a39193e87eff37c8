// SPDX-License-Identifier: Apache-2.0
// Lines from measures: nothing here is a stock picture.
#include "html/drawing_svg.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "html/html_text.hpp"

namespace snugwalk::html {
namespace {

constexpr double scale = 100.0; ///< user units a metre
constexpr double margin = 70.0;
constexpr double edge = 30.0; ///< balloons may stand nearer to the edge than the rig

std::string n(double v) { return fixed(v, 1); }

std::string rect(double x, double y, double w, double h, double round)
{
    return "<rect x='" + n(x) + "' y='" + n(y) + "' width='" + n(w) + "' height='" + n(h) + "' rx='" +
           n(round) + "'/>";
}

std::string line(double x1, double y1, double x2, double y2)
{
    return "<line x1='" + n(x1) + "' y1='" + n(y1) + "' x2='" + n(x2) + "' y2='" + n(y2) + "'/>";
}

std::string circle(double x, double y, double r)
{
    return "<circle cx='" + n(x) + "' cy='" + n(y) + "' r='" + n(r) + "'/>";
}

// Where things lie on the sheet.
class Sheet {
public:
    explicit Sheet(const Rig &rig) : m_rig(rig) {}
    double x(Length aft) const { return margin + (m_rig.measures.hitchLength + aft).si() * scale; }
    double sideY(Length up) const { return groundY() - up.si() * scale; }
    double groundY() const
    {
        return margin + 40 + (m_rig.measures.floorHeight + m_rig.measures.height).si() * scale;
    }
    double planTop() const { return groundY() + 70; }
    double planY(Length right) const
    {
        // kerb side towards the reader, as one stands when looking at the elevation above
        const double sign = kerbIsLeft(m_rig) ? -1.0 : 1.0;
        return planTop() + (m_rig.measures.width.si() / 2 + sign * right.si()) * scale;
    }
    double planBottom() const { return planTop() + m_rig.measures.width.si() * scale; }
    double width() const
    {
        return 2 * margin + (m_rig.measures.hitchLength + m_rig.measures.length).si() * scale;
    }
    double height() const { return planBottom() + 70; }

private:
    const Rig &m_rig;
};

std::string elevation(const Rig &rig, const Sheet &s)
{
    const Measures &m = rig.measures;
    const Length top = m.floorHeight + m.height;
    std::string out = line(margin - 40, s.groundY(), s.width() - margin + 40, s.groundY());
    out += rect(s.x({}), s.sideY(top), m.length.si() * scale, m.height.si() * scale, 22);
    if (m.hitchLength.si() > 0) {
        const double y = s.sideY(m.floorHeight);
        out += line(s.x({}), y, s.x(m.hitchLength * -1.0), y) + circle(s.x(m.hitchLength * -1.0), y, 6);
    }
    for (const Length axle : m.axles)
        out += "<g fill='#fff'>" + circle(s.x(axle), s.groundY() - 35, 35) +
               circle(s.x(axle), s.groundY() - 35, 18) + "</g>";
    const Face kerb = kerbIsLeft(rig) ? Face::Left : Face::Right;
    for (const Opening &o : rig.openings) {
        if (o.face == kerb)
            out += rect(s.x(o.at.aft - o.width / 2), s.sideY(o.at.up + o.height / 2), o.width.si() * scale,
                        o.height.si() * scale, 4);
    }
    return out;
}

std::string plan(const Rig &rig, const Sheet &s)
{
    const Measures &m = rig.measures;
    std::string out = rect(s.x({}), s.planTop(), m.length.si() * scale, m.width.si() * scale, 16);
    const double middle = (s.planTop() + s.planBottom()) / 2;
    if (m.hitchLength.si() > 0)
        out += line(s.x({}), s.planTop() + 40, s.x(m.hitchLength * -1.0), middle) +
               line(s.x({}), s.planBottom() - 40, s.x(m.hitchLength * -1.0), middle);
    for (const Opening &o : rig.openings) {
        if (o.face == Face::Top)
            out += rect(s.x(o.at.aft - o.width / 2), s.planY(o.at.right) - o.height.si() * scale / 2,
                        o.width.si() * scale, o.height.si() * scale, 3);
    }
    return out;
}

struct Spot {
    double x, y;
    bool onPlan;
    bool hidden; ///< on a face that the elevation does not show: its leader is dashed
};

std::optional<Spot> spotOf(const Rig &rig, const RigPlace &given, const Sheet &s)
{
    RigPlace place = given;
    if (!place.at && !place.named.empty())
        place = findNamedPlace(rig, place.named).value_or(given);
    if (!place.face || !place.at)
        return std::nullopt;
    if (*place.face == Face::Top)
        return Spot{s.x(place.at->aft), s.planY(place.at->right), true, false};
    const Face far = kerbIsLeft(rig) ? Face::Right : Face::Left;
    const Length up = *place.face == Face::Underside ? rig.measures.floorHeight : place.at->up;
    return Spot{s.x(place.at->aft), s.sideY(up), false, *place.face == far};
}

struct Balloon {
    int number;
    Call call;
    Spot spot;
};

// In the order of their spots, so that leaders do not cross.
std::vector<Balloon> inOrder(const Rig &rig, const std::vector<RigSpot> &spots, const Sheet &s, bool onPlan)
{
    std::vector<Balloon> out;
    for (const RigSpot &one : spots) {
        const auto spot = spotOf(rig, one.place, s);
        if (spot && spot->onPlan == onPlan)
            out.push_back({one.number, one.call, *spot});
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const Balloon &a, const Balloon &b) { return a.spot.x < b.spot.x; });
    return out;
}

std::string balloons(const std::vector<Balloon> &row, const Sheet &s, double y)
{
    std::string leaders;
    std::string out;
    const double step = (s.width() - 2 * edge) / static_cast<double>(row.size());
    for (std::size_t i = 0; i < row.size(); ++i) {
        const Spot &spot = row[i].spot;
        const double x = edge + step * (static_cast<double>(i) + 0.5);
        leaders += (spot.hidden ? "<g stroke-dasharray='7 5'>" : "<g>") + line(spot.x, spot.y, x, y) + "</g>";
        out += "<g transform='translate(" + n(spot.x) + " " + n(spot.y) + ") scale(1.5)'>" +
               callShape(row[i].call) + "</g><g fill='#fff'>" + circle(x, y, 23) + "</g><text x='" + n(x) +
               "' y='" + n(y + 9) + "' text-anchor='middle' stroke='none'>" + std::to_string(row[i].number) +
               "</text>";
    }
    return leaders + out;
}

} // namespace

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

double drawingAspect(const Rig &rig)
{
    const Sheet s(rig);
    return s.width() / s.height();
}

std::string drawingSvg(const RigDrawingBlock &block, const DrawingWords &words)
{
    const Rig &rig = block.rig;
    const Sheet s(rig);
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + n(s.width()) + " " + n(s.height()) +
           "' role='img' aria-label='" + escape(words.whole) +
           "' fill='none' stroke='#1B1F23' stroke-width='2.5' font-size='26' font-family='" + svgFonts +
           "'>" + elevation(rig, s) + plan(rig, s) + "<g fill='#555' stroke='none'><text x='" +
           n(margin - 40) + "' y='" + n(s.groundY() + 32) + "'>" + escape(words.side) + "</text><text x='" +
           n(margin - 40) + "' y='" + n(s.planBottom() + 34) + "'>" + escape(words.plan) + "</text></g>" +
           "<g stroke-width='1.4' fill='#1B1F23'>" + balloons(inOrder(rig, block.spots, s, false), s, 30) +
           balloons(inOrder(rig, block.spots, s, true), s, s.height() - 26) + "</g></svg>\n";
}

} // namespace snugwalk::html
