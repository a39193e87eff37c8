// SPDX-License-Identifier: Apache-2.0
// Hold rules that need more than one number: hubs against their mates, loads against plates.
#pragma once

#include "concern/reading_holds.hpp"

namespace snugwalk {

/// Adds what the named tests of the rules for `point` find; see `knownHoldChecks`.
///
/// - hub_too_hot: over `hot`; not when a written descent (its event) ended within `after_descent`
///   before the reading and all hubs of that walk, two at least, are within `alike` of each other.
/// - hub_over_mates: over `warm` and more than `over_mates` over the hottest other hub of that walk.
/// - over_axle_rating, over_gross_rating, over_nose_rating: over the plates of the rig.
/// - over_tire_rating: over the sidewall's load, times (p / p max)^exponent at the pressure read last.
/// - under_nose_low_end: under the practice's share of the gross weight read last, in Europe under
///   `europe_least` too. Not weighed is no hold.
void addChecks(const ConcernContext &context, const Point &point, const std::vector<LastReading> &readings,
               std::vector<HoldHit> &hits);

/// Adds a hit once, however many limits one reading passes.
void addHit(std::vector<HoldHit> &hits, const HoldRule &rule, const Point &point, const Reading &reading);

/// Holds by events that nobody has looked at since: rule 15, and the plug and light lists after water
/// or impact. Only the points of the event that carry one of the rule's letters, or its own word.
[[nodiscard]] std::vector<HoldHit> holdsByEvent(const ConcernContext &context, const Point &point);

} // namespace snugwalk
