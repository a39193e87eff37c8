// SPDX-License-Identifier: Apache-2.0
// Segments are turned in place; fixes move only when the file had them out of order. Times are taken
// from inside a segment, so that one wild clock reading at its end decides nothing.
#include "trip/track_order.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

using Segment = std::span<Fix>;

bool newestFirst(const Segment &segment)
{
    const std::size_t quarter = segment.size() / 4;
    return segment[segment.size() - 1 - quarter].time < segment[quarter].time;
}

bool earlier(const Segment &a, const Segment &b) { return a[a.size() / 2].time < b[b.size() / 2].time; }

} // namespace

void orderSegments(std::vector<Fix> &fixes, std::span<const std::size_t> starts)
{
    std::vector<Segment> segments;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        const std::size_t end = i + 1 < starts.size() ? starts[i + 1] : fixes.size();
        if (end == starts[i])
            continue;
        const Segment segment(fixes.data() + starts[i], end - starts[i]);
        if (newestFirst(segment))
            std::reverse(segment.begin(), segment.end());
        segments.push_back(segment);
    }
    if (std::is_sorted(segments.begin(), segments.end(), earlier))
        return;
    std::stable_sort(segments.begin(), segments.end(), earlier);
    std::vector<Fix> sorted;
    sorted.reserve(fixes.size());
    for (const Segment &segment : segments)
        sorted.insert(sorted.end(), segment.begin(), segment.end());
    fixes = std::move(sorted);
}

void orderRuns(std::vector<Fix> &fixes)
{
    std::vector<std::size_t> starts;
    for (std::size_t i = 0; i < fixes.size(); ++i) {
        if (i == 0 || fixes[i].time < fixes[i - 1].time)
            starts.push_back(i);
    }
    orderSegments(fixes, starts);
}

} // namespace snugwalk
