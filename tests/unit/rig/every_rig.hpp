// SPDX-License-Identifier: Apache-2.0
// Every kind of rig in every country's habits, as the form begins with it and with openings on every face.
#pragma once

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "rig/names.hpp"
#include "rig/outline/face_sheet.hpp"
#include "rig/usual_measures.hpp"

namespace snugwalk::test {

inline constexpr Face faces[] = {Face::Top,   Face::Left, Face::Right,
                                 Face::Front, Face::Rear, Face::Underside};

inline Rig rigOf(RigKind kind, Practice practice)
{
    Rig rig = usualRig(kind, practice);
    const Measures &m = rig.measures;
    const Length roof = m.floorHeight + m.height;
    const Length half = m.width / 2.0;
    const auto opening = [&](const char *name, OpeningKind what, Face face, RigPosition at) {
        rig.openings.push_back({name, what, face, at, metres(0.5), metres(0.4)});
    };
    opening("vent 1", OpeningKind::Vent, Face::Top, {m.length * 0.4, metres(0.1), roof});
    opening("rooflight 1", OpeningKind::Rooflight, Face::Top, {m.length * 0.6, {}, roof});
    opening("door", OpeningKind::Door, Face::Right, {m.length * 0.7, half, m.floorHeight + m.height * 0.4});
    opening("window 1", OpeningKind::Window, Face::Left,
            {m.length * 0.5, half * -1.0, m.floorHeight + m.height * 0.6});
    opening("hatch 1", OpeningKind::Hatch, Face::Rear, {m.length, {}, m.floorHeight + m.height * 0.5});
    return rig;
}

/// Calls with each rig and each of its faces, the front at either end of the paper.
template <typename Check>
void forEachFace(const Check &check)
{
    for (const RigKind kind : {RigKind::TravelTrailer, RigKind::FifthWheel, RigKind::FoldingTrailer,
                               RigKind::Teardrop, RigKind::TruckCamper, RigKind::Motorhome, RigKind::Van}) {
        for (const Practice practice :
             {Practice::NorthAmerica, Practice::Europe, Practice::AustraliaNewZealand, Practice::Other}) {
            const Rig rig = rigOf(kind, practice);
            for (const Face face : faces) {
                for (const bool noseLeft : {true, false}) {
                    INFO(slug(kind), " ", slug(practice), " ", slug(face), noseLeft ? " nose left" : "");
                    check(rig, outline::FaceView{face, noseLeft});
                }
            }
        }
    }
}

} // namespace snugwalk::test
