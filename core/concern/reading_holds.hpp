// SPDX-License-Identifier: Apache-2.0
// Holds that follow from numbers alone, whatever mark the number came with.
#pragma once

#include "concern/context.hpp"
#include "concern/holds.hpp"

namespace snugwalk {

/// The last value of each reading and place by `now`, left out once its point was mended.
struct LastReading {
    Reading reading;
    LocalTime at;
    Id walk;
};
[[nodiscard]] std::vector<LastReading> lastReadings(const ConcernContext &context, std::string_view point);

/// Number rules of the catalogue that fire on `point`: limits, and tests by name (checks.hpp).
[[nodiscard]] std::vector<HoldHit> holdsByReading(const ConcernContext &context, const Point &point);

} // namespace snugwalk
