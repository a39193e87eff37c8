// SPDX-License-Identifier: Apache-2.0
// Reading a snapshot, on the worker's thread.
#include "snapshot.hpp"

#include <algorithm>

#include "logbook/query.hpp"
#include "round/history.hpp"
#include "round/state.hpp"

namespace snugwalk {

const WalkRecord *Snapshot::openWalk() const
{
    if (!history)
        return nullptr;
    const auto open = std::find_if(history->walks.begin(), history->walks.end(),
                                   [](const WalkRecord &record) { return !record.walk.finished; });
    return open == history->walks.end() ? nullptr : &*open;
}

const FindingHistory *Snapshot::finding(const Id &id) const
{
    if (!history)
        return nullptr;
    const auto found = std::find_if(history->findings.begin(), history->findings.end(),
                                    [&](const FindingHistory &f) { return f.finding.id == id; });
    return found == history->findings.end() ? nullptr : &*found;
}

Result<std::shared_ptr<const Snapshot>> takeSnapshot(Logbook &book, const Catalogue &catalogue,
                                                     const Id &chosen, std::shared_ptr<const World> world)
{
    auto snapshot = std::make_shared<Snapshot>();
    snapshot->world = std::move(world);
    snapshot->now = book.now();
    auto rigs = allRigs(book);
    if (!rigs)
        return rigs.error();
    snapshot->rigs = std::move(rigs).value();
    if (snapshot->rigs.empty())
        return std::shared_ptr<const Snapshot>(std::move(snapshot));
    const bool known = std::any_of(snapshot->rigs.begin(), snapshot->rigs.end(),
                                   [&](const Rig &rig) { return rig.id == chosen; });
    auto history = loadHistory(book, known ? chosen : snapshot->rigs.front().id);
    if (!history)
        return history.error();
    weatherHistory(*history, snapshot->world.get(), snapshot->now);
    snapshot->catalogue = std::make_shared<const Catalogue>(catalogue.withOwn(history->own));
    Standing standing = standingOf(*snapshot->catalogue, std::move(history).value(), snapshot->now);
    snapshot->bands = std::move(standing.bands);
    snapshot->state = std::move(standing.state);
    snapshot->history = std::move(standing.history);
    return std::shared_ptr<const Snapshot>(std::move(snapshot));
}

} // namespace snugwalk
