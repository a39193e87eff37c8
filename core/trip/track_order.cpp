// SPDX-License-Identifier: Apache-2.0
// Segments are turned in place; fixes move only when the file had them out of order.
#include "trip/track_order.hpp"

#include <algorithm>

namespace snugwalk {

void orderSegments(std::vector<Fix> &fixes, std::span<const std::size_t> starts)
{
    using Segment = std::span<Fix>;
    std::vector<Segment> segments;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        const std::size_t end = i + 1 < starts.size() ? starts[i + 1] : fixes.size();
        if (end == starts[i])
            continue;
        const Segment segment(fixes.data() + starts[i], end - starts[i]);
        if (segment.back().time < segment.front().time)
            std::reverse(segment.begin(), segment.end());
        segments.push_back(segment);
    }
    const auto earlier = [](const Segment &a, const Segment &b) { return a.front().time < b.front().time; };
    if (std::is_sorted(segments.begin(), segments.end(), earlier))
        return;
    std::stable_sort(segments.begin(), segments.end(), earlier);
    std::vector<Fix> sorted;
    sorted.reserve(fixes.size());
    for (const Segment &segment : segments)
        sorted.insert(sorted.end(), segment.begin(), segment.end());
    fixes = std::move(sorted);
}

} // namespace snugwalk
