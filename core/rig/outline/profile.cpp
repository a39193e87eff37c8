// SPDX-License-Identifier: Apache-2.0
// Corners by kind, as shares of the body; common practice, no source.
#include "rig/outline/profile.hpp"

#include <algorithm>

namespace snugwalk::outline {
namespace {

// A corner at a share of the body's length from the front and of its height from the floor.
struct Share {
    double along, up, radius;
};

std::vector<Share> corners(RigKind kind)
{
    switch (kind) {
    case RigKind::Teardrop:
        return {{0, 0, 0.1}, {0, 0.62, 0.9}, {0.28, 1, 0.8}, {0.62, 0.98, 1.2}, {1, 0.1, 0.7}, {1, 0, 0.1}};
    case RigKind::FoldingTrailer:
        return {{0, 0, 0.08}, {0, 1, 0.15}, {1, 1, 0.15}, {1, 0, 0.08}};
    case RigKind::FifthWheel:
        return {{0, 0.42, 0.1}, {0.02, 1, 0.5},  {1, 1, 0.12},
                {1, 0, 0.06},   {0.27, 0, 0.08}, {0.25, 0.42, 0.1}};
    case RigKind::TruckCamper:
        return {{0, 0.5, 0.15}, {0.02, 1, 0.4},  {1, 1, 0.12},
                {1, 0, 0.06},   {0.32, 0, 0.06}, {0.32, 0.5, 0.08}};
    case RigKind::Motorhome:
        return {{0, 0, 0.12},      {0.01, 0.3, 0.25}, {0.1, 0.42, 0.3}, {0.16, 0.68, 0.2},
                {0.04, 0.76, 0.2}, {0.06, 1, 0.45},   {1, 1, 0.15},     {1, 0, 0.08}};
    case RigKind::Van:
        return {{0, 0, 0.12}, {0, 0.36, 0.25}, {0.16, 0.46, 0.4}, {0.3, 1, 0.5}, {1, 1, 0.18}, {1, 0, 0.1}};
    case RigKind::TravelTrailer:
        break;
    }
    return {{0.01, 0, 0.1}, {-0.006, 0.5, 1.4}, {0.035, 1, 0.55}, {1, 1, 0.16}, {1, 0, 0.06}};
}

} // namespace

Stroke bodySide(const Rig &rig, const FaceSheet &sheet)
{
    const Measures &m = rig.measures;
    std::vector<Corner> spots;
    for (const Share &share : corners(rig.kind))
        spots.push_back(
            {sheet.at(share.along * m.length.si(), 0, m.floorHeight.si() + share.up * m.height.si()),
             share.radius});
    return rounded(Pen::Heavy, spots, true);
}

BodySpan bodySpan(const Rig &rig, double aft)
{
    const FaceSheet sheet(rig.measures, {Face::Left, true});
    const std::vector<PaperSpot> line = flattened(bodySide(rig, sheet));
    const double x = sheet.at(aft, 0, 0).x;
    std::vector<double> heights;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const PaperSpot a = line[i];
        const PaperSpot b = line[(i + 1) % line.size()];
        if ((a.x <= x) == (b.x <= x))
            continue;
        const double y = a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x);
        heights.push_back(sheet.position({x, y}).up.si());
    }
    if (heights.empty())
        return {rig.measures.floorHeight.si(), rig.measures.floorHeight.si()};
    const auto [low, high] = std::minmax_element(heights.begin(), heights.end());
    return {*low, *high};
}

} // namespace snugwalk::outline
