// SPDX-License-Identifier: Apache-2.0
// Due bands first, then concern, which looks ahead to them.
#include "round/state.hpp"

#include <algorithm>

namespace snugwalk {

Standing standingOf(const Catalogue &catalogue, RigHistory history, LocalTime now)
{
    Standing standing;
    standing.bands = dueBands(catalogue, history, now);
    standing.state = stateOf(catalogue, history, standing.bands, now);
    standing.history = std::move(history);
    standing.now = now;
    return standing;
}

const FindingHistory *findHistory(const RigHistory &history, const Id &finding)
{
    const auto found = std::find_if(history.findings.begin(), history.findings.end(),
                                    [&](const FindingHistory &h) { return h.finding.id == finding; });
    return found == history.findings.end() ? nullptr : &*found;
}

} // namespace snugwalk
