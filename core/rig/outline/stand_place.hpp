// SPDX-License-Identifier: Apache-2.0
// Where the feet are while one looks, on the face of the rig that one looks at.
#pragma once

#include <string_view>

#include "rig/rig.hpp"

namespace snugwalk::outline {

enum class StandLevel {
    None, ///< no place on the drawing, such as the papers
    Ground,
    Roof,
    Inside,
    Under
};

/// `from` and `to` run aft of the front face, on front and rear to the right of the centre line.
struct StandPlace {
    Face face = Face::Left;
    Length from;
    Length to;
    StandLevel level = StandLevel::None;
    friend bool operator==(const StandPlace &, const StandPlace &) = default;
};

/// Of a stand of the catalogue by its slug; an unknown one has no level and shows the kerb side. The nose of
/// a rig without a drawbar is looked at from its front.
[[nodiscard]] StandPlace standPlace(const Rig &rig, std::string_view stand);

/// "none", "ground", "roof", "inside", "under".
[[nodiscard]] std::string_view slug(StandLevel level);

} // namespace snugwalk::outline
