// SPDX-License-Identifier: Apache-2.0
// Common practice, no source: figures to begin with, replaced by whoever measures.
#include "rig/usual_measures.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "rig/usual_fittings.hpp"

namespace snugwalk {
namespace {

// Body length, width, height, floor, coupling in metres, and how many axles.
struct Row {
    double length, width, height, floor, hitch;
    int axles;
};

bool isEuropean(Practice practice) { return practice == Practice::Europe || practice == Practice::Other; }

Row trailerRow(Practice practice)
{
    if (practice == Practice::NorthAmerica)
        return {6.4, 2.44, 2.2, 0.55, 1.2, 2};
    if (practice == Practice::AustraliaNewZealand)
        return {6.0, 2.4, 2.2, 0.6, 1.6, 2};
    return {5.6, 2.3, 1.95, 0.45, 1.3, 1};
}

Row rowOf(RigKind kind, Practice practice)
{
    const bool europe = isEuropean(practice);
    switch (kind) {
    case RigKind::TravelTrailer:
        return trailerRow(practice);
    case RigKind::FifthWheel: // the coupling lies under the body's own front
        return europe ? Row{7.5, 2.4, 2.4, 0.65, 0.0, 2} : Row{9.6, 2.44, 2.8, 0.75, 0.0, 2};
    case RigKind::FoldingTrailer: // shut, as it stands on the road
        return {3.6, 2.1, 0.95, 0.5, 1.2, 1};
    case RigKind::Teardrop:
        return {3.0, 1.6, 1.25, 0.4, 1.1, 1};
    case RigKind::TruckCamper:
        return {4.6, 2.2, 2.2, 0.85, 0.0, 0};
    case RigKind::Motorhome:
        return europe ? Row{7.0, 2.3, 2.2, 0.6, 0.0, 2} : Row{8.8, 2.5, 2.6, 0.75, 0.0, 2};
    case RigKind::Van:
        return {6.0, 2.05, 2.05, 0.5, 0.0, 2};
    }
    return trailerRow(practice);
}

// Where the middle of the axle group stands, as a share of the body, for what is towed.
double axleShare(RigKind kind, int count)
{
    if (kind == RigKind::FifthWheel)
        return 0.7;
    return count > 1 ? 0.6 : 0.56;
}

constexpr double axleSpacing = 0.85; // metres from axle to axle in a group

} // namespace

std::vector<Length> usualAxles(RigKind kind, Length bodyLength, int count)
{
    const int wanted = std::clamp(count, 0, 4);
    const double length = bodyLength.si();
    std::vector<Length> axles;
    if (!isTowed(kind)) { // one at the front, the rest behind
        const double rear = kind == RigKind::Van ? 0.8 : 0.7;
        for (int i = 0; i < wanted; ++i)
            axles.push_back(metres(i == 0 ? 0.15 * length : rear * length + (i - 1) * axleSpacing));
    } else {
        const double first = axleShare(kind, wanted) * length - (wanted - 1) * axleSpacing / 2;
        for (int i = 0; i < wanted; ++i)
            axles.push_back(metres(first + i * axleSpacing));
    }
    // a very short body: still within it and in order
    const double last = axles.empty() ? 0.0 : axles.back().si();
    const double shrink = last > length ? length / last : 1.0;
    for (Length &axle : axles)
        axle = metres(std::min(axle.si() * shrink, length));
    return axles;
}

Measures usualMeasures(RigKind kind, Practice practice)
{
    const Row row = rowOf(kind, practice);
    Measures measures;
    measures.length = metres(row.length);
    measures.width = metres(row.width);
    measures.height = metres(row.height);
    measures.floorHeight = metres(row.floor);
    measures.hitchLength = metres(row.hitch);
    measures.axles = usualAxles(kind, measures.length, row.axles);
    return measures;
}

RoofKind usualRoof(RigKind kind, Practice practice)
{
    switch (kind) {
    case RigKind::Van:
    case RigKind::Teardrop:
        return RoofKind::Metal;
    case RigKind::FoldingTrailer:
        return RoofKind::Moulded;
    case RigKind::Motorhome:
        return practice == Practice::NorthAmerica ? RoofKind::Membrane : RoofKind::Moulded;
    default:
        return practice == Practice::NorthAmerica ? RoofKind::Membrane : RoofKind::Metal;
    }
}

BearingKind usualBearings(RigKind kind, Practice practice)
{
    return isTowed(kind) && !isEuropean(practice) ? BearingKind::Adjustable : BearingKind::Sealed;
}

Rig usualRig(RigKind kind, Practice practice)
{
    Rig rig;
    rig.kind = kind;
    rig.practice = practice;
    rig.measures = usualMeasures(kind, practice);
    rig.hitch = usualHitch(kind);
    rig.roof = usualRoof(kind, practice);
    rig.bearings = usualBearings(kind, practice);
    rig.fittings = usualFittings(kind, practice);
    return rig;
}

} // namespace snugwalk
