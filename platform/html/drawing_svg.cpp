// SPDX-License-Identifier: Apache-2.0
// Lines from measures: nothing here is a stock picture.
#include "html/drawing_svg.hpp"

#include "base/text.hpp"
#include "html/html_text.hpp"

namespace snugwalk::html {
namespace {

constexpr double scale = 100.0; ///< user units a metre
constexpr double margin = 70.0;

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

std::string shape(Call call)
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

std::string balloons(const Rig &rig, const std::vector<ReportFinding> &findings, const Sheet &s)
{
    std::string out;
    const double step = (s.width() - 2 * margin) / static_cast<double>(findings.size() + 1);
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const auto spot = spotOf(rig, findings[i].history.finding.place, s);
        if (!spot)
            continue;
        const double bx = margin + step * static_cast<double>(i + 1);
        const double by = spot->onPlan ? s.height() - 26 : 30;
        out += (spot->hidden ? "<g stroke-dasharray='7 5'>" : "<g>") + line(spot->x, spot->y, bx, by) +
               "</g><g transform='translate(" + n(spot->x) + " " + n(spot->y) + ")'>" +
               shape(findings[i].open.concern.call) + "</g><g fill='#fff'>" + circle(bx, by, 17) +
               "</g><text x='" + n(bx) + "' y='" + n(by + 6) + "' text-anchor='middle' stroke='none'>" +
               std::to_string(findings[i].number) + "</text>";
    }
    return out;
}

} // namespace

std::string glyphSvg(Call call)
{
    return "<svg width='20' height='20' viewBox='-11 -11 22 22' stroke='#1B1F23' stroke-width='1.5' "
           "aria-hidden='true'>" +
           shape(call) + "</svg>";
}

std::string drawingSvg(const Rig &rig, const std::vector<ReportFinding> &findings,
                       const std::string &sideWords, const std::string &planWords)
{
    const Sheet s(rig);
    return "<svg viewBox='0 0 " + n(s.width()) + " " + n(s.height()) +
           "' role='img' fill='none' stroke='#1B1F23' stroke-width='2.5' font-size='18'>" +
           elevation(rig, s) + plan(rig, s) + "<g fill='#555' stroke='none'><text x='" + n(margin - 40) +
           "' y='" + n(s.groundY() + 24) + "'>" + escape(sideWords) + "</text><text x='" + n(margin - 40) +
           "' y='" + n(s.planBottom() + 26) + "'>" + escape(planWords) + "</text></g>" +
           "<g stroke-width='1.4' fill='#1B1F23'>" + balloons(rig, findings, s) + "</g></svg>\n";
}

} // namespace snugwalk::html
