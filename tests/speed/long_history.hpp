// SPDX-License-Identifier: Apache-2.0
// Twenty years of one rig with everything fitted, written into a logbook walk by walk.
#pragma once

#include <string>

#include "logbook/logbook.hpp"

namespace snugwalk {

struct LongHistory {
    Id rig;
    int walks = 0;
    int marks = 0;
    int findings = 0;
    int trips = 0;
};

/// 240 monthly walks before the road and 20 full rounds of every point of the catalogue, with readings
/// wherever a point takes one (at four wheels where it is of each wheel), findings that are looked at
/// again each round and mended in the end, and two trips a month. The last walk is a full round.
[[nodiscard]] LongHistory writeTwentyYears(Logbook &book, const LocalTime &first);

} // namespace snugwalk
