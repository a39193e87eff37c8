// SPDX-License-Identifier: Apache-2.0
// Where water, waste, gas and battery usually are, for who lies under the rig and looks for them.
#pragma once

#include <string_view>
#include <vector>

#include "rig/rig.hpp"

namespace snugwalk::outline {

enum class TankKind { FreshWater, GreyWater, BlackWater, Gas, Battery };

struct UsualTank {
    TankKind kind = TankKind::FreshWater;
    char letter = 'A'; ///< on the drawing; A to E in the order of `TankKind`
    RigPosition at;    ///< its centre
    Length along;
    Length across;
    bool round = false; ///< a cylinder seen from its end
};

/// Of what is fitted: a cassette toilet has no black tank, loose tanks have no place. Common practice, no
/// source: where most makers put them, never measured, so drawn dashed and said to be usual.
[[nodiscard]] std::vector<UsualTank> usualTanks(const Rig &rig);

/// "fresh_water", "grey_water", "black_water", "gas", "battery".
[[nodiscard]] std::string_view slug(TankKind kind);

} // namespace snugwalk::outline
