// SPDX-License-Identifier: Apache-2.0
// Which points a rig has, and in what order a walk goes over them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "rig/rig.hpp"

namespace snugwalk {

/// True when the rig has what the point looks at, hidden or not.
[[nodiscard]] bool isOnRig(const Point &point, const Rig &rig);
/// `isOnRig` and not hidden by the owner: what walks and the due list ask for.
[[nodiscard]] bool applies(const Point &point, const Rig &rig);

/// Points hidden by the owner that stay in sight all the same: on the rig, and of the road, of fire
/// or on the hold list. Every state, list and report names them. Catalogue order.
[[nodiscard]] std::vector<const Point *> hiddenInSight(const Catalogue &catalogue, const Rig &rig);

/// Slugs of the points the rig has, in catalogue order.
[[nodiscard]] std::vector<std::string> pointsFor(const Catalogue &catalogue, const Rig &rig);

/// What a walk of `kind` asks for, as tape lines in walking order. Extra sets (first move of a day,
/// of a trip) and points made due by events are added, each point once. Lines of points that the
/// rig lacks are left out. A full round has one line a point, by stand; sets keep their own order.
/// \returns `NotFound` for an unknown kind, extra set or extra point, with the names there are.
[[nodiscard]] Result<std::vector<TapeLine>> tapeFor(const Catalogue &catalogue, const Rig &rig,
                                                    std::string_view kind,
                                                    const std::vector<std::string> &extraSets,
                                                    const std::vector<std::string> &extraPoints);

/// The stand of a line: that of its first point.
[[nodiscard]] std::string standOf(const Catalogue &catalogue, const TapeLine &line);

/// Named places that a repeated point stands for: each wheel, door, window, baggage door (hatch),
/// either of the two (lock) or roof opening (vent: vents and rooflights); empty for none.
[[nodiscard]] std::vector<std::string> placesOf(const Point &point, const Rig &rig);

} // namespace snugwalk
