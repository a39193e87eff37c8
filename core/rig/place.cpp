// SPDX-License-Identifier: Apache-2.0
// Places in words and back to spots.
#include "rig/place.hpp"

#include <cmath>

#include "base/text.hpp"
#include "rig/names.hpp"

namespace snugwalk {
namespace {

PlacePart across(const Rig &rig, Length right)
{
    if (std::fabs(right.si()) < 0.05)
        return {"on_centre_line", {}, std::nullopt};
    const bool isKerb = (right.si() < 0.0) == kerbIsLeft(rig);
    return {isKerb ? "to_kerb_side" : "to_road_side", {}, Length::fromSi(std::fabs(right.si()))};
}

PlacePart along(Length aft)
{
    return {aft.si() < 0.0 ? "ahead_of_front" : "from_front", {}, Length::fromSi(std::fabs(aft.si()))};
}

std::string_view faceKey(const Rig &rig, Face face)
{
    switch (face) {
    case Face::Top:
        return "roof";
    case Face::Left:
        return kerbIsLeft(rig) ? "kerb_side" : "road_side";
    case Face::Right:
        return kerbIsLeft(rig) ? "road_side" : "kerb_side";
    case Face::Front:
    case Face::Rear:
    case Face::Underside:
        break;
    }
    return slug(face);
}

} // namespace

std::vector<PlacePart> placeParts(const Rig &rig, const RigPlace &place)
{
    if (!place.named.empty())
        return {{"named", place.named, std::nullopt}};
    if (!place.face)
        return {};
    std::vector<PlacePart> parts = {{faceKey(rig, *place.face), {}, std::nullopt}};
    if (place.at) {
        const bool ends = *place.face == Face::Front || *place.face == Face::Rear;
        const bool flat = *place.face == Face::Top || *place.face == Face::Underside;
        if (!ends)
            parts.push_back(along(place.at->aft));
        if (ends || flat)
            parts.push_back(across(rig, place.at->right));
        if (!flat)
            parts.push_back({"up", {}, place.at->up});
    }
    return parts;
}

std::optional<RigPlace> findNamedPlace(const Rig &rig, std::string_view name)
{
    const std::vector<std::string> wheels = wheelNames(rig);
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        if (wheels[i] != name)
            continue;
        const bool isLeft = i % 2 == 0;
        const Length half = rig.measures.width / 2.0;
        return RigPlace{wheels[i], isLeft ? Face::Left : Face::Right,
                        RigPosition{rig.measures.axles[i / 2], isLeft ? half * -1.0 : half, metres(0.35)}};
    }
    for (std::size_t i = 0; i < rig.measures.axles.size(); ++i) {
        if (name == "axle " + std::to_string(i + 1))
            return RigPlace{std::string(name), Face::Underside,
                            RigPosition{rig.measures.axles[i], {}, metres(0.35)}};
    }
    for (const Opening &o : rig.openings) {
        if (o.name == name)
            return RigPlace{o.name, o.face, o.at};
    }
    return std::nullopt;
}

Status checkPlace(const Rig &rig, const RigPlace &place)
{
    if (!place.named.empty() && !findNamedPlace(rig, place.named))
        return Error{Errc::InvalidInput, "this rig has no place \"" + place.named + "\"", "place",
                     "name a wheel such as \"wheel 2R\" or one of the rig's openings, or give face and x, y"};
    if (!place.at)
        return done();
    const Measures &m = rig.measures;
    const double slack = 0.15;
    const bool along =
        place.at->aft.si() >= -m.hitchLength.si() - slack && place.at->aft.si() <= m.length.si() + slack;
    const bool across = std::fabs(place.at->right.si()) <= m.width.si() / 2 + slack;
    const bool high =
        place.at->up.si() >= -slack && place.at->up.si() <= m.floorHeight.si() + m.height.si() + 0.6;
    if (along && across && high)
        return done();
    return Error{
        Errc::OutOfRange, "the spot is not on this rig", "place",
        "x runs aft from the front, y to the right of the centre line, z up from the ground; the rig is " +
            format(m.length, UnitSystem::Si) + " long and " + format(m.width, UnitSystem::Si) + " wide"};
}

} // namespace snugwalk
