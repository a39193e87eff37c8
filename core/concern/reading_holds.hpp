// SPDX-License-Identifier: Apache-2.0
// Holds that follow from numbers alone, whatever mark the number came with.
#pragma once

#include "concern/holds.hpp"

namespace snugwalk {

/// The last value of each reading and place by `now`, left out once its point was mended.
struct LastReading {
    Reading reading;
    LocalTime at;
    Id walk;
};
[[nodiscard]] std::vector<LastReading> lastReadings(const RigHistory &history, std::string_view point,
                                                    LocalTime now);

/// Number rules that fire on `point`. Thresholds and sources stand at the rule, in reading_holds.cpp.
[[nodiscard]] std::vector<HoldHit> holdsByReading(const Point &point, const RigHistory &history,
                                                  LocalTime now);

} // namespace snugwalk
