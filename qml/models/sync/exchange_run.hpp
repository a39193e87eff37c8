// SPDX-License-Identifier: Apache-2.0
// One exchange with one store, on a thread and a connection of its own, so that no tap waits for it.
#pragma once

#include <atomic>
#include <memory>
#include <mutex>

#include "sync_places.hpp"

namespace snugwalk {

/// Shared with the thread that exchanges.
class ExchangeWatch {
public:
    std::atomic<bool> stop = false;

    void tell(const ExchangeStep &step)
    {
        const std::lock_guard lock(m_one);
        m_step = step;
    }
    [[nodiscard]] ExchangeStep step() const
    {
        const std::lock_guard lock(m_one);
        return m_step;
    }

private:
    mutable std::mutex m_one;
    ExchangeStep m_step;
};

/// Opens the store, exchanges, and has the store's list remember it. Stopped: the error of `exchange`, what
/// was done stays done.
[[nodiscard]] Result<ExchangeSummary> runExchange(Logbook &book, SyncPlaces &places, const std::string &name,
                                                  Originals originals, ExchangeWatch &watch);

} // namespace snugwalk
