// SPDX-License-Identifier: Apache-2.0
// Places in words and back to spots.
#include "rig/place.hpp"

#include <cmath>

#include "base/text.hpp"
#include "rig/names.hpp"

namespace snugwalk {
namespace {

std::string distanceWords(Length length, UnitSystem units)
{
    const bool us = units == UnitSystem::Us;
    const Unit unit = *findUnit(Dimension::Length, us ? "ft" : "m");
    return formatSi(unit, std::fabs(length.si()), 1);
}

// "0.6 m to the road side", or nothing within 5 cm of the centre line.
std::string sideWords(const Rig &rig, Length right, UnitSystem units)
{
    if (std::fabs(right.si()) < 0.05)
        return "on the centre line";
    const bool isLeft = right.si() < 0.0;
    return distanceWords(right, units) + " to the " + (isLeft == kerbIsLeft(rig) ? "kerb side" : "road side");
}

std::string alongWords(Length aft, UnitSystem units)
{
    return distanceWords(aft, units) + (aft.si() < 0.0 ? " ahead of the front" : " from the front");
}

std::string faceWords(const Rig &rig, Face face)
{
    switch (face) {
    case Face::Top:
        return "roof";
    case Face::Left:
        return kerbIsLeft(rig) ? "kerb side" : "road side";
    case Face::Right:
        return kerbIsLeft(rig) ? "road side" : "kerb side";
    default:
        return std::string(slug(face));
    }
}

} // namespace

std::string placeWords(const Rig &rig, const RigPlace &place, UnitSystem units)
{
    if (!place.named.empty())
        return place.named;
    if (!place.face)
        return {};
    std::vector<std::string> parts = {faceWords(rig, *place.face)};
    if (place.at) {
        const bool ends = *place.face == Face::Front || *place.face == Face::Rear;
        const bool flat = *place.face == Face::Top || *place.face == Face::Underside;
        if (!ends)
            parts.push_back(alongWords(place.at->aft, units));
        if (ends || flat)
            parts.push_back(sideWords(rig, place.at->right, units));
        if (!flat)
            parts.push_back(distanceWords(place.at->up, units) + " up");
    }
    return join(parts, ", ");
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
