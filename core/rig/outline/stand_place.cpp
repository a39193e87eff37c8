// SPDX-License-Identifier: Apache-2.0
// The lap of the catalogue's stands, in metres of this rig.
#include "rig/outline/stand_place.hpp"

#include "base/units.hpp"

namespace snugwalk::outline {

StandPlace standPlace(const Rig &rig, std::string_view stand)
{
    const bool left = kerbIsLeft(rig);
    const Face kerb = left ? Face::Left : Face::Right;
    const Face road = left ? Face::Right : Face::Left;
    const Measures &m = rig.measures;
    const Length half = m.width / 2.0;
    const Length first = m.axles.empty() ? m.length * 0.55 : m.axles.front();
    const Length last = m.axles.empty() ? first : m.axles.back();
    const Length reach = metres(0.6); // to either side of the wheels
    const Length wall = metres(0.2);
    const auto ground = [](Face face, Length from, Length to) {
        return StandPlace{face, from, to, StandLevel::Ground};
    };
    if (stand == "nose")
        return m.hitchLength.si() > 0 ? ground(kerb, m.hitchLength * -1.0, metres(-0.1))
                                      : ground(Face::Front, half * -1.0, half);
    if (stand == "rear")
        return ground(Face::Rear, half * -1.0, half);
    for (const auto &[side, face] : {std::pair("kerb", kerb), std::pair("road", road)}) {
        if (!stand.starts_with(side))
            continue;
        if (stand.ends_with("-front"))
            return ground(face, {}, first - reach);
        if (stand.ends_with("-wheels"))
            return ground(face, first - reach, last + reach);
        if (stand.ends_with("-rear"))
            return ground(face, last + reach, m.length);
    }
    if (stand == "utilities")
        return ground(road, m.length * 0.5, m.length);
    if (stand == "roof")
        return {Face::Top, {}, m.length, StandLevel::Roof};
    if (stand == "underneath")
        return {Face::Underside, {}, m.length, StandLevel::Under};
    if (stand == "inside-front")
        return {kerb, wall, m.length * 0.3, StandLevel::Inside};
    if (stand == "inside")
        return {kerb, wall, m.length - wall, StandLevel::Inside};
    if (stand == "inside-rear")
        return {kerb, m.length * 0.7, m.length - wall, StandLevel::Inside};
    return {kerb, {}, {}, StandLevel::None};
}

std::string_view slug(StandLevel level)
{
    switch (level) {
    case StandLevel::Ground:
        return "ground";
    case StandLevel::Roof:
        return "roof";
    case StandLevel::Inside:
        return "inside";
    case StandLevel::Under:
        return "under";
    case StandLevel::None:
        break;
    }
    return "none";
}

} // namespace snugwalk::outline
