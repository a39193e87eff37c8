// SPDX-License-Identifier: Apache-2.0
// From the name of a store to what came of it.
#include "exchange_run.hpp"

#include "sync_state.hpp"

namespace snugwalk {

Result<ExchangeSummary> runExchange(Logbook &book, SyncPlaces &places, const std::string &name,
                                    Originals originals, ExchangeWatch &watch)
{
    const auto opened = places.open(name);
    if (!opened)
        return opened.error();
    const ExchangeOptions options{originals, false};
    const auto tell = [&](const ExchangeStep &step) {
        watch.tell(step);
        return !watch.stop;
    };
    const auto met = exchange(book, Keys(book.device()), *opened->store, options, tell);
    // what was published before an exchange broke off is worth handing over too
    const Status finished = opened->finish ? opened->finish() : done();
    if (!met)
        return met;
    SNUG_TRY(finished);
    const auto carried = carriedEntries(book);
    if (!carried)
        return carried.error();
    SNUG_TRY(places.noteMet(name, book.now(), *carried, *met));
    return met;
}

} // namespace snugwalk
