// SPDX-License-Identifier: Apache-2.0
// A finding's place on the rig, as a coordinate or a named place, and as words to follow.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

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

/// One part of a place as people follow it. `key` names the words in each language (group "places" of
/// the texts): named, roof, kerb_side, road_side, front, rear, underside, from_front, ahead_of_front,
/// on_centre_line, to_kerb_side, to_road_side, up.
struct PlacePart {
    std::string_view key;
    std::string name;             ///< with named: "wheel 2R"
    std::optional<Length> length; ///< never negative: the key says which way
    friend bool operator==(const PlacePart &, const PlacePart &) = default;
};
/// Face, then along, across, up: what a face needs and no more. Empty when nothing is known.
[[nodiscard]] std::vector<PlacePart> placeParts(const Rig &rig, const RigPlace &place);

/// Where a named place is: a wheel ("wheel 2R"), an axle ("axle 1"), an opening's centre; nothing for
/// an unknown name.
[[nodiscard]] std::optional<RigPlace> findNamedPlace(const Rig &rig, std::string_view name);

/// Checks that the spot lies on the rig (a hand's breadth of slack); `OutOfRange` otherwise.
[[nodiscard]] Status checkPlace(const Rig &rig, const RigPlace &place);

/// {"named", "face", "x", "y", "z"}: quantities with their unit; see `rig_value.hpp`.
[[nodiscard]] Value toValue(const RigPlace &place);
[[nodiscard]] Result<RigPlace> placeFromValue(const Value &value);

} // namespace snugwalk
