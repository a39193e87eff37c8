// SPDX-License-Identifier: Apache-2.0
// Counting drops by reason; there are nine reasons at most, so a list is enough.
#include "trip/parsed_track.hpp"

#include <algorithm>

namespace snugwalk {

void countDrop(std::vector<Drop> &drops, std::string_view reason, const std::string &where)
{
    const auto found =
        std::find_if(drops.begin(), drops.end(), [&](const Drop &drop) { return drop.reason == reason; });
    if (found != drops.end())
        ++found->count;
    else
        drops.push_back({std::string(reason), 1, where});
}

} // namespace snugwalk
