// SPDX-License-Identifier: Apache-2.0
// From rig and place to values.
#include "rig/names.hpp"
#include "rig/place.hpp"
#include "rig/rig_value.hpp"

namespace snugwalk {
namespace {

Value measuresValue(const Measures &m)
{
    Value::List axles;
    for (const Length axle : m.axles)
        axles.push_back(quantityValue(axle));
    return Value::Map{{"length", quantityValue(m.length)},
                      {"width", quantityValue(m.width)},
                      {"height", quantityValue(m.height)},
                      {"floor_height", quantityValue(m.floorHeight)},
                      {"hitch_length", quantityValue(m.hitchLength)},
                      {"axles", axles}};
}

Value ratingsValue(const Ratings &r)
{
    Value::List axles;
    for (const auto &rating : r.axle)
        axles.push_back(quantityValue(rating));
    return Value::Map{{"gvwr", quantityValue(r.gross)}, {"gawr", axles}, {"nose_max", quantityValue(r.nose)}};
}

Value tiresValue(const Tires &t)
{
    return Value::Map{{"size", t.size},
                      {"load_range", t.loadRange},
                      {"load_index", Value(t.loadIndex)},
                      {"max_load", quantityValue(t.maxLoad)},
                      {"max_pressure", quantityValue(t.maxPressure)},
                      {"placard", quantityValue(t.placard)}};
}

Value openingValue(const Opening &o)
{
    return Value::Map{{"name", o.name},
                      {"kind", slug(o.kind)},
                      {"face", slug(o.face)},
                      {"x", quantityValue(o.at.aft)},
                      {"y", quantityValue(o.at.right)},
                      {"z", quantityValue(o.at.up)},
                      {"w", quantityValue(o.width)},
                      {"h", quantityValue(o.height)}};
}

} // namespace

Value toValue(const Rig &rig)
{
    Value::List openings;
    for (const Opening &opening : rig.openings)
        openings.push_back(openingValue(opening));
    Value::List fittings;
    for (const std::string &fitting : rig.fittings)
        fittings.emplace_back(fitting);
    return Value::Map{{"name", rig.name},
                      {"kind", slug(rig.kind)},
                      {"practice", slug(rig.practice)},
                      {"measures", measuresValue(rig.measures)},
                      {"hitch", slug(rig.hitch)},
                      {"roof_walk", slug(rig.roofWalk)},
                      {"ratings", ratingsValue(rig.ratings)},
                      {"tires", tiresValue(rig.tires)},
                      {"wheels", Value::Map{{"studs", Value(rig.wheels.studs)},
                                            {"torque", quantityValue(rig.wheels.torque)}}},
                      {"roof", slug(rig.roof)},
                      {"bearings", slug(rig.bearings)},
                      {"openings", openings},
                      {"fittings", fittings},
                      {"annual_distance", quantityValue(rig.yearly)}};
}

Value toValue(const RigPlace &place)
{
    Value::Map out;
    if (!place.named.empty())
        out["named"] = place.named;
    if (place.face)
        out["face"] = slug(*place.face);
    if (place.at) {
        out["x"] = quantityValue(place.at->aft);
        out["y"] = quantityValue(place.at->right);
        out["z"] = quantityValue(place.at->up);
    }
    return out;
}

} // namespace snugwalk
