// SPDX-License-Identifier: Apache-2.0
// What a reader of track files gives: the fixes and what it had to leave out.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

struct ParsedTrack {
    std::string name; ///< as the file gives it, may be empty
    std::vector<Fix> fixes;
    std::vector<Drop> drops;
};

/// Counts one more drop for `reason`; the first one keeps its place.
void countDrop(std::vector<Drop> &drops, std::string_view reason, const std::string &where);

} // namespace snugwalk
