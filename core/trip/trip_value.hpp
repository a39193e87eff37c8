// SPDX-License-Identifier: Apache-2.0
// Trips and stays as value trees, the form in which the logbook stores them.
#pragma once

#include "base/value.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

/// Quantities are {"value": number, "unit": "m"}, times RFC 3339 text, places {"latitude",
/// "longitude", "altitude", "accuracy"}, outline points [latitude, longitude] with the altitude in
/// metres third where known; roughness is in m/km. The rig is told by its id; the own id is not part: the
/// logbook keys by it.
[[nodiscard]] Value toValue(const Trip &trip);
[[nodiscard]] Value toValue(const Stay &stay);

/// Never fails: unknown members are left alone, missing or unreadable ones keep their default, and
/// impossible places are left out, so that data from a newer version or a broken device can be shown.
[[nodiscard]] Trip tripFromValue(const Value &value);
[[nodiscard]] Stay stayFromValue(const Value &value);

} // namespace snugwalk
