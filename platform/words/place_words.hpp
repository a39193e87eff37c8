// SPDX-License-Identifier: Apache-2.0
// A place on the rig as words a person can follow.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "rig/place.hpp"

namespace snugwalk {

/// "wheel 2R"; a name that the owner gave stays as it is.
[[nodiscard]] std::string placeName(std::string_view named, const Texts &texts);
/// "underside, 4.1 m from the front, 0.6 m to the road side"; "" when nothing is known.
[[nodiscard]] std::string placeWords(const Rig &rig, const RigPlace &place, const Texts &texts,
                                     UnitSystem units);

} // namespace snugwalk
