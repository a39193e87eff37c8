// SPDX-License-Identifier: Apache-2.0
// How rough a trip was along its way, ready to be drawn as a row of bars.
#pragma once

#include <QVariantMap>

#include "trip/trip.hpp"
#include "voice.hpp"

namespace snugwalk {

/// {bars: [{from, to, value}], span, most, ticks: [{value, text}], edges: [value], reach: [{at, text}],
/// spoken}; distances in metres from where the log began, values in m/km. Empty without a measure along the
/// way. `edges` are `fairRoughness` and `poorRoughness`.
[[nodiscard]] QVariantMap roadLine(const Voice &voice, const Trip &trip);

} // namespace snugwalk
