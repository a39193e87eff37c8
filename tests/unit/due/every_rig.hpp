// SPDX-License-Identifier: Apache-2.0
// Rigs that have, between them, every point of the catalogue.
#pragma once

#include <utility>
#include <vector>

#include "rig/rig.hpp"

namespace snugwalk::test {

/// The first without the fittings that shut points out, all others with every fitting.
inline std::vector<Rig> everyRig()
{
    std::vector<Rig> rigs;
    for (const auto &[kind, practice] : {std::pair(RigKind::TravelTrailer, Practice::NorthAmerica),
                                         {RigKind::TravelTrailer, Practice::Europe},
                                         {RigKind::FifthWheel, Practice::NorthAmerica},
                                         {RigKind::TruckCamper, Practice::NorthAmerica},
                                         {RigKind::Motorhome, Practice::NorthAmerica}}) {
        Rig rig;
        rig.kind = kind;
        rig.practice = practice;
        rig.fittings = {knownFittings().begin(), knownFittings().end()};
        rigs.push_back(rig);
    }
    for (const char *fitting : {"overrun_brakes", "jockey_wheel", "friction_coupling", "cassette_toilet"})
        rigs.front().fittings.erase(fitting);
    return rigs;
}

} // namespace snugwalk::test
