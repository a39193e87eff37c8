// SPDX-License-Identifier: Apache-2.0
// What a trip did, in words.
#pragma once

#include <QVariantList>

#include "round/trip_story.hpp"
#include "voice.hpp"

namespace snugwalk {

/// "9 days that aged the seals like 15; 412 km that shook like 1,310 km."
[[nodiscard]] QString tripSentence(const Voice &voice, const TripStory &story);
/// The ranges and what they rest on.
[[nodiscard]] QString tripDoubt(const Voice &voice, const TripStory &story);
/// [{label, value}]: length, time under way, road, climb, gaps, what was left out.
[[nodiscard]] QVariantList tripFacts(const Voice &voice, const Trip &trip);
/// [{label, value}], one a stop.
[[nodiscard]] QVariantList tripStops(const Voice &voice, const Trip &trip);

} // namespace snugwalk
