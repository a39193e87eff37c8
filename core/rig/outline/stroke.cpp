// SPDX-License-Identifier: Apache-2.0
// Lines, rings and rounded corners.
#include "rig/outline/stroke.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"

namespace snugwalk::outline {
namespace {

using Kind = Step::Kind;

PaperSpot operator+(PaperSpot a, PaperSpot b) { return {a.x + b.x, a.y + b.y}; }
PaperSpot operator-(PaperSpot a, PaperSpot b) { return {a.x - b.x, a.y - b.y}; }
PaperSpot operator*(PaperSpot a, double k) { return {a.x * k, a.y * k}; }
double length(PaperSpot a) { return std::hypot(a.x, a.y); }
PaperSpot middle(PaperSpot a, PaperSpot b) { return (a + b) * 0.5; }

Step move(PaperSpot to) { return {Kind::Move, {}, {}, to}; }
Step line(PaperSpot to) { return {Kind::Line, {}, {}, to}; }
Step close() { return {Kind::Close, {}, {}, {}}; }

// An arc of `radius` in the corner at `a`, between the middles `from` and `to` of the lines beside it.
void turn(std::vector<Step> &steps, PaperSpot from, const Corner &corner, PaperSpot to)
{
    const PaperSpot a = corner.at;
    const double before = length(from - a);
    const double after = length(to - a);
    const double least = std::min(before, after);
    if (least > 0.0 && corner.radius > 0.0) {
        const PaperSpot u = (from - a) * (1.0 / before);
        const PaperSpot v = (to - a) * (1.0 / after);
        const double between = std::acos(std::clamp(u.x * v.x + u.y * v.y, -1.0, 1.0));
        const double half = std::tan(between / 2.0);
        // nearly straight or folded back: no arc to tell
        if (half > 1e-6 && half < 1e6) {
            const double tangent = std::min(corner.radius / half, least);
            const double radius = tangent * half;
            const double handle = 4.0 / 3.0 * std::tan((std::acos(-1.0) - between) / 4.0) * radius;
            const PaperSpot begin = a + u * tangent;
            const PaperSpot end = a + v * tangent;
            steps.push_back(line(begin));
            steps.push_back({Kind::Cubic, begin - u * handle, end - v * handle, end});
            steps.push_back(line(to));
            return;
        }
    }
    steps.push_back(line(a));
    steps.push_back(line(to));
}

} // namespace

Stroke polyline(Pen pen, const std::vector<PaperSpot> &spots, bool closed)
{
    Stroke stroke{pen, Dash::None, false, {}};
    for (const PaperSpot &spot : spots)
        stroke.steps.push_back(stroke.steps.empty() ? move(spot) : line(spot));
    if (closed)
        stroke.steps.push_back(close());
    return stroke;
}

Stroke ring(Pen pen, PaperSpot centre, double radius, bool filled)
{
    const double k = 4.0 / 3.0 * std::tan(std::acos(-1.0) / 8.0) * radius;
    const double r = radius;
    const auto at = [&](double x, double y) { return centre + PaperSpot{x, y}; };
    Stroke stroke{pen, Dash::None, filled, {move(at(r, 0))}};
    stroke.steps.push_back({Kind::Cubic, at(r, k), at(k, r), at(0, r)});
    stroke.steps.push_back({Kind::Cubic, at(-k, r), at(-r, k), at(-r, 0)});
    stroke.steps.push_back({Kind::Cubic, at(-r, -k), at(-k, -r), at(0, -r)});
    stroke.steps.push_back({Kind::Cubic, at(k, -r), at(r, -k), at(r, 0)});
    stroke.steps.push_back(close());
    return stroke;
}

Stroke rounded(Pen pen, const std::vector<Corner> &corners, bool filled)
{
    const std::size_t n = corners.size();
    Stroke stroke{pen, Dash::None, filled, {}};
    for (std::size_t i = 0; i < n; ++i) {
        const PaperSpot from = middle(corners[(i + n - 1) % n].at, corners[i].at);
        const PaperSpot to = middle(corners[i].at, corners[(i + 1) % n].at);
        if (i == 0)
            stroke.steps.push_back(move(from));
        turn(stroke.steps, from, corners[i], to);
    }
    stroke.steps.push_back(close());
    return stroke;
}

Stroke box(Pen pen, PaperSpot centre, double width, double height, bool filled)
{
    const double w = width / 2;
    const double h = height / 2;
    Stroke stroke = polyline(pen,
                             {{centre.x - w, centre.y - h},
                              {centre.x + w, centre.y - h},
                              {centre.x + w, centre.y + h},
                              {centre.x - w, centre.y + h}},
                             true);
    stroke.filled = filled;
    return stroke;
}

std::vector<PaperSpot> flattened(const Stroke &stroke, int perCubic)
{
    std::vector<PaperSpot> spots;
    for (const Step &step : stroke.steps) {
        if (step.kind == Kind::Close)
            continue;
        if (step.kind != Kind::Cubic || spots.empty()) {
            spots.push_back(step.to);
            continue;
        }
        const PaperSpot from = spots.back();
        for (int i = 1; i <= perCubic; ++i) {
            const double t = static_cast<double>(i) / perCubic;
            const double s = 1.0 - t;
            spots.push_back(from * (s * s * s) + step.first * (3 * s * s * t) +
                            step.second * (3 * s * t * t) + step.to * (t * t * t));
        }
    }
    return spots;
}

std::string pathData(const Stroke &stroke, double scale, PaperSpot offset)
{
    const auto spot = [&](PaperSpot p) {
        return fixed(p.x * scale + offset.x, 1) + " " + fixed(p.y * scale + offset.y, 1);
    };
    std::string out;
    for (const Step &step : stroke.steps) {
        switch (step.kind) {
        case Kind::Move:
            out += "M" + spot(step.to);
            break;
        case Kind::Line:
            out += "L" + spot(step.to);
            break;
        case Kind::Cubic:
            out += "C" + spot(step.first) + " " + spot(step.second) + " " + spot(step.to);
            break;
        case Kind::Close:
            out += "Z";
            break;
        }
    }
    return out;
}

} // namespace snugwalk::outline
