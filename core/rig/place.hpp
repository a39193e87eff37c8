// SPDX-License-Identifier: Apache-2.0
// A finding's place on the rig, as a coordinate or a named place, and as words to follow.
#pragma once

#include <optional>
#include <string>

#include "base/units.hpp"
#include "base/value.hpp"
#include "rig/rig.hpp"

namespace snugwalk {

struct RigPlace {
    std::string named; ///< "wheel 2R", "vent 3"; empty when the coordinate alone is given
    std::optional<Face> face;
    std::optional<RigPosition> at;
    friend bool operator==(const RigPlace &, const RigPlace &) = default;
    [[nodiscard]] bool isEmpty() const { return named.empty() && !face; }
};

/// "underside, 4.1 m from the front, 0.6 m to the road side"; "wheel 2R"; "" when nothing is known.
/// English; screens build the same sentence from the parts in their own language.
[[nodiscard]] std::string placeWords(const Rig &rig, const RigPlace &place, UnitSystem units);

/// Where a named place is: a wheel ("wheel 2R"), an axle ("axle 1"), an opening's centre; nothing for
/// an unknown name.
[[nodiscard]] std::optional<RigPlace> findNamedPlace(const Rig &rig, std::string_view name);

/// Checks that the spot lies on the rig (a hand's breadth of slack); `OutOfRange` otherwise.
[[nodiscard]] Status checkPlace(const Rig &rig, const RigPlace &place);

/// {"named", "face", "x", "y", "z"}: quantities with their unit; see `rig_value.hpp`.
[[nodiscard]] Value toValue(const RigPlace &place);
[[nodiscard]] Result<RigPlace> placeFromValue(const Value &value);

} // namespace snugwalk
