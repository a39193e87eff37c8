// SPDX-License-Identifier: Apache-2.0
// Every shared rig in turn.
#include "sync/exchange.hpp"

#include "logbook/conflicts.hpp"
#include "sync/meeting.hpp"

namespace snugwalk {

Result<ExchangeSummary> exchange(Logbook &book, const Keys &keys, Store &store,
                                 const ExchangeOptions &options, const Progress &progress)
{
    const auto rigs = sharedRigs(book);
    if (!rigs)
        return rigs.error();
    ExchangeSummary summary;
    StoreView view(store);
    for (const auto &[rig, root] : *rigs) {
        SNUG_TRY(Meeting(book, keys, view, rig, root, options, progress, summary).run());
        const auto conflicts = conflictsOf(book, rig);
        if (!conflicts)
            return conflicts.error();
        summary.conflicts += static_cast<std::int64_t>(conflicts->size());
    }
    summary.damaged = view.damaged;
    summary.bytesRead = view.bytesRead;
    summary.bytesWritten = view.bytesWritten;
    return summary;
}

} // namespace snugwalk
